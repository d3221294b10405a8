import { type Check, type CheckedRow, rowFinding } from "./finding";

/** Sale or planting barred by the state the job is in. Local law decides; the dataset may not know all of it. */
export const legality: Check = {
  id: "legality",
  look: ({ rows, state }) =>
    rows.flatMap((r) => {
      const rule = state ? r.taxon.regulated.find((g) => g.states.includes(state)) : undefined;
      if (rule && !r.row.existing) {
        const but = rule.exempt ? ` Exempt: ${rule.exempt}.` : "";
        return [
          rowFinding(r, "fix", `is regulated: ${rule.what} in ${state} (${rule.law}, ${rule.date}).${but} Check the state's present list before you sell or plant it.`, {
            type: "remove",
            rowId: r.row.id,
            label: "Take it out",
          }),
        ];
      }
      if (r.taxon.flags.includes("invasive-some-regions") && !r.row.existing)
        return [rowFinding(r, "note", `spreads into wild land in some regions${r.taxon.note ? `: ${r.taxon.note}` : ""}. Ask the state's list before you plant it.`)];
      return [];
    }),
};

/** Poisonous parts, thorns. The usual cautions; they do not replace medical or veterinary advice. */
export const hazards: Check = {
  id: "hazards",
  look: ({ rows }) =>
    rows.flatMap((r) => {
      const { people, pets, horses, parts } = r.taxon.toxic;
      const who = [people === "high" ? "people" : null, pets === "high" ? "dogs and cats" : null, horses === "high" ? "horses" : null].filter((w) => w !== null);
      const said: string[] = [];
      if (who.length) said.push(`is poisonous to ${who.join(", ")}${parts ? ` (${parts})` : ""}: keep it out of reach of children and animals and tell the client`);
      if (r.taxon.flags.includes("skin-irritant")) said.push("its sap irritates skin: gloves and sleeves for the crew");
      if (r.taxon.flags.includes("thorns")) said.push("is thorny: keep it off walks and play areas");
      return said.length ? [rowFinding(r, "note", `${said.join("; ")}.`)] : [];
    }),
};

/** Trees that take badly to being dug in fall. */
export const fallDig: Check = {
  id: "fall-dig",
  look: ({ rows }) =>
    rows.flatMap((r) =>
      !r.row.existing && r.taxon.flags.includes("fall-dig-hazard") && /b\s*&\s*b|bare|cal|ball|clump|ft/i.test(r.row.size)
        ? [rowFinding(r, "note", "is a fall-dig hazard: dig it in spring before bud break (common practice, no source); container plants are not affected.")]
        : [],
    ),
};

const sameSpecies = (a: CheckedRow, b: CheckedRow) => a.taxon.botanical === b.taxon.botanical || a.taxon.genus === b.taxon.genus;

/** Females that fruit need a male of their kind near. */
export const partner: Check = {
  id: "partner",
  look: ({ rows }) =>
    rows.flatMap((r) => {
      if (r.taxon.sex !== "female" || !r.taxon.partner || !r.taxon.features.some((f) => f.kind === "fruit")) return [];
      const male = rows.some((m) => m !== r && sameSpecies(r, m) && (m.taxon.sex === "male" || m.taxon.sex === "dioecious"));
      return male ? [] : [rowFinding(r, "consider", `fruits only with a pollination partner near: ${r.taxon.partner}. None is in this bed.`)];
    }),
};
