// Published setbacks, sight triangles and clearances, transcribed as printed, in feet. `practice`: common practice, no source.

/** From a building by the tree's mature height. */
export const TREE_FROM_BUILDING = {
  source: "Arbor Day Foundation, Right Tree in the Right Place sizing chart (arborday.org/trees/righttreeandplace/size.cfm)",
  rows: [
    { heightFt: [0, 30], wallFt: [8, 10], cornerFt: [6, 8], massFt: [6, 15] },
    { heightFt: [30, 70], wallFt: [15, 15], cornerFt: [12, 12], massFt: [30, 40] },
    { heightFt: [70, 120], wallFt: [20, 20], cornerFt: [15, 15], massFt: [40, 50] },
  ],
} as const;

/** From a building, other rules. */
export const FROM_BUILDING = [
  { source: "LEAF, Step 2 space requirements, Toronto (yourleaf.org/step-2-space-requirements-ajax)", what: "tree", buildingFt: 10, pavingFt: 8, fenceFt: 5, existingTreeFt: 20 },
  { source: "LEAF, Step 2 space requirements, Toronto (yourleaf.org/step-2-space-requirements-ajax)", what: "shrub", buildingFt: 3, pavingFt: 3, fenceFt: 5, existingTreeFt: 8 },
  { source: "pocketmeadows.com/spacing-foundation-plants-correctly", what: "foundation bed", buildingFt: 2, pavingFt: null, fenceFt: null, existingTreeFt: null },
] as const;

/** At least half the mature width from structures, overhead lines and property lines. */
export const HALF_MATURE_WIDTH = { source: "Garden Center Ohio, Spacing (gardencenterohio.com/spacing)", share: 0.5 } as const;

/** From the middle of an overhead line, by mature height. Where a source says small, medium and large only, they are divided as Duck River divides them. */
export const FROM_OVERHEAD_LINE = [
  {
    source: "Duck River EMC (dremc.com/the-right-tree-in-the-right-place)",
    rows: [
      { toHeightFt: 20, awayFt: 10 },
      { toHeightFt: 40, awayFt: 20 },
      { toHeightFt: null, awayFt: 40 },
    ],
  },
  {
    source: "Jackson EMC (news.jacksonemc.com/plant-the-right-tree-in-the-right-place)",
    rows: [
      { toHeightFt: 20, awayFt: 0 },
      { toHeightFt: 40, awayFt: 25 },
      { toHeightFt: null, awayFt: 50 },
    ],
  },
  {
    source: "utility guidance summary (aubracusa.com)",
    rows: [
      { toHeightFt: 15, awayFt: 0 },
      { toHeightFt: 40, awayFt: 20 },
      { toHeightFt: null, awayFt: 50 },
    ],
  },
] as const;

/** In front of a transformer's doors and at its other sides. */
export const FROM_TRANSFORMER = [
  { source: "Jackson EMC (news.jacksonemc.com/plant-the-right-tree-in-the-right-place)", frontFt: 10, sideFt: 4 },
  { source: "Duck River EMC (dremc.com/the-right-tree-in-the-right-place)", frontFt: 12, sideFt: 3 },
] as const;

/** A street tree's trunk from what is about it; null where the rule is silent. */
export const STREET_TREE = [
  { source: "City of Syracuse Parks (syracuse.ny.us/Parks/treePlanting(1).html)", curbFt: 2, sidewalkFt: 2, drivewayFt: 8, buriedFt: 5, hydrantFt: 10, cornerFt: 30 },
  {
    source: "Los Angeles Bureau of Street Services, Tree Spacing Guidelines (bss.lacity.org)",
    curbFt: null,
    sidewalkFt: null,
    drivewayFt: 6,
    buriedFt: 6,
    hydrantFt: 10,
    cornerFt: 45,
  },
  { source: "Oxford OH code (amlegal oxford_oh/0-0-0-15901)", curbFt: null, sidewalkFt: null, drivewayFt: 5, buriedFt: null, hydrantFt: 10, cornerFt: 30 },
  {
    source: "Marshalltown IA code, Ord. 15042, 2022 (amlegal marshalltown_ia/0-0-0-16248)",
    curbFt: 3,
    sidewalkFt: 3,
    drivewayFt: null,
    buriedFt: null,
    hydrantFt: null,
    cornerFt: null,
  },
  { source: "Des Plaines IL (amlegal desplaines_il/0-0-0-5301)", curbFt: null, sidewalkFt: null, drivewayFt: 15, buriedFt: null, hydrantFt: 10, cornerFt: 30 },
  { source: "Lake Park MN (amlegal lakepark_mn/0-0-0-1587)", curbFt: null, sidewalkFt: null, drivewayFt: 5, buriedFt: 10, hydrantFt: 15, cornerFt: 35 },
  { source: "Corry PA (amlegal corry_pa/0-0-0-5766)", curbFt: 3, sidewalkFt: 3, drivewayFt: null, buriedFt: 3, hydrantFt: null, cornerFt: null },
] as const;

/** Sight triangles: leg along the street or drive, highest planting, lowest branches of trees; null where the rule is silent. */
export const SIGHT_TRIANGLES = [
  { source: "El Segundo CA, driveway (amlegal elsegundo_ca/0-0-0-10904)", legFt: 10, maxHeightFt: 2.5, clearTrunkFt: 12 },
  { source: "Norfolk NE Sec. 27-290 (norfolkne.gov)", legFt: 25, maxHeightFt: 3, clearTrunkFt: null },
  { source: "Kent OH (amlegal kent_oh/0-0-0-108553)", legFt: 30, maxHeightFt: null, clearTrunkFt: 8 },
  { source: "Elizabethtown KY, local street (amlegal elizabethtown_ky/0-0-0-8418)", legFt: 25, maxHeightFt: 2.5, clearTrunkFt: null },
  { source: "Elizabethtown KY, arterial or collector (amlegal elizabethtown_ky/0-0-0-8418)", legFt: 50, maxHeightFt: 2.5, clearTrunkFt: null },
  { source: "Dubuque IA (amlegal dubuque_ia/0-0-0-13729)", legFt: 10, maxHeightFt: 2, clearTrunkFt: 8 },
  { source: "Graymoor-Devondale KY (amlegal graymoord_ky/0-0-0-2703)", legFt: 35, maxHeightFt: 2, clearTrunkFt: 6 },
  { source: "Burtchville Township MI, street (amlegal burtchvillewp_mi/0-0-0-1747)", legFt: 25, maxHeightFt: 2.5, clearTrunkFt: 8 },
  { source: "Burtchville Township MI, drive or alley (amlegal burtchvillewp_mi/0-0-0-1747)", legFt: 15, maxHeightFt: 2.5, clearTrunkFt: 8 },
  { source: "Forest Park OH (amlegal forestp_oh/0-0-0-65253)", legFt: 30, maxHeightFt: 2, clearTrunkFt: 7 },
] as const;

/** Most that two trees may overlap: the radius of the wider and half that of the narrower apart. */
export const TREE_PAIR = { source: "Palisades Beautiful (palisadesbeautiful.org/ggt-right-places.html)", widerShare: 1, narrowerShare: 0.5 } as const;

/** Between street trees on center: large, medium and low ones, or any. */
export const STREET_TREE_SPACING = [
  { source: "City of Syracuse Parks (syracuse.ny.us/Parks/treePlanting(1).html)", size: "large", leastFt: 40, idealFt: 50 },
  { source: "City of Syracuse Parks (syracuse.ny.us/Parks/treePlanting(1).html)", size: "medium", leastFt: 30, idealFt: 40 },
  { source: "City of Syracuse Parks (syracuse.ny.us/Parks/treePlanting(1).html)", size: "low", leastFt: 25, idealFt: 30 },
  { source: "Des Plaines IL (amlegal desplaines_il/0-0-0-5301)", size: "large", leastFt: 40, idealFt: 60 },
  { source: "Los Angeles Bureau of Street Services, Tree Spacing Guidelines (bss.lacity.org)", size: "any", leastFt: 25, idealFt: 40 },
] as const;
/** Tree to tree at least the sum of half their mature spreads. */
export const HALF_SPREADS = { source: "Marshalltown IA code, Ord. 15042, 2022 (amlegal marshalltown_ia/0-0-0-16248)", share: 0.5 } as const;
/** Thorny plants from a public walk. Not yet asked by the program. */
export const THORNS_FROM_WALK = { source: "Ogden UT code", awayFt: 10 } as const;

/** Defaults of the program that no publication in hand gives: practice. */
export const PRACTICE = {
  clearFt: { "existing tree": 2, boulder: 0.5, well: 5, spout: 1.5, outlet: 3 },
  edgeToleranceFt: 0.5,
  windowClearFt: 2,
  shrubFromPipeFt: 2,
} as const;
