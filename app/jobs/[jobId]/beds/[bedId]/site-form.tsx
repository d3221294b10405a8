"use client";

import { type BedSite, FACINGS, PRESSURES } from "@/lib/ground/bed";
import { LIGHTS, MOISTURES } from "@/lib/plants/vocabulary";
import { phRead } from "./field-readers";
import { TextField } from "./text-field";

const LIGHT_WORDS = { sun: "full sun (6 h or more)", part: "part shade (3–6 h)", shade: "shade (under 3 h)" } as const;

function Choice<T extends string>({
  label,
  value,
  options,
  words,
  choose,
}: {
  label: string;
  value: T;
  options: readonly T[];
  words?: Readonly<Record<T, string>>;
  choose: (value: T) => void;
}) {
  return (
    <label className="field">
      {label}
      <select
        value={value}
        onChange={(event) => {
          const chosen = options.find((o) => o === event.target.value);
          if (chosen !== undefined) choose(chosen);
        }}
      >
        {options.map((option) => (
          <option key={option} value={option}>
            {words?.[option] ?? (option || "not said")}
          </option>
        ))}
      </select>
    </label>
  );
}

/** What the bed offers: the checks compare each plant with it. */
export function SiteForm({ site, change }: { site: BedSite; change: (site: Partial<BedSite>) => void }) {
  return (
    <div className="fields">
      <Choice label="Light" value={site.light} options={LIGHTS} words={LIGHT_WORDS} choose={(light) => change({ light })} />
      <Choice label="Soil moisture" value={site.moisture} options={MOISTURES} choose={(moisture) => change({ moisture })} />
      <div className="field">
        <span className="soft small">Soil pH</span>
        <TextField
          label="Soil pH"
          className="short"
          text={site.ph === null ? "" : String(site.ph)}
          placeholder="not tested"
          inputMode="decimal"
          read={phRead}
          keep={(ph) => change({ ph })}
        />
      </div>
      <Choice label="Road salt" value={site.salt} options={PRESSURES} choose={(salt) => change({ salt })} />
      <Choice label="Deer" value={site.deer} options={PRESSURES} choose={(deer) => change({ deer })} />
      <Choice label="Faces" value={site.faces} options={FACINGS} choose={(faces) => change({ faces })} />
    </div>
  );
}
