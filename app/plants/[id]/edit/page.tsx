import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { BotanicalText } from "@/app/parts/botanical-text";
import { taxaHeld } from "@/lib/server/taxa";
import { OwnForm } from "../../own-form/own-form";
import "../../plants.css";
import "../plant-sheet.css";
import "../../own-form/own-form.css";

export const metadata: Metadata = { title: "Edit a plant of your own" };
export const dynamic = "force-dynamic";

export default async function EditPlantPage({ params }: { params: Promise<{ id: string }> }) {
  const { id } = await params;
  const row = (await taxaHeld()).own.get(id);
  if (!row) notFound();
  return (
    <main id="main" className="sheet plants">
      <div className="sheet-head">
        <h1>
          <BotanicalText taxon={row.taxon} />
        </h1>
      </div>
      <OwnForm id={id} input={row.input} placeLabel={row.input.seenAt?.label ?? "Wooster, Ohio (reference climate)"} back={`/plants/${id}`} />
    </main>
  );
}
