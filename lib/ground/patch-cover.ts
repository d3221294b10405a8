// Ground covered by a group of equal round plants set on a triangular grid, in closed form.

/** Area common to two circles of radius r whose centers stand s apart. */
function lensArea(s: number, r: number): number {
  return s >= 2 * r ? 0 : 2 * r * r * Math.acos(s / (2 * r)) - (s / 2) * Math.sqrt(4 * r * r - s * s);
}

/** Pairs of neighbors at spacing distance in the most compact patch of n points on a triangular grid: ⌊3n − √(12n − 3)⌋ (Harborth 1974, Elemente der Mathematik 29:14–15). */
export function patchNeighbors(quantity: number): number {
  if (quantity < 1) return 0;
  const root = Math.sqrt(12 * quantity - 3);
  const whole = Math.round(root);
  return 3 * quantity - (whole * whole === 12 * quantity - 3 ? whole : Math.ceil(root));
}

/**
 * Square feet that each plant covers of its own cell (the hexagon nearer to it than to any neighbor) on an endless triangular grid:
 * a whole circle until circles meet at r = s/2, then less the six half lenses, and the whole cell √3/2·s² from r = s/√3.
 */
export function cellCover(spacingFt: number, radiusFt: number): number {
  if (radiusFt >= spacingFt / Math.sqrt(3)) return (Math.sqrt(3) / 2) * spacingFt ** 2;
  return Math.PI * radiusFt ** 2 - 3 * lensArea(spacingFt, radiusFt);
}

/**
 * Square feet under the union of n circles of one radius in a compact patch on a triangular grid.
 * Up to r = s/√3 no three circles overlap, so it is n circles less a lens for each pair of neighbors: exact. From there every triangle between three
 * plants is covered whole, and the rest is the fringe: over each outer side two circular wedges, at the corners sectors that make one full turn:
 * exact where the patch is convex, else within a percent or so too much.
 */
export function patchCover(quantity: number, spacingFt: number, radiusFt: number): number {
  if (quantity < 1 || radiusFt <= 0) return 0;
  const neighbors = patchNeighbors(quantity);
  const [s, r] = [spacingFt, radiusFt];
  if (r < s / Math.sqrt(3)) return quantity * Math.PI * r * r - neighbors * lensArea(s, r);
  const triangles = quantity > 1 ? neighbors - quantity + 1 : 0;
  const outerSides = 2 * neighbors - 3 * triangles;
  const wedges = (s / 2) * Math.sqrt(r * r - (s * s) / 4) + r * r * Math.asin(s / (2 * r));
  return triangles * (Math.sqrt(3) / 4) * s * s + outerSides * wedges + Math.PI * r * r;
}
