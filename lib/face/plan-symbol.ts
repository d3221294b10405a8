// A plant as a plan shows it, seen from above: our own symbols, drawn from the plant's habit and what it wears on the day. Marks are data, so that screen, print and PDF draw alike.
import type { Taxon } from "../plants/taxon";
import type { FaceMark } from "./face-mark";
import { pen } from "./face-mark";
import { type Point, pathCircle, pathLine } from "./face-path";
import { bladeMarks, frondMarks, leafMarks, matMarks, petalFlowers } from "./plan-symbol-herb";
import { branchPaths, crownPath, dashedCircle, ring, spread } from "./plan-symbol-paths";
import type { PlantLook } from "./plant-look";
import { seeded } from "./seeded";
import { toneDark, toneLight } from "./tone";

/** What decides a plan symbol besides the day. */
export type PlanSymbolPlant = Pick<Taxon, "kind" | "habit" | "foliage">;

/** A drawn piece of a plan symbol; `shadow` is what the crown casts on the ground. */
export type PlanMark = Omit<FaceMark, "part"> & { readonly part: FaceMark["part"] | "shadow" };

/** How many of a kind of plant are drawn differently, so that a group does not look stamped. */
export const PLAN_SYMBOL_FORMS = 3;

/** A symbol's own line, ft, for a crown of this radius: fine on small plants, never heavy on trees. */
const lineFt = (radiusFt: number) => Math.min(0.07, 0.022 + radiusFt * 0.012);

/** Needles: a serrate star, the leader in the middle. */
function needleMarks(radiusFt: number, hex: string, chance: () => number): readonly FaceMark[] {
  const draw = pen();
  const points = Math.max(11, Math.min(28, Math.round(9 + radiusFt * 3)));
  const star = ring(points * 2, chance, 0.06).map(([x, y], i): Point => [x * radiusFt * (i % 2 === 0 ? 1 : 0.84), y * radiusFt * (i % 2 === 0 ? 1 : 0.84)]);
  draw.fill("leaf", hex, pathLine(star, true));
  draw.line("leaf", toneDark(hex, 0.5), lineFt(radiusFt) * 0.9, pathLine(star, true));
  const rays = star.filter((_, i) => i % 2 === 0);
  draw.line(
    "leaf",
    toneDark(hex, 0.42),
    lineFt(radiusFt) * 0.7,
    ...rays.map(([x, y]) =>
      pathLine([
        [x * 0.16, y * 0.16],
        [x * 0.86, y * 0.86],
      ]),
    ),
  );
  draw.line(
    "leaf",
    toneLight(hex, 0.3),
    lineFt(radiusFt) * 0.7,
    ...rays.map(([x, y], i) => {
      const next = rays[(i + 1) % rays.length] ?? [x, y];
      const [mx, my] = [(x + next[0]) / 2, (y + next[1]) / 2];
      return pathLine([
        [mx * 0.45, my * 0.45],
        [mx * 0.82, my * 0.82],
      ]);
    }),
  );
  return draw.marks();
}

/** A leafy crown: lobes at the rim, a lighter mass toward the light (upper left), arcs of leaf masses within. */
function crownMarks(plant: PlanSymbolPlant, radiusFt: number, hex: string, chance: () => number): readonly FaceMark[] {
  const draw = pen();
  const tree = plant.kind === "tree";
  const evergreen = plant.foliage === "evergreen" || plant.foliage === "semi-evergreen";
  const lobes = tree ? Math.max(12, Math.min(22, Math.round(10 + radiusFt * 0.8))) : evergreen ? 9 : Math.max(8, Math.min(13, Math.round(7 + radiusFt)));
  const outline = crownPath(lobes, radiusFt, plant.habit === "irregular" || plant.habit === "spreading" ? 0.2 : 0.09, tree ? 0.34 : 0.4, chance);
  draw.fill("leaf", hex, outline);
  const light: Point = [-radiusFt * 0.2, radiusFt * 0.2];
  draw.fill("leaf", toneLight(hex, 0.16), crownPath(Math.max(7, lobes - 4), radiusFt * 0.62, 0.14, 0.4, chance, light));
  draw.fill("leaf", toneLight(hex, 0.3), crownPath(6, radiusFt * 0.3, 0.16, 0.42, chance, [light[0] * 1.5, light[1] * 1.5]));
  const masses = spread(tree ? 11 : evergreen ? 9 : 6, radiusFt * 0.72, chance);
  draw.line(
    "leaf",
    toneDark(hex, 0.3),
    lineFt(radiusFt) * 0.8,
    ...masses.map(([x, y]) => {
      const size = radiusFt * (tree ? 0.13 : 0.17) * (0.8 + chance() * 0.5);
      const turn = Math.atan2(y, x);
      return pathLine(Array.from({ length: 5 }, (_, i): Point => [x + size * Math.cos(turn - 1.1 + i * 0.55), y + size * Math.sin(turn - 1.1 + i * 0.55)]));
    }),
  );
  draw.line("leaf", toneDark(hex, evergreen ? 0.55 : 0.42), lineFt(radiusFt) * (evergreen ? 1.35 : 1), outline);
  return draw.marks();
}

/** Bare: open branch lines from the middle, forked, and nothing else. */
function branchMarks(plant: PlanSymbolPlant, radiusFt: number, hex: string, chance: () => number): readonly FaceMark[] {
  const draw = pen();
  const limbs = plant.kind === "tree" ? 7 : plant.habit === "columnar" ? 6 : 9;
  const { thick, thin } = branchPaths(limbs, radiusFt, chance);
  draw.line("stem", hex, lineFt(radiusFt) * 1.7, ...thick);
  draw.line("stem", hex, lineFt(radiusFt) * 0.95, ...thin);
  return draw.marks();
}

function bodyMarks(plant: PlanSymbolPlant, radiusFt: number, hex: string, chance: () => number): readonly FaceMark[] {
  switch (plant.kind) {
    case "conifer":
      return plant.habit === "mat" ? matMarks(radiusFt, hex, chance) : needleMarks(radiusFt, hex, chance);
    case "tree":
    case "shrub":
      return plant.habit === "mat" ? matMarks(radiusFt, hex, chance) : crownMarks(plant, radiusFt, hex, chance);
    case "grass":
      return bladeMarks(radiusFt, hex, 34, chance);
    case "bulb":
      return bladeMarks(radiusFt, hex, 9, chance);
    case "fern":
      return frondMarks(radiusFt, hex, chance);
    case "groundcover":
      return matMarks(radiusFt, hex, chance);
    case "vine":
      return leafMarks(radiusFt, hex, 7, 1.15, chance);
    case "perennial":
    case "annual":
      if (plant.habit === "mat") return matMarks(radiusFt, hex, chance);
      if (plant.habit === "fountain") return bladeMarks(radiusFt, hex, 26, chance);
      if (plant.habit === "rosette") return leafMarks(radiusFt, hex, 11, 1.5, chance);
      return leafMarks(radiusFt, hex, plant.habit === "upright" || plant.habit === "clump" ? 13 : 17, 0.9, chance);
  }
}

/** What a crown casts on the ground, the light standing upper left. */
function shadowMark(radiusFt: number): PlanMark {
  const off = Math.min(0.5, radiusFt * 0.1);
  return { part: "shadow", d: pathCircle([off, -off], radiusFt * 0.97), fill: "#1c2417", stroke: "none", strokeFt: 0, opacity: 0.16 };
}

/** Share of a crown's ground under flowers or fruit, by how much they show. */
const SHOWN = { 1: 0.14, 2: 0.26, 3: 0.4 } as const;
const shownShare = (show: number) => (show >= 3 ? SHOWN[3] : show >= 2 ? SHOWN[2] : SHOWN[1]);

/** Round dots over the crown: fruit, the flowers of trees and shrubs, seedheads. */
function dotMarks(part: "flower" | "fruit" | "seedhead", radiusFt: number, hex: string, share: number, dotFt: number, chance: () => number): readonly FaceMark[] {
  const draw = pen();
  const count = Math.max(3, Math.min(90, Math.round((share * radiusFt ** 2) / dotFt ** 2)));
  const dots = spread(count, radiusFt - dotFt, chance).map((at) => pathCircle(at, dotFt * (0.8 + chance() * 0.4)));
  draw.fill(part, hex, ...dots);
  draw.line(part, toneDark(hex, 0.35), Math.min(0.016, dotFt * 0.16), ...dots);
  return draw.marks();
}

/**
 * The plan symbol of a plant on a day: back to front, in feet from its middle (y down, as SVG has it). In leaf it is its crown in its own color with flowers, fruit
 * or seedheads on it; woody and bare, open branches; died back, a dashed circle with what stands of it.
 * @param radiusFt of the crown in the year shown
 * @param form 0 … PLAN_SYMBOL_FORMS − 1: which of a few drawings of the same plant
 */
export function planSymbol(plant: PlanSymbolPlant, look: PlantLook, radiusFt: number, form = 0): readonly PlanMark[] {
  if (!(radiusFt > 0)) return [];
  const chance = seeded(`${plant.kind} ${plant.habit} ${form}`);
  const woody = plant.kind === "tree" || plant.kind === "shrub" || plant.kind === "conifer" || plant.kind === "vine";
  const marks: PlanMark[] = [];
  if (look.leafHex !== null) marks.push(shadowMark(radiusFt), ...bodyMarks(plant, radiusFt, look.leafHex, chance));
  else if (woody) marks.push(...branchMarks(plant, radiusFt, look.stemHex, chance));
  else {
    const draw = pen();
    draw.line("stem", "#8a8878", Math.min(0.03, lineFt(radiusFt)), dashedCircle(radiusFt, 20));
    marks.push(...draw.marks());
  }
  if (look.flower) {
    const share = shownShare(look.flower.show);
    const small = plant.kind === "tree" || plant.kind === "shrub" || plant.kind === "conifer" || plant.kind === "vine";
    marks.push(
      ...(small
        ? dotMarks("flower", radiusFt, look.flower.hex, share, Math.max(0.1, Math.min(0.34, radiusFt * 0.11)), chance)
        : petalFlowers(radiusFt, look.flower.hex, share, chance)),
    );
  }
  if (look.fruit) marks.push(...dotMarks("fruit", radiusFt, look.fruit.hex, shownShare(look.fruit.show) * 0.35, Math.max(0.05, Math.min(0.16, radiusFt * 0.06)), chance));
  if (look.seedhead && !look.flower) marks.push(...dotMarks("seedhead", radiusFt * 0.8, look.seedhead.hex, 0.16, Math.max(0.05, Math.min(0.13, radiusFt * 0.09)), chance));
  if (woody) {
    const draw = pen();
    draw.fill("stem", toneDark(look.stemHex, 0.3), pathCircle([0, 0], Math.min(0.3, Math.max(0.05, radiusFt * 0.04))));
    marks.push(...draw.marks());
  }
  return marks;
}
