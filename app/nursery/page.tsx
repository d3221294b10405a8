import type { Metadata } from "next";
import { TitleBlock } from "@/app/parts/title-block";
import { lotList } from "@/lib/server/lots";
import { taxaHeld } from "@/lib/server/taxa";
import { today } from "@/lib/server/today";
import type { LotLine } from "./lot-row";
import { LotTable } from "./lot-table";
import "./nursery.css";

export const metadata: Metadata = { title: "Nursery" };
export const dynamic = "force-dynamic";

export default async function NurseryPage() {
  const [lots, held] = await Promise.all([lotList(), taxaHeld()]);
  const lines = lots.map((lot): LotLine => {
    const taxon = held.byId.get(lot.taxonId);
    if (!taxon) return { lot, taxon: null };
    const { botanical, cultivar, group, tradeDesignation, commonNames } = taxon;
    return { lot, taxon: { botanical, cultivar, group, tradeDesignation, commonNames } };
  });
  const onHand = lots.reduce((sum, lot) => sum + lot.quantity, 0);
  return (
    <main id="main" className="sheet nursery">
      <div className="sheet-head spread">
        <h1>Nursery</h1>
      </div>
      <LotTable lines={lines} />
      <TitleBlock
        cells={[
          ["Lots", lots.length.toLocaleString("en-US")],
          ["Plants on hand", onHand.toLocaleString("en-US")],
          ["Lots not counted yet", String(lots.filter((lot) => lot.countedAt === null).length)],
          ["Date", today().text],
        ]}
      />
    </main>
  );
}
