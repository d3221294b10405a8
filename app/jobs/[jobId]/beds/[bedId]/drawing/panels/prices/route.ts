import type { PriceBreak } from "@/lib/nursery/lot";
import { sizeFromText } from "@/lib/nursery/size-read";
import { sizeSteps } from "@/lib/nursery/size-step";
import { bedFind } from "@/lib/server/beds";
import { stockLots } from "@/lib/server/stock-lots";
import { taxaHeld } from "@/lib/server/taxa";

/** What the firm's own lots of each row's plant at its size cost; rows that have no priced lot are not among them. */
export type RowPrices = { readonly rows: readonly { readonly rowId: string; readonly prices: readonly PriceBreak[] }[] };

/** GET: prices for the rows of the bed as it is saved. Of several lots the one that costs least for a single plant speaks. */
export async function GET(_request: Request, { params }: { params: Promise<{ jobId: string; bedId: string }> }): Promise<Response> {
  const { jobId, bedId } = await params;
  const stored = await bedFind(bedId);
  if (!stored || stored.jobId !== jobId) return Response.json({ rows: [] } satisfies RowPrices, { status: 404 });
  const [lots, held] = await Promise.all([stockLots(stored.bed.rows.map(({ taxonId }) => taxonId)), taxaHeld()]);
  const rows = stored.bed.rows.flatMap(({ id, taxonId, size }) => {
    const wanted = sizeFromText(size, held.byId.get(taxonId)?.kind);
    const fitting = lots.filter((lot) => lot.taxonId === taxonId && lot.owner.kind === "own" && lot.prices.length > 0 && sizeSteps(wanted, lot.size) === 0);
    const cheapest = fitting.sort((a, b) => (a.prices[0]?.cents ?? 0) - (b.prices[0]?.cents ?? 0) || (a.id < b.id ? -1 : 1))[0];
    return cheapest ? [{ rowId: id, prices: cheapest.prices }] : [];
  });
  return Response.json({ rows } satisfies RowPrices);
}
