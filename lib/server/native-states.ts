// Which plants are native to which states: the table of USDA PLANTS nativity by symbol, prisma/plants/tables/usda-native.json.
import { existsSync, readFileSync } from "node:fs";
import { z } from "zod";
import { projectPath } from "./environment";

/** By symbol: states it is native to and states it is introduced in, each as "CT NH VT". */
const table = z.object({ symbolOf: z.record(z.string(), z.string()), rows: z.record(z.string(), z.tuple([z.string(), z.string()])) });
type NativeTable = z.infer<typeof table>;

const memory = globalThis as { twelvemonthNative?: NativeTable | null };

/** The table; null when this copy of the program comes without it. Throws when the file is damaged. */
function nativeTable(): NativeTable | null {
  if (memory.twelvemonthNative === undefined) {
    const file = projectPath("prisma", "plants", "tables", "usda-native.json");
    memory.twelvemonthNative = existsSync(file) ? table.parse(JSON.parse(readFileSync(file, "utf8"))) : null;
  }
  return memory.twelvemonthNative;
}

const statesOf = (joined: string): readonly string[] => (joined ? joined.split(" ") : []);

/** The USDA symbol of a taxon: its own, or the one the nativity table has for its botanical name. A cultivar goes by its species. */
export function usdaSymbol(taxon: { readonly usda: string | null; readonly botanical: string }): string | null {
  return taxon.usda ?? nativeTable()?.symbolOf[taxon.botanical] ?? null;
}

/** States a symbol is native to and introduced in; null where the table has no row (or there is no table). */
export function nativeStates(symbol: string | null): { readonly native: readonly string[]; readonly introduced: readonly string[] } | null {
  const row = symbol ? nativeTable()?.rows[symbol] : undefined;
  return row ? { native: statesOf(row[0]), introduced: statesOf(row[1]) } : null;
}

/** Symbols native to a state; null when there is no table. */
export function nativeSymbols(state: string): readonly string[] | null {
  const found = nativeTable();
  return found ? Object.entries(found.rows).flatMap(([symbol, [native]]) => (native.split(" ").includes(state) ? [symbol] : [])) : null;
}
