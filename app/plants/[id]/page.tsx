import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { nameText } from "@/lib/plants/botanical-name";
import { ownTaxonDeleted } from "@/lib/server/own-taxa";
import { plantSheet } from "@/lib/server/plant-sheet";
import { taxaHeld } from "@/lib/server/taxa";
import { DeletedPlant } from "./deleted-plant";
import { PlantSheet } from "./plant-sheet";
import "../plants.css";
import "./plant-sheet.css";

type Props = { params: Promise<{ id: string }>; searchParams: Promise<Record<string, string | string[] | undefined>> };
export const dynamic = "force-dynamic";

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const taxon = (await taxaHeld()).byId.get((await params).id);
  return { title: taxon ? nameText(taxon) : "Plant not found" };
}

export default async function PlantPage({ params, searchParams }: Props) {
  const { id } = await params;
  const { place } = await searchParams;
  const sheet = await plantSheet(id, typeof place === "string" ? place : null);
  if (sheet) return <PlantSheet sheet={sheet} />;
  const deleted = await ownTaxonDeleted(id);
  if (!deleted) notFound();
  return <DeletedPlant id={id} name={deleted} />;
}
