import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { TitleBlock } from "@/app/parts/title-block";
import { climateOfSpring } from "@/lib/place/microclimate";
import { type Place, placeLabel } from "@/lib/place/place";
import { placeYear } from "@/lib/place/place-year";
import { REFERENCE_YEAR } from "@/lib/place/reference";
import { settingIsNormal, settingWords } from "@/lib/place/setting";
import { NORMALS_PERIOD, NORMALS_SOURCE } from "@/lib/place/station";
import { HALF_ZONES, zoneRangeF, zoneText } from "@/lib/place/zone";
import { dayText } from "@/lib/season/sentence";
import { yearMoves } from "@/lib/season/year-moves";
import { jobContext } from "@/lib/server/job-context";
import { placeYearOf } from "@/lib/server/places";
import { today } from "@/lib/server/today";
import { yearMarkers } from "@/lib/server/year-markers";
import { PlaceCharts } from "./place-charts";
import { PlaceForm } from "./place-form";
import { YearMovesTable } from "./year-moves-table";
import "./place.css";

type Params = { params: Promise<{ jobId: string }> };
export const dynamic = "force-dynamic";
export const metadata: Metadata = { title: "Place" };

const dateOf = (day: number | null) => (day === null ? "none" : dayText(day));
const tenth = (x: number | undefined) => Math.round((x ?? 0) * 10) / 10;

function zoneWords({ zone, zoneSource, zoneMap, setting }: Place): string {
  if (zone === null || zoneSource === null) return "not known: set it by hand";
  const range = `${zoneText(zone)}, coldest night of an average year ${zoneRangeF(zone).join(" to ")} °F`;
  const moved = zoneSource !== "hand" && setting.microclimate !== "open" ? `, moved for the ${setting.microclimate}` : "";
  const from = {
    hand: "set by hand",
    ZIP: `2023 table for the ZIP${moved && zoneMap !== null ? `: ${zoneText(zoneMap)}` : ""}`,
    "nearest ZIP": "that of the nearest ZIP",
    normals: "estimated from the normals",
  }[zoneSource];
  return `${range} (${from}${moved})`;
}

/** What the zone is without one set by hand. */
function zoneDefaultWords({ zone, zoneMap, zoneSource }: Place): string {
  if (zoneMap !== null) return `${zoneText(zoneMap)}, from the ZIP`;
  if (zoneSource === "nearest ZIP" && zone !== null) return `${zoneText(zone)}, of the nearest ZIP`;
  if (zoneSource === "normals" && zone !== null) return `${zoneText(zone)}, estimated`;
  return zoneSource === "hand" ? "not by hand" : "not set";
}

export default async function PlacePage({ params }: Params) {
  const { jobId } = await params;
  const context = await jobContext(jobId);
  if (!context) notFound();
  const { job, place } = context;
  const year = placeYearOf(place);
  const climate = place.climate;
  const label = placeLabel(place);
  const zone = place.zone === null ? null : zoneText(place.zone);
  const { openClimate, setting } = place;
  const open = openClimate && !settingIsNormal(setting) ? placeYear(openClimate) : null;
  const [mild, hard] = climate ? [placeYear(climateOfSpring(climate, "mild")), placeYear(climateOfSpring(climate, "hard"))] : [null, null];
  const moves = openClimate && !year?.noBasis ? yearMoves(openClimate, setting.microclimate, await yearMarkers()) : null;
  const days = year
    ? Array.from({ length: 73 }, (_, i) => {
        const d = i * 5 + 2;
        return {
          day: d + 1,
          low: tenth(year.minF[d]),
          high: tenth(year.maxF[d]),
          openLow: open ? tenth(open.minF[d]) : null,
          openHigh: open ? tenth(open.maxF[d]) : null,
          degreeDays: Math.round(year.degreeDayTotals[d] ?? 0),
          openDegreeDays: open ? Math.round(open.degreeDayTotals[d] ?? 0) : null,
          hard: Math.round(hard?.degreeDayTotals[d] ?? 0),
          mild: Math.round(mild?.degreeDayTotals[d] ?? 0),
          reference: Math.round(REFERENCE_YEAR.degreeDayTotals[d] ?? 0),
          light: Math.round((year.dayLengthH[d] ?? 0) * 100) / 100,
        };
      })
    : [];
  return (
    <main id="main" className="sheet">
      <div className="sheet-head spread">
        <h1>Place</h1>
        <Link href={`/jobs/${jobId}`}>{job.name}</Link>
      </div>
      {place.fault ? <p className="notice alert">{place.fault} Until then every bed shows the year of the reference climate, Wooster, Ohio.</p> : null}
      {place.warnings.map((warning) => (
        <p key={warning} className="notice">
          {warning}
        </p>
      ))}
      {year?.noBasis ? <p className="notice">{year.noBasis}</p> : null}
      <div className="split">
        <section aria-labelledby="set-title">
          <h2 id="set-title">Where the site is</h2>
          <PlaceForm
            jobId={jobId}
            zones={HALF_ZONES}
            setting={setting}
            values={{
              zip: job.placeKey.zip ?? "",
              town: job.placeKey.town ?? "",
              lat: job.placeKey.lat?.toString() ?? "",
              lon: job.placeKey.lon?.toString() ?? "",
              elevationFt: job.placeKey.elevationFt?.toString() ?? "",
              zone: job.placeKey.zone ?? "",
              growing: String(Math.round(job.targets.growing * 100)),
              winter: String(Math.round(job.targets.winter * 100)),
            }}
            found={{
              lat: climate?.lat.toFixed(3) ?? "",
              lon: climate?.lon.toFixed(3) ?? "",
              elevationFt: climate ? String(Math.round(climate.elevationFt)) : "",
              zone: place.zoneMap === null ? "" : zoneText(place.zoneMap),
              zoneWords: zoneDefaultWords(place),
            }}
          />
        </section>
        <section aria-labelledby="facts-title">
          <h2 id="facts-title">{label}</h2>
          <table>
            <tbody>
              <tr>
                <th scope="row">Hardiness zone</th>
                <td>{zoneWords(place)}</td>
              </tr>
              {climate && openClimate ? (
                <>
                  {settingIsNormal(setting) ? null : (
                    <tr>
                      <th scope="row">The site</th>
                      <td>
                        {settingWords(setting).join("; ")}. Open ground at the ZIP: freezes {dateOf(openClimate.lastFreezeDay)} and {dateOf(openClimate.firstFreezeDay)}.
                      </td>
                    </tr>
                  )}
                  <tr>
                    <th scope="row">Last and first freeze</th>
                    <td>
                      {dateOf(climate.lastFreezeDay)} and {dateOf(climate.firstFreezeDay)}, in half of the years
                      {climate.lastFreezeLateDay === null || climate.firstFreezeEarlyDay === null
                        ? ""
                        : `; one year in ten after ${dayText(climate.lastFreezeLateDay)}, and before ${dayText(climate.firstFreezeEarlyDay)}`}
                    </td>
                  </tr>
                  <tr>
                    <th scope="row">Elevation</th>
                    <td>
                      {Math.round(climate.elevationFt).toLocaleString("en-US")} ft
                      {job.placeKey.elevationFt == null ? ", from the stations around: edit it for a hill or a hollow" : ", set by hand"}
                    </td>
                  </tr>
                  <tr>
                    <th scope="row">Warmth</th>
                    <td>
                      {Math.round(year?.degreeDayTotals.at(-1) ?? 0).toLocaleString("en-US")} degree days base 50 °F a year (Wooster, Ohio:{" "}
                      {Math.round(REFERENCE_YEAR.degreeDayTotals.at(-1) ?? 0).toLocaleString("en-US")})
                    </td>
                  </tr>
                  <tr>
                    <th scope="row">Rain and snow</th>
                    <td>{climate.rainIn.reduce((a, b) => a + b, 0).toFixed(1)} in of water a year</td>
                  </tr>
                  <tr>
                    <th scope="row">Stations</th>
                    <td>
                      {climate.stations
                        .slice(0, 4)
                        .map((s) => `${s.name} ${s.state} (${s.miles.toFixed(0)} mi)`)
                        .join("; ")}
                    </td>
                  </tr>
                </>
              ) : null}
            </tbody>
          </table>
        </section>
      </div>
      {days.length ? <PlaceCharts days={days} freeze={[climate?.lastFreezeDay ?? null, climate?.firstFreezeDay ?? null]} place={label} moved={open !== null} /> : null}
      {moves ? <YearMovesTable moves={moves} /> : null}
      <section className="small soft" aria-label="Sources">
        <p>
          Temperatures, freeze dates and rain: {NORMALS_SOURCE} (a US government work), interpolated from the nearest stations with a correction for elevation; the period is{" "}
          {NORMALS_PERIOD}. No later table could be had.
        </p>
        <p>
          Zone: USDA Agricultural Research Service and PRISM Climate Group, Oregon State University, 2023, by ZIP code. <b>This is not the official map.</b> A street corner or a
          walled court is not its ZIP: set the zone by hand where you know better. Latitude and longitude of ZIP codes: US Census Bureau.
        </p>
      </section>
      <TitleBlock
        cells={[
          ["Job", job.name],
          ["Place", label],
          ["Latitude, longitude", climate ? `${climate.lat.toFixed(2)}, ${climate.lon.toFixed(2)}` : ""],
          ["Zone", zone ?? ""],
          ["Normals", NORMALS_PERIOD],
          ["Elevation", climate ? `${Math.round(climate.elevationFt)} ft` : ""],
          ["Date", today().text],
        ]}
      />
    </main>
  );
}
