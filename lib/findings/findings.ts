// The list of checks, in the order they are shown. A new check is one file and one line here.
import { bare } from "./bare";
import { fallDig, hazards, legality, partner } from "./cautions";
import { crowding, lines, outside, thorns } from "./crowding";
import { density } from "./density";
import { type Check, type CheckContext, type Finding, SEVERITIES } from "./finding";
import { hardiness } from "./hardiness";
import { light } from "./light";
import { moisture } from "./moisture";
import { oneSeason } from "./one-season";
import { resting } from "./resting";
import { deer, salt } from "./salt-deer";
import { soilPh } from "./soil-ph";
import { spacing } from "./spacing";

export const CHECKS: readonly Check[] = [
  hardiness,
  legality,
  light,
  moisture,
  soilPh,
  salt,
  deer,
  spacing,
  crowding,
  outside,
  density,
  bare,
  oneSeason,
  resting,
  partner,
  fallDig,
  hazards,
  thorns,
  lines,
];

/** Everything found on a bed, the most severe first; within a severity in the order of the checks, then of the rows. */
export function bedFindings(context: CheckContext): Finding[] {
  const found = CHECKS.flatMap((check) => check.look(context).map((f) => ({ ...f, check: check.id })));
  return found.sort((a, b) => SEVERITIES.indexOf(a.severity) - SEVERITIES.indexOf(b.severity));
}
