// What to be told before planting it: poison, thorns, law, digging, spread. It replaces no list of the state and no physician.
import type { Regulation, Taxon } from "../plants/taxon";
import type { Flag, Hazard } from "../plants/vocabulary";

export type Caution = {
  readonly weight: "grave" | "note";
  readonly title: string;
  readonly words: string;
  readonly source: string;
};

const FLAG_CAUTIONS: Partial<Record<Flag, readonly [title: string, words: string]>> = {
  "skin-irritant": ["Irritates skin", "Gloves and sleeves for the crew."],
  thorns: ["Thorny", "Keep it off walks and play areas."],
  "fall-dig-hazard": ["Fall-dig hazard", "Dig it in spring before bud break; container plants are not affected."],
  "invasive-some-regions": ["Runs wild in some regions", "Ask the state's list before you plant it."],
  suckers: ["Suckers", "Comes up beside itself; give it room or a barrier."],
  "self-seeds": ["Seeds itself about", "Deadhead it where that is not wanted."],
  spreads: ["Spreads", "Runs through a bed; divide or edge it."],
  litter: ["Litters", "Fruit, pods or twigs fall: keep it off paving and parking."],
  "weak-wood": ["Weak wood", "Breaks in ice and wind: away from roofs and drives."],
  "surface-roots": ["Roots at the surface", "Lifts paving; nothing planted close under it thrives."],
  "needs-staking": ["Wants a stake", "Falls over in rich soil or rain."],
  "short-lived": ["Short-lived", "Plan to replace it in some years."],
};

const GRAVE_FLAGS: readonly Flag[] = ["thorns", "invasive-some-regions"];

const WHO = [
  ["people", "people"],
  ["pets", "dogs and cats"],
  ["horses", "horses"],
] as const;

function poison({ toxic, sources }: Taxon): Caution[] {
  const named = (level: Hazard) => WHO.flatMap(([key, words]) => (toxic[key] === level ? [words] : []));
  const [high, low, unknown] = [named("high"), named("low"), named("unknown")];
  const source = sources.toxic ?? "practice";
  const parts = toxic.parts ? ` Parts: ${toxic.parts}.` : "";
  const out: Caution[] = [];
  if (high.length) out.push({ weight: "grave", title: "Poisonous", words: `To ${high.join(", ")}.${parts} Keep it out of reach and tell the client.`, source });
  if (low.length) out.push({ weight: "note", title: "Mildly poisonous", words: `To ${low.join(", ")}.${high.length ? "" : parts}`, source });
  if (unknown.length) out.push({ weight: "note", title: "Poison not known", words: `Nothing is on record for ${unknown.join(", ")}: take it as not safe to eat.`, source });
  return out;
}

/** "sale barred in NH and VT (rule, 2009-01-01)". */
function ruleWords({ states, what, law, date, exempt }: Regulation): string {
  return `${what} in ${states.join(", ")} (${law}, ${date}).${exempt ? ` Exempt: ${exempt}.` : ""} Check the state's present list.`;
}

/** The cautions of a taxon, the gravest first. @param state two letters: its rules come before those of other states */
export function plantCautions(taxon: Taxon, state: string | null): Caution[] {
  const rules = [...taxon.regulated].sort((a, b) => Number(b.states.includes(state ?? "")) - Number(a.states.includes(state ?? "")));
  const law = rules.map((rule): Caution => {
    const here = state !== null && rule.states.includes(state);
    const words = ruleWords(rule);
    return {
      weight: "grave",
      title: here ? `Regulated here, in ${state}` : "Regulated",
      words: `${words.charAt(0).toUpperCase()}${words.slice(1)}`,
      source: taxon.sources.regulated ?? "practice",
    };
  });
  const flags = taxon.flags.flatMap((flag): Caution[] => {
    const said = FLAG_CAUTIONS[flag];
    return said ? [{ weight: GRAVE_FLAGS.includes(flag) ? "grave" : "note", title: said[0], words: said[1], source: taxon.sources.flags ?? "practice" }] : [];
  });
  const all = [...law, ...poison(taxon), ...flags];
  return [...all.filter((c) => c.weight === "grave"), ...all.filter((c) => c.weight === "note")];
}
