// Published figures of digging by hand, loads on the road, heavy containers and heights of shade trees.

/** Contractors in a trade forum: an evergreen of 6–8 ft, ball about 2 ft, clay. */
export const DUG_BY_HAND = { size: "6-8 ft B&B", ballIn: 24, minutes: [60, 90], source: "lawnsite.com thread 60981, 2004" } as const;

/** The widest ball without a permit and the highest load. */
export const LOAD_ON_ROAD = { widthFt: 8.5, heightFt: 13.5, source: "Kaneville Tree Farms, Rootball information (kanevilletreefarms.com/rootball-information)" } as const;

export const SIZED_CONTAINER = [{ size: "#15", lb: [100, 150], source: "biologyinsights.com, How much does a 15 gallon tree weigh (a weak source)" }] as const;

const IFAS_SIZES = "UF/IFAS, Root ball size standards (1996 stock standard), as quoted on other pages";
/** Least height of shade trees by caliper. */
export const SHADE_TREE_HEIGHTS = [
  { caliperIn: 1.5, leastFt: 8, source: "Batavia, Illinois city code, after the nursery stock standard" },
  { caliperIn: 2, leastFt: 10, source: IFAS_SIZES },
  { caliperIn: 3, leastFt: 12, source: IFAS_SIZES },
  { caliperIn: 4, leastFt: 14, source: IFAS_SIZES },
] as const;
