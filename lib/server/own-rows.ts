// What the user added to the open dataset, read from its own two tables (the seed never touches them) and checked again.
import type { PlaceYear } from "../place/place-year";
import { REFERENCE_YEAR } from "../place/reference";
import { type Correction, correctionRead, isWindowField, windowValue } from "../plants/correction";
import { type FieldFault, type OwnTaxonInput, ownTaxon, ownTaxonRead, type SeenAt } from "../plants/own-taxon";
import type { Taxon } from "../plants/taxon";
import type { YearOf } from "../season/corrected";
import { ownTaxonDated } from "../season/own-dated";
import { database } from "./database";
import { placeFind, placeYearOf } from "./places";

/** A taxon of the user's own with the form it came from. */
export type OwnRow = { readonly taxon: Taxon; readonly input: OwnTaxonInput };
/** A row this program cannot read any more (an older vocabulary): kept in the database, said on the Plants screen. */
export type UnreadableRow = { readonly id: string; readonly message: string };

const placeKey = (seenAt: SeenAt): string => (seenAt ? `${seenAt.lat},${seenAt.lon},${seenAt.elevationFt}` : "");

/** The years of the places that windows were seen at. A place without a climate counts as the reference climate. */
export async function seenYears(places: readonly SeenAt[]): Promise<YearOf> {
  const years = new Map<string, PlaceYear>();
  for (const seenAt of places) {
    const key = placeKey(seenAt);
    if (!seenAt || years.has(key)) continue;
    const found = await placeFind({ lat: seenAt.lat, lon: seenAt.lon, elevationFt: seenAt.elevationFt });
    years.set(key, (found.kind === "place" ? placeYearOf(found.place) : null) ?? REFERENCE_YEAR);
  }
  return (seenAt) => years.get(placeKey(seenAt)) ?? REFERENCE_YEAR;
}

/** The taxon of one form, dated for the reference climate, or the form's faults. */
export function ownTaxonMade(id: string, input: OwnTaxonInput, yearOf: YearOf): { readonly taxon: Taxon } | { readonly faults: readonly FieldFault[] } {
  const made = ownTaxon(id, input);
  return made.kind === "faults" ? { faults: made.faults } : { taxon: ownTaxonDated(made.taxon, made.seen, yearOf(input.seenAt)) };
}

const faultsText = (faults: readonly FieldFault[]): string => faults.map((f) => `${f.field}: ${f.message}`).join(" ");

/** All own taxa that are not deleted. */
export async function ownRowsRead(): Promise<{ rows: OwnRow[]; unreadable: UnreadableRow[] }> {
  const records = await database().ownTaxon.findMany({ where: { deletedAt: null }, orderBy: { createdAt: "asc" } });
  const read = records.map(({ id, data }) => ({ id, answer: ownTaxonRead(data) }));
  const yearOf = await seenYears(read.map(({ answer }) => (answer.kind === "input" ? answer.input.seenAt : null)));
  const rows: OwnRow[] = [];
  const unreadable: UnreadableRow[] = [];
  for (const { id, answer } of read) {
    if (answer.kind === "faults") {
      unreadable.push({ id, message: faultsText(answer.faults) });
      continue;
    }
    const made = ownTaxonMade(id, answer.input, yearOf);
    if ("faults" in made) unreadable.push({ id, message: faultsText(made.faults) });
    else rows.push({ taxon: made.taxon, input: answer.input });
  }
  return { rows, unreadable };
}

/** Corrections by taxon, oldest first, and the years their windows were seen in. */
export async function correctionRows(): Promise<{ byTaxon: ReadonlyMap<string, readonly Correction[]>; yearOf: YearOf }> {
  const records = await database().correction.findMany({ where: { deletedAt: null }, orderBy: { createdAt: "asc" } });
  const byTaxon = new Map<string, Correction[]>();
  const places: SeenAt[] = [];
  for (const record of records) {
    const read = correctionRead(record.field, record.value);
    if (read.kind === "fault") continue;
    if (isWindowField(read.field)) places.push(windowValue.parse(read.value).seenAt);
    const list = byTaxon.get(record.taxonId) ?? [];
    list.push({ id: record.id, field: read.field, value: read.value, note: record.note, savedAt: record.updatedAt.toISOString() });
    byTaxon.set(record.taxonId, list);
  }
  return { byTaxon, yearOf: await seenYears(places) };
}
