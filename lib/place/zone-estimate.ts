// A hardiness zone where the 2023 table has none, from the normals.
import type { Climate } from "./climate";
import { type ZoneNumber, zoneOfMinimumF } from "./zone";

/**
 * Average yearly extreme minimum of a place, °F, from the mean minimum of its coldest month. Fitted to 3,034 ZIP codes that the
 * 2023 table has a zone for (scripts/calibrate-climate.ts): the half zone itself for 56 % of them, within one half zone for 97 %.
 */
const FACTOR = 1.3;
const OFFSET_F = -27.1;

/** The half zone that the normals suggest: a default until somebody who knows sets it by hand. */
export function zoneEstimated(climate: Pick<Climate, "tminF">): ZoneNumber {
  return zoneOfMinimumF(FACTOR * Math.min(...climate.tminF) + OFFSET_F);
}
