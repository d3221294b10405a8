"use client";

import { useActionState } from "react";
import { placeChangeAction } from "@/app/actions";
import { FieldFault } from "@/app/parts/field-fault";
import { type PlaceSetting, settingIsNormal } from "@/lib/place/setting";
import { SettingFields } from "./setting-fields";

type Values = {
  readonly zip: string;
  readonly town: string;
  readonly lat: string;
  readonly lon: string;
  readonly elevationFt: string;
  readonly zone: string;
  readonly growing: string;
  readonly winter: string;
};

/** Place and targets of a job. Empty fields follow from the ZIP; what is typed wins. */
export function PlaceForm({
  jobId,
  values,
  setting,
  found,
  zones,
}: {
  jobId: string;
  values: Values;
  setting: PlaceSetting;
  found: { lat: string; lon: string; elevationFt: string; zone: string; zoneWords: string };
  zones: readonly string[];
}) {
  const [answer, submit, busy] = useActionState(placeChangeAction.bind(null, jobId), null);
  const field = (name: keyof Values, label: string, placeholder = "") => (
    <div className="field" key={name}>
      <label htmlFor={`place-${name}`}>{label}</label>
      <input
        id={`place-${name}`}
        name={name}
        defaultValue={values[name]}
        placeholder={placeholder}
        aria-describedby={`place-${name}-fault`}
        aria-invalid={answer?.field === name}
        className="short"
      />
      <FieldFault id={`place-${name}-fault`} fault={answer} field={name} />
    </div>
  );
  return (
    // The key starts the fields anew when the stored place changes: uncontrolled fields keep their first value else.
    <form action={submit} key={JSON.stringify([values, setting])}>
      <div className="fields">
        {field("zip", "ZIP code", "05401")}
        {field("town", "Town", "Burlington")}
      </div>
      <details open={!values.zip || (!found.zone && !values.zone) || Boolean(values.lat || values.zone || values.elevationFt) || (answer !== null && answer.field !== "")}>
        <summary>By hand</summary>
        <div className="fields">
          {field("lat", "Latitude", found.lat)}
          {field("lon", "Longitude", found.lon)}
          {field("elevationFt", "Elevation, ft", found.elevationFt)}
          <div className="field">
            <label htmlFor="place-zone">Hardiness zone</label>
            <select id="place-zone" name="zone" defaultValue={values.zone} aria-describedby="place-zone-fault">
              <option value="">{found.zoneWords}</option>
              {zones.map((zone) => (
                <option key={zone} value={zone}>
                  {zone}
                </option>
              ))}
            </select>
            <FieldFault id="place-zone-fault" fault={answer} field="zone" />
          </div>
        </div>
      </details>
      <details open={!settingIsNormal(setting)}>
        <summary>How the site differs from its ZIP</summary>
        <SettingFields setting={setting} />
      </details>
      <details>
        <summary>Targets of the year</summary>
        <div className="fields">
          {field("growing", "Growing season, % of the ground")}
          {field("winter", "Winter, % of the ground")}
        </div>
      </details>
      <p className="row">
        <button type="submit" className="primary" disabled={busy}>
          {busy ? "Saving …" : "Save the place"}
        </button>
        <span role="status" className="soft small">
          {answer?.field === "" ? answer.message : ""}
        </span>
      </p>
    </form>
  );
}
