// Perennials, grasses, ferns, bulbs and annuals: leaves below, stems and flower heads above.
import { drawBlades, drawFronds, tuft } from "./blades";
import { type Crown, crownPoints, crownProfile } from "./crown-profile";
import type { Pen } from "./face-mark";
import { type Point, pathCurve, pathLeaf } from "./face-path";
import { type FlowerForm, flowerForm } from "./flower-form";
import { flowerHead, HEAD_LENGTH } from "./flower-head";
import { FINE, foliageMass } from "./foliage-mass";
import type { PlantLook, Wear } from "./plant-look";
import type { SilhouettePlant } from "./plant-shape";
import { toneDark, toneLight } from "./tone";

/** Families whose leaves are straps. */
const STRAP = new Set(["Iridaceae", "Asphodelaceae", "Amaryllidaceae", "Liliaceae", "Poaceae", "Cyperaceae", "Juncaceae", "Commelinaceae", "Typhaceae", "Acoraceae"]);
/** Genera with broad leaves from the ground. */
const BROAD = new Set([
  "Hosta",
  "Bergenia",
  "Rodgersia",
  "Ligularia",
  "Brunnera",
  "Darmera",
  "Petasites",
  "Rheum",
  "Astilboides",
  "Heuchera",
  "Heucherella",
  "Tiarella",
  "Helleborus",
  "Asarum",
  "Acanthus",
  "Convallaria",
  "Podophyllum",
]);

type Stem = { readonly from: Point; readonly tip: Point; readonly lean: number };

/** Stems from the foot; those at the sides lean out and are shorter. */
function stems(plant: SilhouettePlant, count: number, flare: number, random: () => number): Stem[] {
  const { heightFt, spreadFt } = plant;
  return Array.from({ length: count }, (_, i): Stem => {
    const side = count === 1 ? 0 : -1 + (2 * i) / (count - 1);
    const from: Point = [side * spreadFt * 0.5 * (1 - flare) * 0.8, 0];
    const height = heightFt * (1 - Math.abs(side) ** 2 * 0.22) * (0.88 + random() * 0.12);
    const x = side * spreadFt * 0.46 + (random() - 0.5) * spreadFt * 0.06;
    return { from, tip: [x, height], lean: (x - from[0]) / height };
  });
}

const stemCurve = ({ from, tip }: Stem): string => pathCurve(from, [from[0] + (tip[0] - from[0]) * 0.35, tip[1] * 0.6], tip);

/** Leaves in pairs up a stem, to `upTo` of it. */
function stemLeaves({ from, tip }: Stem, upTo: number, lengthFt: number, random: () => number): string[] {
  const leaves: string[] = [];
  const n = 9;
  for (let i = 0; i < n; i++) {
    const t = 0.06 + (i / n) * upTo;
    const at: Point = [from[0] + (tip[0] - from[0]) * t * (0.7 + t * 0.3), tip[1] * t];
    for (const side of [-1, 1]) {
      const long = lengthFt * (1.15 - t * 0.6) * (0.85 + random() * 0.3);
      leaves.push(pathLeaf(at, [at[0] + side * long * 0.74, at[1] + long * (0.42 + random() * 0.4)], long * 0.25, side * -0.1));
    }
  }
  return leaves;
}

const stemFt = ({ heightFt }: SilhouettePlant): number => Math.max(0.015, heightFt * 0.009);
const STEM_COUNT = [0, 5, 9, 15] as const;

/** Head width: what the form and the plant allow. */
function headFt(plant: SilhouettePlant, form: FlowerForm): number {
  const { heightFt, spreadFt } = plant;
  const byForm: Record<FlowerForm, number> = { daisy: 0.23, spike: 0.11, plume: 0.17, umbel: 0.3, globe: 0.2, trumpet: 0.26, bell: 0.09, cup: 0.2, panicle: 0.22 };
  return Math.min(0.7, Math.max(0.09, Math.min(heightFt, spreadFt * 1.1) * byForm[form]), (heightFt * 0.45) / HEAD_LENGTH[form] + 0.05);
}

function heads(draw: Pen, plant: SilhouettePlant, wear: Wear, part: "flower" | "seedhead", list: readonly Stem[]): void {
  const form = flowerForm(plant.genus, plant.family);
  const sizeFt = headFt(plant, form) * (part === "seedhead" ? 0.72 : 1);
  for (const { tip, lean } of list)
    flowerHead(draw, { part, form: part === "seedhead" && form !== "plume" && form !== "spike" ? "globe" : form, hex: wear.hex, sizeFt }, tip, lean);
}

/** Flowering stems over whatever leaves there are; bare dry ones under seedheads in winter. */
function flowerStems(draw: Pen, plant: SilhouettePlant, look: PlantLook, random: () => number): void {
  const wear = look.flower ?? look.seedhead;
  if (!wear) return;
  const list = stems(plant, STEM_COUNT[wear.show] ?? 8, 0.7, random);
  const hex = look.flower && look.leafHex ? toneDark(look.leafHex, 0.1) : wear.hex;
  draw.line("stem", hex, stemFt(plant), ...list.map(stemCurve));
  heads(draw, plant, wear, look.flower ? "flower" : "seedhead", list);
}

/** Tall leafy stems side by side. */
function upright(draw: Pen, plant: SilhouettePlant, look: PlantLook, random: () => number): void {
  const { heightFt, spreadFt } = plant;
  const list = stems(plant, Math.round(Math.min(15, Math.max(7, spreadFt * 5))), plant.habit === "vase" ? 0.95 : 0.45, random);
  const { leafHex, flower, seedhead } = look;
  const wear = flower ?? seedhead;
  if (leafHex) {
    const long = Math.min(spreadFt * 0.2, heightFt * 0.13);
    draw.line("stem", toneDark(leafHex, 0.22), stemFt(plant) * 1.3, ...list.map(stemCurve));
    const leaves = list.flatMap((stem) => stemLeaves(stem, wear ? 0.78 : 0.94, long, random));
    draw.fill("leaf", toneDark(leafHex, 0.24), ...leaves.filter((_, i) => i % 3 === 0));
    draw.fill("leaf", leafHex, ...leaves.filter((_, i) => i % 3 === 1));
    draw.fill("leaf", toneLight(leafHex, 0.18), ...leaves.filter((_, i) => i % 3 === 2));
  } else if (wear) draw.line("stem", wear.hex, stemFt(plant), ...list.map(stemCurve));
  if (wear) heads(draw, plant, wear, flower ? "flower" : "seedhead", wear.show === 1 ? list.filter((_, i) => i % 2 === 0) : list);
}

/** Forms that sit close on a mound instead of standing above it. */
const ON_MOUND: readonly FlowerForm[] = ["cup", "daisy", "umbel", "panicle", "globe"];

/** Heads scattered over the sunny side of a mound. */
function headsOnMound(draw: Pen, plant: SilhouettePlant, wear: Wear, crown: Crown, random: () => number): void {
  const form = flowerForm(plant.genus, plant.family);
  const sizeFt = Math.min(headFt(plant, form), Math.max(0.1, plant.spreadFt * 0.1));
  const cell = (sizeFt * 1.5) / Math.sqrt(wear.show / 3);
  const spots = crownPoints(crown, Math.max(cell, plant.spreadFt / 16), 0.96, random).filter(([, y]) => y > crown.heightFt * 0.34);
  for (const [x, y] of spots.sort((a, b) => b[1] - a[1]))
    flowerHead(draw, { part: "flower", form, hex: wear.hex, sizeFt: sizeFt * (0.8 + random() * 0.3) }, [x, y + sizeFt * 0.4], 0);
}

/** A mound of leaves with flower stems above (or, for low mounds, flowers on it). */
function mound(draw: Pen, plant: SilhouettePlant, look: PlantLook, share: number, random: () => number): void {
  const { heightFt, spreadFt, habit } = plant;
  const sits = look.flower !== null && look.leafHex !== null && habit !== "clump" && ON_MOUND.includes(flowerForm(plant.genus, plant.family));
  const crown: Crown = { footFt: 0, heightFt: heightFt * (sits ? Math.min(0.96, share + 0.15) : share), widthFt: spreadFt, profile: crownProfile("mounded") };
  if (look.leafHex) foliageMass(draw, look.leafHex, crown, FINE, random);
  if (sits && look.flower) headsOnMound(draw, plant, look.flower, crown, random);
  else flowerStems(draw, plant, look, random);
}

/** Broad leaves from the ground, overlapping, with scapes above. */
function rosette(draw: Pen, plant: SilhouettePlant, look: PlantLook, share: number, random: () => number): void {
  const { heightFt, spreadFt } = plant;
  const high = heightFt * share;
  const { leafHex } = look;
  if (leafHex) {
    for (let row = 0; row < 3; row++) {
      const n = 9 - row * 2;
      const tone = row === 0 ? toneDark(leafHex, 0.26) : row === 1 ? leafHex : toneLight(leafHex, 0.14);
      const leaves = Array.from({ length: n }, (_, i) => {
        const side = -1 + (2 * (i + 0.5)) / n + (random() - 0.5) * 0.12;
        const to: Point = [side * (spreadFt / 2) * (1 - row * 0.16), high * (0.92 - Math.abs(side) ** 1.6 * 0.72) * (1 - row * 0.26)];
        const from: Point = [side * spreadFt * 0.04, 0];
        return {
          path: pathLeaf([from[0] + (to[0] - from[0]) * 0.12, to[1] * 0.08], to, Math.hypot(to[0], to[1]) * 0.34, side * 0.16),
          rib: pathCurve(from, [to[0] * 0.35, to[1] * 0.75], to),
        };
      });
      draw.fill("leaf", tone, ...leaves.map((l) => l.path));
      draw.line("leaf", toneDark(leafHex, 0.34), Math.max(0.008, spreadFt * 0.006), ...leaves.map((l) => l.rib));
    }
  }
  flowerStems(draw, plant, look, random);
}

/** Straps or grass blades; grasses carry their plumes on upright culms. */
function blades(draw: Pen, plant: SilhouettePlant, look: PlantLook, random: () => number): void {
  const { heightFt, spreadFt, habit, kind } = plant;
  const arch = habit === "upright" || habit === "columnar" ? 0.22 : habit === "fountain" ? 0.8 : 0.55;
  const wear = look.flower ?? look.seedhead;
  const share = kind === "grass" ? 0.72 : 0.68;
  const dry = look.leafHex ?? (kind === "grass" && wear ? wear.hex : null);
  if (dry)
    drawBlades(
      draw,
      dry,
      tuft(heightFt * share, spreadFt, kind === "grass" ? 64 : 30, arch, random),
      kind === "grass" ? Math.max(0.008, spreadFt * 0.0125) : Math.max(0.02, spreadFt * 0.036),
    );
  flowerStems(draw, plant, look, random);
}

function fronds(draw: Pen, plant: SilhouettePlant, look: PlantLook, random: () => number): void {
  if (look.leafHex)
    drawFronds(
      draw,
      look.leafHex,
      tuft(plant.heightFt, plant.spreadFt, 19, plant.habit === "upright" || plant.habit === "columnar" ? 0.4 : 0.62, random),
      Math.min(plant.spreadFt * 0.085, plant.heightFt * 0.13),
    );
}

/** Any herb; the habit decides, and what family and genus say of its leaves. */
export function drawHerb(draw: Pen, plant: SilhouettePlant, look: PlantLook, random: () => number): void {
  const strap = STRAP.has(plant.family) || plant.kind === "grass" || plant.kind === "bulb";
  if (plant.kind === "fern") fronds(draw, plant, look, random);
  else if (strap) blades(draw, plant, look, random);
  else if (BROAD.has(plant.genus.replace("× ", "")) || plant.habit === "rosette") rosette(draw, plant, look, 0.6, random);
  else {
    switch (plant.habit) {
      case "upright":
      case "columnar":
      case "vase":
      case "oval":
      case "fountain":
        upright(draw, plant, look, random);
        break;
      case "clump":
      case "conical":
      case "irregular":
        mound(draw, plant, look, 0.62, random);
        break;
      default:
        mound(draw, plant, look, 0.8, random);
    }
  }
}
