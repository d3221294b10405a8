import type { Climate } from "./climate";
import type { PlaceSetting } from "./setting";

/** Where a zone comes from: set by hand, the table's for the ZIP, that of the nearest ZIP, or an estimate from the normals. */
export type ZoneSource = "hand" | "ZIP" | "nearest ZIP" | "normals";

/** A place as a job has it. Where the climate is unknown (beyond the normals' reach) the year cannot be dated; `fault` says why. */
export type Place = {
  readonly zip: string | null;
  readonly town: string;
  readonly state: string | null;
  readonly lat: number | null;
  readonly lon: number | null;
  /** 5 is zone 5a, 5.5 is 5b, moved by the site unless set by hand; null where there is nothing to go by. */
  readonly zone: number | null;
  readonly zoneSource: ZoneSource | null;
  /** What the 2023 map's table has for the ZIP; null where it has none. */
  readonly zoneMap: number | null;
  /** The climate of the site: the normals as the setting moves them. */
  readonly climate: Climate | null;
  /** The normals of the point itself. */
  readonly openClimate: Climate | null;
  readonly setting: PlaceSetting;
  readonly warnings: readonly string[];
  readonly fault: string | null;
};

/** "Burlington, VT 05401", as much of it as is known. */
export function placeLabel(place: Pick<Place, "zip" | "town" | "state" | "lat" | "lon">): string {
  const point = place.lat !== null && place.lon !== null && !place.zip && !place.town ? `${place.lat.toFixed(2)}, ${place.lon.toFixed(2)}` : "";
  const area = [place.state, place.zip].filter(Boolean).join(" ");
  return [place.town, point, area].filter(Boolean).join(", ") || "Place not set";
}
