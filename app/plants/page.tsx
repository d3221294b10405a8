import type { Metadata } from "next";
import Link from "next/link";
import { preload } from "react-dom";
import { TitleBlock } from "@/app/parts/title-block";
import { NORMALS_PERIOD } from "@/lib/place/station";
import { zoneText } from "@/lib/place/zone";
import { onHandByTaxon } from "@/lib/server/lots";
import { nativeSymbols } from "@/lib/server/native-states";
import { plantListAddress } from "@/lib/server/plant-list-response";
import { plantPlaces } from "@/lib/server/plant-places";
import { plantUses } from "@/lib/server/plant-use";
import { taxaHeld } from "@/lib/server/taxa";
import { today } from "@/lib/server/today";
import { PlaceSelect } from "./place-select";
import { PlantFinder } from "./plant-finder";
import "./plants.css";

export const metadata: Metadata = { title: "Plants" };
export const dynamic = "force-dynamic";

type Props = { searchParams: Promise<Record<string, string | string[] | undefined>> };

export default async function PlantsPage({ searchParams }: Props) {
  const { place: asked } = await searchParams;
  const [{ choices, chosen }, address, uses, onHand, held] = await Promise.all([
    plantPlaces(typeof asked === "string" ? asked : null),
    plantListAddress(),
    plantUses(),
    onHandByTaxon(),
    taxaHeld(),
  ]);
  preload(address, { as: "fetch", crossOrigin: "anonymous" });
  const { viewPlace } = chosen;
  return (
    <main id="main" className="sheet plants">
      <div className="sheet-head spread">
        <h1>Plants</h1>
        <div className="row">
          <PlaceSelect choices={choices} chosen={chosen.key} />
          <Link className="button" href="/plants/new">
            Add a plant of your own
          </Link>
        </div>
      </div>
      {held.unreadable.map((row) => (
        <p key={row.id} className="notice alert">
          A plant of your own cannot be read any more and is left out: {row.message}
        </p>
      ))}
      <PlantFinder
        address={address}
        uses={uses}
        onHand={onHand}
        place={{
          key: chosen.key,
          label: chosen.label,
          climate: chosen.year.climate,
          zone: viewPlace.zone,
          state: viewPlace.state,
          lastFreezeDay: viewPlace.lastFreezeDay,
          firstFreezeDay: viewPlace.firstFreezeDay,
          native: viewPlace.state ? nativeSymbols(viewPlace.state) : null,
        }}
      />
      <TitleBlock
        cells={[
          ["Plants", held.taxa.length.toLocaleString("en-US")],
          ["Of them your own", String(held.own.size)],
          ["Place of the windows", chosen.label],
          ["Zone", viewPlace.zone === null ? "" : zoneText(viewPlace.zone)],
          ["Normals", NORMALS_PERIOD],
          ["Corrected here", String(held.corrections.size)],
          ["Date", today().text],
        ]}
      />
    </main>
  );
}
