// Which round crowns can ever meet, by a grid of cells: cost grows with the circles and the cells they cover, not with the square of their number.

/**
 * Neighbors of each circle, both ways round: those of circle i are at start[i] … start[i + 1] − 1 in the other arrays.
 * awayFt: between the middles. angle: direction to the neighbor, radians.
 */
export type CirclePairs = { readonly start: Int32Array; readonly other: Int32Array; readonly awayFt: Float64Array; readonly angle: Float64Array };

/** Cells for each circle, at most: keeps the grid small where few circles lie far apart. */
const CELLS_PER_CIRCLE = 4;

/** All pairs whose middles are nearer than the sum of their radii (feet). Circles without a size have no neighbors. Every circle is entered in all cells that it reaches. */
export function circlePairs(x: Float64Array, y: Float64Array, radiusFt: Float64Array): CirclePairs {
  const count = x.length;
  let [lowX, lowY, highX, highY, sum, sized] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY, 0, 0];
  for (let i = 0; i < count; i++) {
    const r = radiusFt[i] ?? 0;
    if (r <= 0) continue;
    const cx = x[i] ?? 0;
    const cy = y[i] ?? 0;
    lowX = Math.min(lowX, cx - r);
    highX = Math.max(highX, cx + r);
    lowY = Math.min(lowY, cy - r);
    highY = Math.max(highY, cy + r);
    sum += r;
    sized++;
  }
  if (sized === 0) return { start: new Int32Array(count + 1), other: new Int32Array(0), awayFt: new Float64Array(0), angle: new Float64Array(0) };
  const cellFt = Math.max((2 * sum) / sized, Math.sqrt(((highX - lowX) * (highY - lowY)) / (CELLS_PER_CIRCLE * sized + 16)));
  const columns = Math.floor((highX - lowX) / cellFt) + 1;
  const rows = Math.floor((highY - lowY) / cellFt) + 1;
  const cellStart = new Int32Array(columns * rows + 1);
  const reach = (i: number, visit: (cell: number) => void) => {
    const r = radiusFt[i] ?? 0;
    if (r <= 0) return;
    const cx = (x[i] ?? 0) - lowX;
    const cy = (y[i] ?? 0) - lowY;
    const lastColumn = Math.min(columns - 1, Math.floor((cx + r) / cellFt));
    const lastRow = Math.min(rows - 1, Math.floor((cy + r) / cellFt));
    for (let row = Math.max(0, Math.floor((cy - r) / cellFt)); row <= lastRow; row++)
      for (let column = Math.max(0, Math.floor((cx - r) / cellFt)); column <= lastColumn; column++) visit(row * columns + column);
  };
  for (let i = 0; i < count; i++)
    reach(i, (cell) => {
      cellStart[cell + 1] = (cellStart[cell + 1] ?? 0) + 1;
    });
  for (let cell = 0; cell < columns * rows; cell++) cellStart[cell + 1] = (cellStart[cell + 1] ?? 0) + (cellStart[cell] ?? 0);
  const entries = new Int32Array(cellStart[columns * rows] ?? 0);
  const filled = cellStart.slice();
  const seenBy = new Int32Array(count).fill(-1);
  const found: number[] = [];
  const degree = new Int32Array(count);
  for (let i = 0; i < count; i++) {
    const cx = x[i] ?? 0;
    const cy = y[i] ?? 0;
    const r = radiusFt[i] ?? 0;
    reach(i, (cell) => {
      const end = filled[cell] ?? 0;
      for (let e = cellStart[cell] ?? 0; e < end; e++) {
        const j = entries[e] ?? 0;
        if (seenBy[j] === i) continue;
        seenBy[j] = i;
        const dx = (x[j] ?? 0) - cx;
        const dy = (y[j] ?? 0) - cy;
        const touch = r + (radiusFt[j] ?? 0);
        if (dx * dx + dy * dy >= touch * touch) continue;
        found.push(i, j);
        degree[i] = (degree[i] ?? 0) + 1;
        degree[j] = (degree[j] ?? 0) + 1;
      }
    });
    reach(i, (cell) => {
      entries[filled[cell] ?? 0] = i;
      filled[cell] = (filled[cell] ?? 0) + 1;
    });
  }
  return pairsSorted(x, y, found, degree);
}

function pairsSorted(x: Float64Array, y: Float64Array, found: readonly number[], degree: Int32Array): CirclePairs {
  const start = new Int32Array(degree.length + 1);
  for (let i = 0; i < degree.length; i++) start[i + 1] = (start[i] ?? 0) + (degree[i] ?? 0);
  const next = start.slice();
  const [other, awayFt, angle] = [new Int32Array(found.length), new Float64Array(found.length), new Float64Array(found.length)];
  const enter = (i: number, j: number, away: number, direction: number) => {
    const at = next[i] ?? 0;
    next[i] = at + 1;
    other[at] = j;
    awayFt[at] = away;
    angle[at] = direction;
  };
  for (let p = 0; p < found.length; p += 2) {
    const i = found[p] ?? 0;
    const j = found[p + 1] ?? 0;
    const dx = (x[j] ?? 0) - (x[i] ?? 0);
    const dy = (y[j] ?? 0) - (y[i] ?? 0);
    const away = Math.sqrt(dx * dx + dy * dy);
    const direction = Math.atan2(dy, dx);
    enter(i, j, away, direction);
    enter(j, i, away, direction > 0 ? direction - Math.PI : direction + Math.PI);
  }
  return { start, other, awayFt, angle };
}
