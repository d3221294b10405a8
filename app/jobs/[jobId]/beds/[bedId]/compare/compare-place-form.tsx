import Link from "next/link";
import type { SuggestedPlace } from "@/lib/server/bed-compare";

export type CompareValues = { readonly zip: string; readonly lat: string; readonly lon: string; readonly elevationFt: string };

type Props = {
  readonly values: CompareValues;
  readonly fault: { readonly field: string; readonly message: string } | null;
  readonly path: string;
  readonly suggestions: readonly SuggestedPlace[];
};

/** Asks for the other place; the answer is the page's address, so that it can be kept and sent. */
export function ComparePlaceForm({ values, fault, path, suggestions }: Props) {
  const field = (name: keyof CompareValues, label: string, placeholder: string) => (
    <div className="field">
      <label htmlFor={`other-${name}`}>{label}</label>
      <input
        id={`other-${name}`}
        name={name}
        defaultValue={values[name]}
        placeholder={placeholder}
        inputMode={name === "zip" ? "numeric" : "text"}
        className="short"
        aria-describedby={fault ? "other-fault" : undefined}
        aria-invalid={fault?.field === name}
      />
    </div>
  );
  return (
    <form action={path} className="screen-only">
      <div className="fields">
        {field("zip", "ZIP code of the other place", "12901")}
        {field("lat", "or latitude", "47.10")}
        {field("lon", "and longitude", "-73.20")}
        {field("elevationFt", "Elevation, ft", "")}
        <button type="submit" className="primary">
          Compare
        </button>
      </div>
      <p id="other-fault" role="alert" className="alert">
        {fault?.message ?? ""}
      </p>
      {suggestions.length ? (
        <p className="row small">
          {suggestions.map(({ label, zip }) => (
            <Link key={zip} href={`${path}?zip=${zip}`}>
              {label}
            </Link>
          ))}
        </p>
      ) : null}
    </form>
  );
}
