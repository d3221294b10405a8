import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { z } from "zod";
import { TitleBlock } from "@/app/parts/title-block";
import { YEAR_SHOWN } from "@/lib/papers/bed-view";
import { NORMALS_PERIOD } from "@/lib/place/station";
import { zoneText } from "@/lib/place/zone";
import { bedCompare } from "@/lib/server/bed-compare";
import { bedContext } from "@/lib/server/bed-context";
import type { PlaceKey } from "@/lib/server/places";
import { today } from "@/lib/server/today";
import { ComparePlaceForm, type CompareValues } from "./compare-place-form";
import { ComparedYears } from "./compared-years";
import "./compare.css";

type Params = { params: Promise<{ jobId: string; bedId: string }>; searchParams: Promise<Record<string, string | string[] | undefined>> };
export const dynamic = "force-dynamic";

export async function generateMetadata({ params }: Params): Promise<Metadata> {
  const context = await bedContext((await params).bedId);
  return { title: context ? `${context.stored.bed.name} at two places` : "Bed not found" };
}

const text = z.string().trim().max(40).catch("");
const query = z.object({ zip: text, lat: text, lon: text, elevationFt: text });

type Asked = { readonly key: PlaceKey | null; readonly fault: { readonly field: string; readonly message: string } | null };

/** The other place of the address: a ZIP, or latitude and longitude. */
function placeAsked({ zip, lat, lon, elevationFt }: CompareValues): Asked {
  if (!zip && !lat && !lon) return { key: null, fault: null };
  const numbers = { lat, lon, elevationFt };
  for (const [field, typed] of Object.entries(numbers))
    if (typed && !Number.isFinite(Number(typed))) return { key: null, fault: { field, message: `"${typed}" is not a number.` } };
  if (Boolean(lat) !== Boolean(lon)) return { key: null, fault: { field: lat ? "lon" : "lat", message: "Latitude and longitude go together." } };
  return { key: { zip: zip || null, lat: lat ? Number(lat) : null, lon: lon ? Number(lon) : null, elevationFt: elevationFt ? Number(elevationFt) : null }, fault: null };
}

/** One bed at two places: why a list that does well here fails 300 miles north. */
export default async function ComparePage({ params, searchParams }: Params) {
  const [{ jobId, bedId }, values] = [await params, query.parse(await searchParams)];
  const asked = placeAsked(values);
  const found = await bedCompare(bedId, asked.key);
  if (!found || found.context.stored.jobId !== jobId) notFound();
  const { context, here, other, suggestions } = found;
  const { bed } = context.stored;
  const path = `/jobs/${jobId}/beds/${bedId}`;
  return (
    <main id="main" className="sheet">
      <div className="sheet-head spread">
        <h1>{bed.name} at two places</h1>
        <Link href={path}>Back to the bed</Link>
      </div>
      <ComparePlaceForm values={values} fault={asked.fault ?? found.fault} path={`${path}/compare`} suggestions={suggestions} />
      {other || bed.rows.length === 0 ? null : (
        <p className="soft">Name another place to see why a list that does well here may fail there: both years of every plant, gaps, scores and hardiness side by side.</p>
      )}
      {bed.rows.length === 0 ? <p className="soft">The bed has no plants yet: add some on its sheet, then come back.</p> : null}
      {other && bed.rows.length ? (
        <>
          {other.place.warnings.map((warning) => (
            <p key={warning} className="notice">
              {warning}
            </p>
          ))}
          <section aria-labelledby="why-title">
            <h2 id="why-title">What is different there</h2>
            <ul className="why">
              {other.comparison.words.map((words) => (
                <li key={words}>{words}</li>
              ))}
            </ul>
          </section>
          <p className="soft small">
            Interest and gaps are those of year {YEAR_SHOWN} after planting, at both. The spot, the climate and the spring planned for are the job's at both.
          </p>
          <ComparedYears here={here} there={other.there} comparison={other.comparison} targets={context.job.job.targets} />
        </>
      ) : null}
      <TitleBlock
        cells={[
          ["Job", context.job.job.name],
          ["Bed", bed.name],
          ["Here", here.label],
          ["There", other?.there.label ?? ""],
          ["Zones", [here.place.zone, ...(other ? [other.place.zone] : [])].map((zone) => (zone === null ? "not set" : zoneText(zone))).join(", ")],
          ["Normals", NORMALS_PERIOD],
          ["Date", today().text],
        ].map(([label, value]) => [label ?? "", value ?? ""] as const)}
      />
    </main>
  );
}
