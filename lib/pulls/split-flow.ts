// Shares plants of several lots among groups that may be split, at least cost: a small transportation problem, solved exactly.

/** Cost of one plant, the weightier part first; compared part by part. */
export type UnitCost = readonly [notOwn: number, steps: number, cents: number];

export const costAdd = (a: UnitCost, b: UnitCost, times = 1): UnitCost => [a[0] + b[0] * times, a[1] + b[1] * times, a[2] + b[2] * times];
export const costOrder = (a: UnitCost, b: UnitCost): number => a[0] - b[0] || a[1] - b[1] || a[2] - b[2];
const ZERO: UnitCost = [0, 0, 0];

type Arc = { readonly from: number; readonly to: number; room: number; readonly cost: UnitCost; readonly back: number };

/** Cheapest way from the source to every node along arcs with room (Bellman and Ford); the arc by which each node is reached. */
function cheapestArcs(arcs: readonly Arc[], nodes: number): (number | null)[] {
  const cost: (UnitCost | null)[] = Array.from({ length: nodes }, (_, i) => (i === 0 ? ZERO : null));
  const by: (number | null)[] = Array.from({ length: nodes }, () => null);
  for (let round = 0; round < nodes; round++) {
    let changed = false;
    for (const [i, arc] of arcs.entries()) {
      const start = cost[arc.from];
      if (arc.room <= 0 || !start) continue;
      const reached = costAdd(start, arc.cost);
      const known = cost[arc.to];
      if (known && costOrder(reached, known) >= 0) continue;
      cost[arc.to] = reached;
      by[arc.to] = i;
      changed = true;
    }
    if (!changed) break;
  }
  return by;
}

/**
 * Plants to take of each lot for each group: as many as can be had, and of all ways to do so the cheapest (successive shortest paths).
 * @param wanted plants a group, @param free plants a lot, @param costs cost a plant by group and lot, null where the lot does not serve the group
 * @returns plants by group and lot
 */
export function plantsShared(wanted: readonly number[], free: readonly number[], costs: readonly (readonly (UnitCost | null)[])[]): number[][] {
  const groupNode = (g: number) => 1 + g;
  const lotNode = (l: number) => 1 + wanted.length + l;
  const sink = 1 + wanted.length + free.length;
  const arcs: Arc[] = [];
  const arcAdd = (from: number, to: number, room: number, cost: UnitCost): number => {
    const at = arcs.length;
    arcs.push({ from, to, room, cost, back: at + 1 }, { from: to, to: from, room: 0, cost: costAdd(ZERO, cost, -1), back: at });
    return at;
  };
  wanted.forEach((quantity, g) => {
    arcAdd(0, groupNode(g), quantity, ZERO);
  });
  free.forEach((quantity, l) => {
    arcAdd(lotNode(l), sink, quantity, ZERO);
  });
  const ways = wanted.flatMap((quantity, g) => free.flatMap((_, l) => (costs[g]?.[l] ? [{ g, l, arc: arcAdd(groupNode(g), lotNode(l), quantity, costs[g]?.[l] ?? ZERO) }] : [])));
  for (;;) {
    const by = cheapestArcs(arcs, sink + 1);
    const path: Arc[] = [];
    for (let node = sink; node !== 0; ) {
      const arc = arcs[by[node] ?? -1];
      if (!arc) break;
      path.push(arc);
      node = arc.from;
    }
    if (path.at(-1)?.from !== 0) break;
    const amount = Math.min(...path.map((arc) => arc.room));
    for (const arc of path) {
      arc.room -= amount;
      const back = arcs[arc.back];
      if (back) back.room += amount;
    }
  }
  const shares = wanted.map(() => free.map(() => 0));
  for (const { g, l, arc } of ways) {
    const row = shares[g];
    if (row) row[l] = arcs[arcs[arc]?.back ?? -1]?.room ?? 0;
  }
  return shares;
}
