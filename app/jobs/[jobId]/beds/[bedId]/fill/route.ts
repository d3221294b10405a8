import { z } from "zod";
import { usualSizeText } from "@/lib/ground/starting-size";
import { bedFill, type FillOffer } from "@/lib/papers/bed-fill";
import type { StripMark } from "@/lib/papers/year-strip";
import { yearStrip } from "@/lib/papers/year-strip";
import { bedContext } from "@/lib/server/bed-context";
import { taxaHeld } from "@/lib/server/taxa";

export type FillAnswer = { readonly offers: readonly (FillOffer & { readonly marks: readonly StripMark[] })[] };

const query = z.object({
  half: z
    .string()
    .transform((text) => text.split(",").map(Number))
    .pipe(z.array(z.number().int().min(0).max(23)).min(1).max(24)),
  year: z.coerce.number().int().min(0).max(20),
});

/** GET ?half=8,9&year=3: plants that would fill these half-months of the bed as it is saved. */
export async function GET(request: Request, { params }: { params: Promise<{ jobId: string; bedId: string }> }): Promise<Response> {
  const parsed = query.safeParse(Object.fromEntries(new URL(request.url).searchParams));
  if (!parsed.success) return Response.json({ offers: [] }, { status: 400 });
  const { bedId } = await params;
  const context = await bedContext(bedId, parsed.data.year);
  if (!context) return Response.json({ offers: [] }, { status: 404 });
  const { taxa } = await taxaHeld();
  const placed = taxa.map((taxon) => ({ taxon, season: context.job.seasonOf(taxon) }));
  const offers = bedFill(context.stored.bed, context.view.season.halfMonths, parsed.data.half, placed, context.job.viewPlace, parsed.data.year, usualSizeText);
  return Response.json({ offers: offers.map((offer) => ({ ...offer, marks: yearStrip(offer.placed.season, context.job.viewPlace) })) } satisfies FillAnswer);
}
