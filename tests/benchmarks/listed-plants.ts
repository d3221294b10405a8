// A few plants for tests of list matching that need not the whole dataset.
import type { ListedPlant } from "../../lib/nursery/line-match";
import type { Kind } from "../../lib/plants/vocabulary";

type Parts = { readonly cultivar?: string; readonly trade?: string; readonly synonyms?: readonly string[]; readonly common?: readonly string[] };

function listed(kind: Kind, botanical: string, { cultivar, trade, synonyms = [], common = [] }: Parts = {}): ListedPlant {
  const name = cultivar ? `${botanical} '${cultivar}'` : botanical;
  const id = `${name} ${cultivar ? "" : (trade ?? "")}`
    .toLowerCase()
    .replace(/[^a-z]+/g, "-")
    .replace(/-$/, "");
  return { id, name, genus: botanical.split(" ")[0] ?? "", botanical, cultivar: cultivar ?? null, tradeDesignation: trade ?? null, synonyms, commonNames: common, kind };
}

export const LISTED_PLANTS: readonly ListedPlant[] = [
  listed("tree", "Acer rubrum", { common: ["red maple"] }),
  listed("tree", "Acer rubrum", { cultivar: "October Glory", common: ["red maple"] }),
  listed("tree", "Acer saccharum", { common: ["sugar maple"] }),
  listed("tree", "Acer saccharinum", { common: ["silver maple"] }),
  listed("tree", "Quercus alba", { common: ["white oak"] }),
  listed("conifer", "Thuja occidentalis", { common: ["American arborvitae"] }),
  listed("conifer", "Thuja occidentalis", { cultivar: "Smaragd", trade: "Emerald Green", common: ["arborvitae"] }),
  listed("shrub", "Hydrangea paniculata", { common: ["panicle hydrangea"] }),
  listed("shrub", "Hydrangea paniculata", { cultivar: "Limelight", common: ["panicle hydrangea"] }),
  listed("shrub", "Hydrangea paniculata", { cultivar: "Jane", trade: "Little Lime", common: ["panicle hydrangea"] }),
  listed("perennial", "Rudbeckia hirta", { common: ["black-eyed Susan"] }),
  listed("perennial", "Rudbeckia fulgida", { cultivar: "Goldsturm", common: ["orange coneflower"] }),
  listed("perennial", "Symphyotrichum novae-angliae", { cultivar: "Purple Dome", synonyms: ["Aster novae-angliae 'Purple Dome'"], common: ["New England aster"] }),
];
