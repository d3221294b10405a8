// The closed vocabularies of the open plant dataset. A word that is not here is a fault the validator names.

export const KINDS = ["tree", "shrub", "conifer", "perennial", "grass", "fern", "bulb", "vine", "groundcover", "annual"] as const;
export type Kind = (typeof KINDS)[number];

export const HABITS = [
  "upright",
  "oval",
  "rounded",
  "spreading",
  "vase",
  "weeping",
  "columnar",
  "conical",
  "mounded",
  "mat",
  "fountain",
  "clump",
  "rosette",
  "climbing",
  "irregular",
] as const;
export type Habit = (typeof HABITS)[number];

export const RATES = ["slow", "medium", "fast"] as const;
export const LIGHTS = ["sun", "part", "shade"] as const;
export type Light = (typeof LIGHTS)[number];
export const MOISTURES = ["dry", "average", "moist", "wet"] as const;
export type Moisture = (typeof MOISTURES)[number];
export const LEVELS = ["low", "medium", "high"] as const;
export type Level = (typeof LEVELS)[number];
/** How often deer browse it. */
export const DEER = ["rarely", "sometimes", "often"] as const;
export const JUGLONE = ["tolerant", "sensitive", "unknown"] as const;
/** Standing water at the roots: never, a day or two after rain, or for weeks. */
export const WET_FEET = ["no", "brief", "yes"] as const;
export const ROOTS = ["fibrous", "shallow", "deep", "taproot", "suckering", "rhizome", "stolon", "bulb", "fleshy", "clinging"] as const;
export const FOLIAGES = ["evergreen", "semi-evergreen", "deciduous", "dies back", "wintergreen"] as const;
export type Foliage = (typeof FOLIAGES)[number];

export const FEATURE_KINDS = ["bloom", "spring foliage", "summer foliage", "fall color", "fruit", "bark", "evergreen", "seedhead", "structure"] as const;
export type FeatureKind = (typeof FEATURE_KINDS)[number];
export const DRIVES = ["heat", "light", "cooling", "dormancy", "always"] as const;
export type Drive = (typeof DRIVES)[number];

export const HAZARDS = ["none", "low", "high", "unknown"] as const;
export type Hazard = (typeof HAZARDS)[number];
export const SEXES = ["both", "male", "female", "dioecious", "sterile"] as const;
/** Which wood the flower buds are on: it decides when to prune and what a hard winter takes. */
export const WOODS = ["old", "new", "both"] as const;
export const PRUNINGS = ["none", "light", "after bloom", "late winter", "renewal", "shear", "cut back early spring", "deadhead", "train"] as const;
export const WILDLIFE = ["bees", "butterflies", "hummingbirds", "birds", "host", "mammals"] as const;

export const FLAGS = [
  "fall-dig-hazard",
  "thorns",
  "suckers",
  "self-seeds",
  "spreads",
  "litter",
  "weak-wood",
  "surface-roots",
  "fragrant",
  "fragrant-foliage",
  "reblooms",
  "summer-dormant",
  "needs-staking",
  "short-lived",
  "salt-spray",
  "skin-irritant",
  "invasive-some-regions",
] as const;
export type Flag = (typeof FLAGS)[number];

export const STATES =
  "AL AK AZ AR CA CO CT DE DC FL GA HI ID IL IN IA KS KY LA ME MD MA MI MN MS MO MT NE NV NH NJ NM NY NC ND OH OK OR PA RI SC SD TN TX UT VT VA WA WV WI WY PR".split(" ");
