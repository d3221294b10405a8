// Published figures of root balls and lifting, with their sources.

const BLUEGRASS = "Bluegrass Farms FAQ (bluegrassfarms.net/faq/)";
const BATAVIA = "Batavia, Illinois city code (codelibrary.amlegal.com/codes/bataviail/latest/batavia_il/0-0-0-5657), after the nursery stock standard";
const IFAS_SIZES = "UF/IFAS, Root ball size standards (1996 stock standard), as quoted on other pages";
const IFAS_DEPTH = "UF/IFAS, Root ball depth and diameter (hort.ifas.ufl.edu/woody/ball-depth.shtml)";

/** Least ball diameter of shade trees by caliper. */
export const BALL_MINIMA = [
  { caliperIn: 1.5, ballIn: 20, source: BATAVIA },
  { caliperIn: 2, ballIn: 24, source: IFAS_SIZES },
  { caliperIn: 3, ballIn: 32, source: IFAS_SIZES },
  { caliperIn: 4, ballIn: 42, source: IFAS_SIZES },
  { caliperIn: 5, ballIn: 54, source: IFAS_SIZES },
] as const;

/** Small tree of a single stem, six branches and more, by height. */
export const SMALL_TREE = { heightFt: 5, ballIn: 16, source: BATAVIA } as const;

/** Inches of ball an inch of caliper. */
export const BALL_RULES = [
  { low: 10, high: null, source: "Kaneville Tree Farms, Rootball information (kanevilletreefarms.com/rootball-information)" },
  { low: 9, high: 12, source: "Lawn & Landscape, Caliper Capers (lawnandlandscape.com/news/april-issue-extra--caliper-capers)" },
] as const;

/** Least depth as a share of the diameter. */
export const BALL_DEPTHS = [
  { diameterIn: 18, share: 0.75, source: IFAS_DEPTH },
  { diameterIn: 20, share: 0.65, source: `${IFAS_DEPTH}; 66 %, in one project's specification 65 %` },
  { diameterIn: 30, share: 0.65, source: IFAS_DEPTH },
  { diameterIn: 31, share: 0.6, source: IFAS_DEPTH },
  { diameterIn: 48, share: 0.6, source: IFAS_DEPTH },
] as const;
/** A worked example: an 18 in ball is 13.5, dug as 14 in deep. */
export const DEPTH_EXAMPLE = { diameterIn: 18, depthIn: 14, source: "Ball Depths & Ball Weight (slideserve.com/dayo)" } as const;

/** Weights in pounds by ball diameter. `planned`: our planning weight is to come near; the others say how light a ball may be. */
export const BALL_WEIGHTS = [
  { diameterIn: 24, lb: [325, 325], planned: true, source: BLUEGRASS },
  { diameterIn: 28, lb: [550, 550], planned: true, source: BLUEGRASS },
  { diameterIn: 32, lb: [700, 750], planned: true, source: BLUEGRASS },
  { diameterIn: 36, lb: [1150, 1150], planned: true, source: BLUEGRASS },
  { diameterIn: 30, lb: [400, 500], planned: false, source: "UF/IFAS, Field grown trees (hort.ifas.ufl.edu/woody/root-growth-field1.shtml)" },
  { diameterIn: 40, lb: [800, 900], planned: false, source: "UF/IFAS, Field grown trees (hort.ifas.ufl.edu/woody/root-growth-field1.shtml)" },
] as const;

/** Calipers and heights that the same grower digs with these balls. */
export const BALLS_DUG = [
  { size: "1.5-1.75 in cal B&B", kind: "tree", ballIn: 24, source: BLUEGRASS },
  { size: "2 in cal B&B", kind: "tree", ballIn: 28, source: BLUEGRASS },
  { size: "2.5 in cal B&B", kind: "tree", ballIn: 32, source: BLUEGRASS },
  { size: "3 in cal B&B", kind: "tree", ballIn: 36, source: BLUEGRASS },
  { size: "5-6 ft B&B", kind: "conifer", ballIn: 24, source: BLUEGRASS },
  { size: "6-7 ft B&B", kind: "conifer", ballIn: 28, source: BLUEGRASS },
  { size: "7-8 ft B&B", kind: "conifer", ballIn: 32, source: BLUEGRASS },
  { size: "8-9 ft B&B", kind: "conifer", ballIn: 36, source: BLUEGRASS },
] as const;

/** The heaviest ideal lift of two hands, pounds. */
export const NIOSH_LIFT = {
  lb: 51,
  source: "NIOSH 1994, revised lifting equation (Pub. 94-110), as printed by OSHA (osha.gov/SLTC/etools/poultry/additional_material/niosh.html)",
} as const;
