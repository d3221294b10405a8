// Adds, changes and deletes (restorable) taxa of the user's own. The open dataset is never written to.
import { type FieldFault, type OwnTaxonInput, ownTaxonRead } from "../plants/own-taxon";
import type { Taxon } from "../plants/taxon";
import { database } from "./database";
import { newId } from "./identity";
import { ownTaxonMade, seenYears } from "./own-rows";
import { taxaForget, taxaHeld } from "./taxa";

export type OwnSaveAnswer = { readonly kind: "saved"; readonly id: string } | { readonly kind: "faults"; readonly faults: readonly FieldFault[] };

/** Another plant that goes by the very name already; `id` is the taxon's own. */
async function nameFaults(id: string, taxon: Taxon): Promise<FieldFault[]> {
  const { taxa, own } = await taxaHeld();
  const twin = taxa.find((t) => t.id !== id && t.name === taxon.name && t.tradeDesignation === taxon.tradeDesignation);
  if (!twin) return [];
  const where = own.has(twin.id) ? "among your own plants" : "in the dataset; on its page you can correct its values for your region";
  return [{ field: taxon.cultivar ? "cultivar" : taxon.tradeDesignation ? "trade" : "botanical", message: `${taxon.name} is already ${where}.` }];
}

/** The family of a genus, as the dataset has it. */
async function familyOf(botanical: string): Promise<string | null> {
  const { taxa } = await taxaHeld();
  return taxa.find((t) => botanical === t.genus || botanical.startsWith(`${t.genus} `))?.family ?? null;
}

async function inputChecked(id: string, untrusted: unknown): Promise<{ readonly input: OwnTaxonInput } | { readonly faults: readonly FieldFault[] }> {
  const read = ownTaxonRead(untrusted);
  if (read.kind === "faults") return { faults: read.faults };
  const input = { ...read.input, family: read.input.family ?? (await familyOf(read.input.botanical)) };
  const made = ownTaxonMade(id, input, await seenYears([input.seenAt]));
  if ("faults" in made) return made;
  const faults = await nameFaults(id, made.taxon);
  return faults.length ? { faults } : { input };
}

/**
 * Saves a form as a taxon of one's own.
 * @param id the taxon to change; null adds one
 * @param untrusted an OwnTaxonInput from a screen; every fault names its field
 */
export async function ownTaxonSave(id: string | null, untrusted: unknown): Promise<OwnSaveAnswer> {
  const wanted = id ?? `own-${newId()}`;
  const checked = await inputChecked(wanted, untrusted);
  if ("faults" in checked) return { kind: "faults", faults: checked.faults };
  if (id === null) await database().ownTaxon.create({ data: { id: wanted, data: checked.input } });
  else {
    const { count } = await database().ownTaxon.updateMany({ where: { id, deletedAt: null }, data: { data: checked.input } });
    if (count === 0) return { kind: "faults", faults: [{ field: "(form)", message: "This plant was deleted in another window. Undo the deletion there, then save again." }] };
  }
  taxaForget();
  return { kind: "saved", id: wanted };
}

/** Deletes an own taxon so that it can be restored. Beds that hold it keep its name and are no longer checked for it. */
export async function ownTaxonDelete(id: string): Promise<void> {
  await database().ownTaxon.updateMany({ where: { id }, data: { deletedAt: new Date() } });
  taxaForget();
}

export async function ownTaxonRestore(id: string): Promise<void> {
  await database().ownTaxon.updateMany({ where: { id }, data: { deletedAt: null } });
  taxaForget();
}

/** The name of an own taxon that was deleted and can be restored; null when there is none. */
export async function ownTaxonDeleted(id: string): Promise<string | null> {
  const record = await database().ownTaxon.findFirst({ where: { id, deletedAt: { not: null } } });
  const read = record ? ownTaxonRead(record.data) : null;
  if (!read) return null;
  if (read.kind === "faults") return "A plant of your own";
  const { botanical, cultivar, trade } = read.input;
  return [botanical, cultivar ? `'${cultivar}'` : "", trade?.toUpperCase() ?? ""].filter(Boolean).join(" ");
}
