"use client";

import { COLOR_FAMILIES, type ColorFamily, FAMILY_COLORS } from "@/lib/plants/color-family";
import { COLORS } from "@/lib/plants/colors";

/** Families of color as swatches: any of those chosen will do. */
export function ColorField({ chosen, change }: { chosen: readonly ColorFamily[]; change: (colors: readonly ColorFamily[]) => void }) {
  return (
    <fieldset className="rail-field color-field">
      <legend>In color{chosen.length ? `: ${chosen.join(" or ")}` : ""}</legend>
      <div className="swatches">
        {COLOR_FAMILIES.map((family) => {
          const on = chosen.includes(family);
          return (
            <label key={family} className="swatch-label" title={family}>
              <input type="checkbox" checked={on} onChange={() => change(COLOR_FAMILIES.filter((f) => (f === family ? !on : chosen.includes(f))))} />
              <span className="swatch" style={{ background: COLORS[FAMILY_COLORS[family]] }} />
              <span className="visually-hidden">{family}</span>
            </label>
          );
        })}
      </div>
    </fieldset>
  );
}
