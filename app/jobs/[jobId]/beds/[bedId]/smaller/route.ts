import { z } from "zod";
import { plantSizeRangeText } from "@/lib/ground/length";
import { smallerTaxa } from "@/lib/ground/smaller-taxon";
import { taxonSuits } from "@/lib/papers/bed-fill";
import type { PlacedTaxon } from "@/lib/papers/bed-view";
import { bedContext } from "@/lib/server/bed-context";
import { taxaHeld } from "@/lib/server/taxa";

export type SmallerOffer = { readonly placed: PlacedTaxon; readonly sizeWords: string };
export type SmallerAnswer = { readonly offers: readonly SmallerOffer[] };

const limit = z.coerce.number().positive().max(500).optional();
const query = z.object({ taxon: z.string().min(1).max(64), spread: limit, height: limit });
const OFFERS = 5;
const nothing = (status: number) => Response.json({ offers: [] } satisfies SmallerAnswer, { status });

/** GET ?taxon=…&spread=4&height=3: plants that look most like one, stay within these feet, and suit the bed's site and place; dated there. */
export async function GET(request: Request, { params }: { params: Promise<{ jobId: string; bedId: string }> }): Promise<Response> {
  const parsed = query.safeParse(Object.fromEntries(new URL(request.url).searchParams));
  if (!parsed.success) return nothing(400);
  const { bedId, jobId } = await params;
  const [context, held] = await Promise.all([bedContext(bedId), taxaHeld()]);
  const taxon = held.byId.get(parsed.data.taxon);
  if (!context || context.stored.jobId !== jobId || !taxon) return nothing(404);
  const { viewPlace, seasonOf } = context.job;
  const suited = held.taxa.filter((other) => taxonSuits(other, context.stored.bed.site, viewPlace));
  const offers = smallerTaxa(taxon, suited, parsed.data.spread ?? null, parsed.data.height ?? null, OFFERS).map(
    (other): SmallerOffer => ({
      placed: { taxon: other, season: seasonOf(other) },
      sizeWords: `${plantSizeRangeText(other.heightFt)} high, ${plantSizeRangeText(other.spreadFt)} wide`,
    }),
  );
  return Response.json({ offers } satisfies SmallerAnswer);
}
