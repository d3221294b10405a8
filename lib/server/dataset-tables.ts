// Reads prisma/plants/tables: what public tables say of the dataset's plants, and the hand-written reasons.
import { readFileSync } from "node:fs";
import { parse } from "yaml";
import type { Reason } from "../plants/checked-value";
import type { CrossCheckTables } from "../plants/cross-check";
import { type LeftOut, leftOutFile, reasonsFile } from "../plants/reasons-file";
import { streetTreesFile } from "../plants/street-tree";
import { type UsdaNative, usdaGeneraFile, usdaNativeFile, usdaRowsFile } from "../plants/usda-table";
import { projectPath } from "./environment";

const text = (name: string): string => readFileSync(projectPath("prisma", "plants", "tables", name), "utf8");

/** States each plant is native to. */
export const nativeTable = (): UsdaNative => usdaNativeFile.parse(JSON.parse(text("usda-native.json")));

/** Tables for the cross-check. */
export function crossCheckTables(): CrossCheckTables {
  return { usda: usdaRowsFile.parse(JSON.parse(text("usda-rows.json"))).rows, streetTrees: streetTreesFile.parse(JSON.parse(text("street-trees.json"))).species };
}

/** Genera of the USDA list, each with its species. */
export const usdaGenera = (): Readonly<Record<string, readonly string[]>> => usdaGeneraFile.parse(JSON.parse(text("usda-genera.json"))).genera;

export const reasonsRead = (): readonly Reason[] => reasonsFile.parse(parse(text("reasons.yaml")) ?? []);
export const leftOutRead = (): LeftOut => leftOutFile.parse(parse(text("left-out.yaml")) ?? []);
