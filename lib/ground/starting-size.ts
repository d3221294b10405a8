// How large a plant is on the day it is planted, from its size as sold.
import { type NurserySize, nurserySizeFromText } from "./nursery-size";
import { type GroundTaxon, rangeMiddle } from "./stratum";

/** Height and crown spread of one plant, in feet. */
export type PlantExtent = { readonly heightFt: number; readonly spreadFt: number };

type Table = readonly (readonly [size: number, feet: number])[];

/**
 * Caliper in inches -> height in feet of shade trees: middle of the average heights of the American nursery stock standard
 * (from memory; common practice, no source). A quoted extract has minima of 10, 12 and 14 ft at 2, 3 and 4 in, which these keep.
 */
const TREE_HEIGHT_BY_CALIPER: Table = [
  [0.25, 4],
  [0.5, 5.5],
  [0.75, 7],
  [1, 9],
  [1.5, 11],
  [2, 12.5],
  [3, 15],
  [4, 17],
  [6, 21],
  [8, 25],
];
/** Trees of small growth are shorter at the same caliper: 8 ft for 10 at 2 in (quoted extract of the standard's minima). */
const SMALL_TREE_SHARE = 0.8;
/** Mature height in feet under which a tree is of small growth. */
const SMALL_TREE_FT = 30;

// Trade gallons -> feet of the larger dimension. Trees #15 and #25 as the stock standard has them (from memory); the rest common practice, no source.
const TREE_HEIGHT_BY_GALLON: Table = [
  [0.02, 0.75],
  [0.25, 1.5],
  [1, 2.5],
  [3, 4.5],
  [5, 5.5],
  [7, 7],
  [10, 8],
  [15, 9],
  [25, 11],
  [65, 14],
];
const SHRUB_FEET_BY_GALLON: Table = [
  [0.02, 0.25],
  [0.25, 0.5],
  [1, 1],
  [2, 1.4],
  [3, 1.75],
  [5, 2.25],
  [7, 2.75],
  [10, 3.5],
  [15, 4.5],
  [25, 5.5],
];
const HERB_FEET_BY_GALLON: Table = [
  [0.02, 0.2],
  [0.25, 0.5],
  [1, 0.9],
  [2, 1.2],
  [3, 1.5],
  [5, 1.8],
];
/** A plug or liner in trade gallons. */
const PLUG_GAL = 0.02;

/** No plant is sold from a table at more than this share of its mature size; a size stated in feet or inches is believed. */
const SOLD_SHARE_MAX = 0.8;
/** A bulb holds its first season's growth: share of mature size. */
const BULB_SHARE = 0.6;
/** Crown width of a young shade tree as a share of what its mature proportions would give. */
const YOUNG_CROWN_SHARE = 0.5;

/** A table read at a size between its rows, in a straight line; flat beyond its ends. */
function tableRead(table: Table, size: number): number {
  let below = table[0] ?? [0, 0];
  for (const row of table) {
    if (row[0] >= size) return row[0] === below[0] ? row[1] : below[1] + ((size - below[0]) / (row[0] - below[0])) * (row[1] - below[1]);
    below = row;
  }
  return below[1];
}

/** The size that is usually sold (common practice, no source): what is assumed where the text names none. */
export function usualSizeText(taxon: GroundTaxon): string {
  switch (taxon.kind) {
    case "tree":
      return "2 in cal B&B";
    case "conifer":
      return rangeMiddle(taxon.heightFt) >= 12 ? "5-6 ft B&B" : "#3";
    case "shrub":
      return "#3";
    case "vine":
    case "perennial":
    case "grass":
    case "fern":
      return "#1";
    case "groundcover":
      return "qt";
    case "annual":
      return "4 in pot";
    case "bulb":
      return "bulb";
  }
}

function tableByKind(taxon: GroundTaxon): Table {
  if (taxon.kind === "tree") return TREE_HEIGHT_BY_GALLON;
  return taxon.kind === "shrub" || taxon.kind === "conifer" || taxon.kind === "vine" ? SHRUB_FEET_BY_GALLON : HERB_FEET_BY_GALLON;
}

function matureExtent(taxon: GroundTaxon): PlantExtent {
  return { heightFt: rangeMiddle(taxon.heightFt), spreadFt: rangeMiddle(taxon.spreadFt) };
}

/** Spread of a young plant so high, and height of one so wide, by its mature proportions. */
function spreadOfHeight(taxon: GroundTaxon, heightFt: number): number {
  const { heightFt: h, spreadFt: s } = matureExtent(taxon);
  const share = Math.min(1.2, Math.max(0.25, s / h));
  return heightFt * share * (taxon.kind === "tree" ? YOUNG_CROWN_SHARE : 1);
}
function heightOfSpread(taxon: GroundTaxon, spreadFt: number): number {
  const { heightFt: h, spreadFt: s } = matureExtent(taxon);
  return spreadFt * Math.min(1.2, Math.max(0.15, h / s));
}

/** The extent that tables give for a container, caliper, plug or bulb; null where the size says none of them. */
function extentFromTables(size: NurserySize, taxon: GroundTaxon): PlantExtent | null {
  const mature = matureExtent(taxon);
  if (size.root === "bulb") return { heightFt: mature.heightFt * BULB_SHARE, spreadFt: mature.spreadFt * BULB_SHARE };
  if (size.caliperIn) {
    const small = mature.heightFt < SMALL_TREE_FT ? SMALL_TREE_SHARE : 1;
    const heightFt = small * tableRead(TREE_HEIGHT_BY_CALIPER, rangeMiddle(size.caliperIn));
    return { heightFt, spreadFt: spreadOfHeight(taxon, heightFt) };
  }
  const gallons = size.containerGal ?? (size.root === "plug" ? PLUG_GAL : null);
  if (gallons === null) return null;
  const feet = tableRead(tableByKind(taxon), gallons);
  if (taxon.kind === "tree" || mature.heightFt >= mature.spreadFt) return { heightFt: feet, spreadFt: spreadOfHeight(taxon, feet) };
  return { heightFt: heightOfSpread(taxon, feet), spreadFt: feet };
}

/** Whether a bare length is this plant's spread: low plants wider than high are graded by it, as spreading junipers are. */
function gradedBySpread(taxon: GroundTaxon): boolean {
  const { heightFt, spreadFt } = matureExtent(taxon);
  return taxon.kind !== "tree" && spreadFt >= 1.5 * heightFt;
}

/** The extent that stated lengths give; the missing dimension from tables or from the plant's proportions. Null where no length is stated. */
function extentStated(size: NurserySize, taxon: GroundTaxon, table: PlantExtent | null): PlantExtent | null {
  const stated = size.heightIn ? rangeMiddle(size.heightIn) / 12 : null;
  const isSpread = stated !== null && !size.heightSaid && !size.spreadIn && gradedBySpread(taxon);
  const spread = size.spreadIn ? rangeMiddle(size.spreadIn) / 12 : isSpread ? stated : null;
  const height = isSpread ? null : stated;
  if (height !== null) return { heightFt: height, spreadFt: spread ?? spreadOfHeight(taxon, height) };
  if (spread !== null) return { heightFt: table?.heightFt ?? heightOfSpread(taxon, spread), spreadFt: spread };
  return null;
}

/**
 * Height and spread in feet on planting day. Stated lengths are believed; else tables by container or caliper, at most 80 % of mature size;
 * else (unknown text) the size usually sold. A plant that stands there already and has no stated size is taken as grown.
 */
export function startingExtent(taxon: GroundTaxon, sizeText: string, existing = false): PlantExtent {
  const size = nurserySizeFromText(sizeText, taxon.kind);
  const mature = matureExtent(taxon);
  const table = extentFromTables(size, taxon);
  const capped = table && { heightFt: Math.min(table.heightFt, SOLD_SHARE_MAX * mature.heightFt), spreadFt: Math.min(table.spreadFt, SOLD_SHARE_MAX * mature.spreadFt) };
  const extent = extentStated(size, taxon, capped) ?? capped;
  if (extent) return extent;
  return existing ? mature : startingExtent(taxon, usualSizeText(taxon));
}
