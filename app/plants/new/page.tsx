import type { Metadata } from "next";
import { BotanicalText } from "@/app/parts/botanical-text";
import { ownTaxonBlank, ownTaxonLike } from "@/lib/season/own-like";
import { plantListAddress } from "@/lib/server/plant-list-response";
import { plantPlaces } from "@/lib/server/plant-places";
import { seasonOf, taxaHeld } from "@/lib/server/taxa";
import { LikeChooser } from "../own-form/like-chooser";
import { OwnForm } from "../own-form/own-form";
import { PlaceSelect } from "../place-select";
import "../plants.css";
import "../[id]/plant-sheet.css";
import "../own-form/own-form.css";

export const metadata: Metadata = { title: "A plant of your own" };
export const dynamic = "force-dynamic";

type Props = { searchParams: Promise<Record<string, string | string[] | undefined>> };

/** A name as a supplier's list writes it, parted into the form's fields: "Abelia mosanensis 'Bridal Bouquet'". */
function writtenName(written: string): { botanical: string; cultivar: string | null } {
  const match = /^([^'‘"]*)['‘"]([^'’"]+)['’"]/.exec(written);
  return { botanical: (match?.[1] ?? written).trim().slice(0, 120), cultivar: match?.[2]?.trim().slice(0, 80) ?? null };
}

export default async function NewPlantPage({ searchParams }: Props) {
  const { like, place: asked, written, supplier, line } = await searchParams;
  const [{ choices, chosen }, held, address] = await Promise.all([plantPlaces(typeof asked === "string" ? asked : null), taxaHeld(), plantListAddress()]);
  const taxon = typeof like === "string" ? held.byId.get(like) : undefined;
  const blank = { ...ownTaxonBlank(chosen.seenAt), ...(typeof written === "string" ? writtenName(written) : {}) };
  const input = taxon ? ownTaxonLike(taxon, seasonOf(held, taxon, chosen.year), chosen.seenAt) : like === "none" ? blank : null;
  const listed = typeof supplier === "string" && typeof line === "string" ? { supplierId: supplier, key: line } : undefined;
  const back = listed ? `/nursery/suppliers/${listed.supplierId}` : taxon ? `/plants/${taxon.id}` : "/plants";
  return (
    <main id="main" className="sheet plants">
      <div className="sheet-head spread">
        <h1>A plant of your own</h1>
        <PlaceSelect choices={choices} chosen={chosen.key} />
      </div>
      {taxon ? (
        <p>
          Like <BotanicalText taxon={taxon} />, but …
        </p>
      ) : null}
      {input ? (
        <OwnForm key={`${taxon?.id ?? "none"} ${chosen.key}`} id={null} input={input} placeLabel={chosen.label} back={back} listed={listed} />
      ) : (
        <LikeChooser address={address} placeKey={chosen.key} />
      )}
    </main>
  );
}
