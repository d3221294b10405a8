import Link from "next/link";
import type { CSSProperties } from "react";
import { BotanicalText } from "@/app/parts/botanical-text";
import { TitleBlock } from "@/app/parts/title-block";
import { YearStripSvg } from "@/app/parts/year-strip-svg";
import { plantSizeRangeText } from "@/lib/ground/length";
import { NORMALS_PERIOD } from "@/lib/place/station";
import { zoneText } from "@/lib/place/zone";
import { nameText } from "@/lib/plants/botanical-name";
import { MONTHS } from "@/lib/plants/thirds";
import type { PlantSheetView } from "@/lib/server/plant-sheet";
import { today } from "@/lib/server/today";
import { PlaceSelect } from "../place-select";
import { Cautions } from "./cautions";
import { CorrectionProvider } from "./correction-provider";
import { FactTable } from "./fact-table";
import { NativeStates } from "./native-states";
import { OwnActions } from "./own-actions";
import { SilhouetteFigure } from "./silhouette-figure";
import { SourceList } from "./source-list";
import { UsedIn } from "./used-in";
import { WindowTable } from "./window-table";

const across = (day: number | null): string => (day === null ? "-10px" : `${((100 * day) / 365).toFixed(2)}%`);

/** A note of the dataset, which has no fixed ending, as a sentence. */
const sentenceOf = (note: string): string => `${note.charAt(0).toUpperCase()}${note.slice(1).replace(/\.$/, "")}.`;

/** One taxon: name, year at the place, drawing to scale, every value with its source, cautions, and where it is used. */
export function PlantSheet({ sheet }: { sheet: PlantSheetView }) {
  const { taxon, place, season, sources } = sheet;
  const { viewPlace } = place;
  const isOwn = sheet.origin === "own";
  const former = taxon.synonyms.filter((s) => s !== taxon.name);
  const lines = { "--last-freeze": across(viewPlace.lastFreezeDay), "--first-freeze": across(viewPlace.firstFreezeDay) } as CSSProperties;
  return (
    <CorrectionProvider taxonId={taxon.id} name={nameText(taxon)} asks={sheet.asks} seenAt={place.seenAt} placeLabel={place.label}>
      <main id="main" className="sheet plants plant-sheet">
        <div className="sheet-head">
          <p className="small screen-only crumbs">
            <Link href={`/plants?place=${encodeURIComponent(place.key)}`}>All plants</Link>
          </p>
          <div className="spread">
            <h1>
              <BotanicalText taxon={taxon} />
            </h1>
            <PlaceSelect choices={sheet.choices} chosen={place.key} />
          </div>
          <p className="common-names">
            {taxon.commonNames.join(", ")}
            <span className="soft"> · {taxon.family}</span>
            {isOwn ? <span className="soft"> · your own plant</span> : null}
          </p>
          {former.length ? (
            <p className="small soft">
              Also sold or known as{" "}
              {former.map((name, i) => (
                <span key={name}>
                  {i ? ", " : ""}
                  <i className="botanical">{name}</i>
                </span>
              ))}
            </p>
          ) : null}
          {taxon.note ? <p className="small">{sentenceOf(taxon.note)}</p> : null}
        </div>
        <section aria-labelledby="year-title">
          <div className="section-head">
            <h2 id="year-title">The year at {place.label}</h2>
            <span className="soft small">{season.basisNote ?? (viewPlace.lastFreezeDay === null ? "" : "dashed: last and first freeze")}</span>
          </div>
          <div className="year-big" style={lines}>
            <div className="month-foot" aria-hidden="true">
              {MONTHS.map((month) => (
                <span key={month}>{month}</span>
              ))}
            </div>
            <div className="year-panel">
              <YearStripSvg marks={sheet.marks} sentence={sheet.sentence} idPrefix="big" freezeDays={null} />
            </div>
          </div>
          <WindowTable windows={sheet.windows} leaves={sheet.leaves} leavesSource={taxon.sources.leaves ?? "practice"} sources={sources} />
        </section>
        <div className="split plant-split">
          <section aria-labelledby="drawing-title">
            <h2 id="drawing-title">Grown, beside a 6 ft person</h2>
            <SilhouetteFigure
              id={taxon.id}
              name={nameText(taxon)}
              plant={{
                kind: taxon.kind,
                habit: taxon.habit,
                foliage: taxon.foliage,
                family: taxon.family,
                genus: taxon.genus,
                heightFt: (taxon.heightFt[0] + taxon.heightFt[1]) / 2,
                spreadFt: (taxon.spreadFt[0] + taxon.spreadFt[1]) / 2,
              }}
              season={season}
              sizeWords={`${plantSizeRangeText(taxon.heightFt)} high, ${plantSizeRangeText(taxon.spreadFt)} wide`}
            />
          </section>
          <div>
            <Cautions cautions={sheet.cautions} sources={sources} />
            <UsedIn uses={sheet.uses} />
          </div>
        </div>
        <section aria-label="What is known of it" className="fact-groups">
          {sheet.groups.map((group) => (
            <FactTable key={group.title} group={group} sources={sources} />
          ))}
          <NativeStates
            native={sheet.native}
            state={viewPlace.state}
            isSelection={taxon.cultivar !== null || taxon.tradeDesignation !== null}
            source={sources["usda-nativity"] ?? ""}
          />
        </section>
        <OwnActions id={taxon.id} name={nameText(taxon)} isOwn={isOwn} placeKey={place.key} uses={sheet.uses.length} />
        <SourceList sheet={sheet} />
        <TitleBlock
          cells={[
            ["Plant", nameText(taxon)],
            ["Kind", taxon.kind],
            ["Place", place.label],
            ["Zone here", viewPlace.zone === null ? "" : zoneText(viewPlace.zone)],
            ["Normals", NORMALS_PERIOD],
            ["Entry", isOwn ? "your own" : sheet.origin === "corrected" ? "dataset, corrected here" : "open dataset"],
            ["Date", today().text],
          ]}
        />
      </main>
    </CorrectionProvider>
  );
}
