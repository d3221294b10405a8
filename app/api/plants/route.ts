import { z } from "zod";
import { plantSizeRangeText } from "@/lib/ground/length";
import { usualSizeText } from "@/lib/ground/starting-size";
import type { StripMark } from "@/lib/papers/year-strip";
import { yearStrip } from "@/lib/papers/year-strip";
import { searchPlants } from "@/lib/plants/search";
import type { Taxon } from "@/lib/plants/taxon";
import { seasonSentence } from "@/lib/season/sentence";
import type { TaxonSeason } from "@/lib/season/window";
import { jobContext } from "@/lib/server/job-context";
import { taxaHeld } from "@/lib/server/taxa";

/** A plant found, with its year at the job's place. */
export type PlantHit = {
  readonly taxon: Taxon;
  readonly season: TaxonSeason;
  readonly marks: readonly StripMark[];
  readonly sentence: string;
  readonly sizeWords: string;
  /** The size it is usually set at. */
  readonly usualSize: string;
  /** The former name that was typed, if it was one. */
  readonly formerName: string | null;
};

const query = z.object({ q: z.string().max(120), job: z.string().max(64) });
const LIMIT = 10;

/** GET ?q=…&job=…: the best matches first. */
export async function GET(request: Request): Promise<Response> {
  const parsed = query.safeParse(Object.fromEntries(new URL(request.url).searchParams));
  if (!parsed.success) return Response.json([], { status: 400 });
  const [context, held] = await Promise.all([jobContext(parsed.data.job), taxaHeld()]);
  if (!context) return Response.json([], { status: 404 });
  const hits: PlantHit[] = searchPlants(held.index, parsed.data.q, LIMIT).map((found) => {
    const season = context.seasonOf(found.taxon);
    return {
      taxon: found.taxon,
      season,
      marks: yearStrip(season, context.viewPlace),
      sentence: seasonSentence(season),
      sizeWords: `${plantSizeRangeText(found.taxon.heightFt)} × ${plantSizeRangeText(found.taxon.spreadFt)}`,
      usualSize: usualSizeText(found.taxon),
      formerName: found.matched === "former" ? found.matchedName : null,
    };
  });
  return Response.json(hits);
}
