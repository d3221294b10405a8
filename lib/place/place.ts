import type { Climate } from "./climate";

/** A place as a job has it. Where the climate is unknown (beyond the normals' reach) the year cannot be dated; `fault` says why. */
export type Place = {
  readonly zip: string | null;
  readonly town: string;
  readonly state: string | null;
  readonly lat: number | null;
  readonly lon: number | null;
  /** 5 is zone 5a, 5.5 is 5b; null where nobody has said. */
  readonly zone: number | null;
  /** What the 2023 map's table has for the ZIP; null where it has none. */
  readonly zoneMap: number | null;
  readonly climate: Climate | null;
  readonly warnings: readonly string[];
  readonly fault: string | null;
};

/** "Burlington, VT 05401", as much of it as is known. */
export function placeLabel(place: Pick<Place, "zip" | "town" | "state" | "lat" | "lon">): string {
  const area = [place.state, place.zip].filter(Boolean).join(" ");
  const label = [place.town, area].filter(Boolean).join(", ");
  if (label) return label;
  return place.lat !== null && place.lon !== null ? `${place.lat.toFixed(2)}, ${place.lon.toFixed(2)}` : "Place not set";
}
