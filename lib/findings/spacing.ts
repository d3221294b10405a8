import { yearsToSpread } from "../ground/growth";
import { lengthText } from "../ground/length";
import { quantityForArea } from "../ground/spacing";
import { type Check, rowFinding } from "./finding";

// Spacing as a share of mature spread: 0.67 fast fill, 0.75–0.8 standard, 1.0 touching at maturity (common practice, no source).
const TIGHT = 0.66;
const FAR_TOO_TIGHT = 0.5;
const LOOSE = 1.5;

/** Spacing on center against mature spread. */
export const spacing: Check = {
  id: "spacing",
  look: ({ rows }) =>
    rows.flatMap((r) => {
      if (r.quantity < 2 || r.row.existing) return [];
      const share = r.spacingFt / r.spreadFt;
      if (share < TIGHT) {
        const years = yearsToSpread(r.taxon, r.row.size, r.spacingFt);
        const when =
          years === null ? "" : years === 0 ? " They touch on planting day." : years < 1 ? " They touch in the first season." : ` They touch by year ${Math.ceil(years)}.`;
        const better = Math.max(0.25, Math.round(r.spreadFt * 0.8 * 4) / 4);
        const count = r.row.quantity.by === "area" ? ` (${quantityForArea(r.row.quantity.areaSqFt, better, "triangular")} plants)` : "";
        return [
          rowFinding(r, share < FAR_TOO_TIGHT ? "fix" : "consider", `grows ${lengthText(r.spreadFt)} wide, set ${lengthText(r.spacingFt)} on center.${when}`, {
            type: "spacing",
            rowId: r.row.id,
            spacingFt: better,
            label: `Space at ${lengthText(better)}${count}`,
          }),
        ];
      }
      if (share > LOOSE && r.taxon.kind !== "tree" && r.taxon.kind !== "conifer")
        return [
          rowFinding(
            r,
            "note",
            `grows ${lengthText(r.spreadFt)} wide, set ${lengthText(r.spacingFt)} on center: the group will not close. Fill between with a groundcover or set it closer.`,
          ),
        ];
      return [];
    }),
};
