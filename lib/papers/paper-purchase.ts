// The purchase list: what is ordered of each supplier, in its multiples and against its minimum.
import { centsText } from "../nursery/count-words";
import { isoDateText } from "../pulls/iso-date";
import type { PullTaxon } from "../pulls/pull-list";
import type { PurchaseLine, PurchaseOrder } from "../pulls/purchase-list";
import { type Paper, type PaperGroup, type PaperRow, paperPlant } from "./paper";
import { type PaperJob, paperFileName, paperFoot, paperSubtitle } from "./paper-pull";

/** Finds the taxon of a line's lot, so that its name is set as names are; null where it left the dataset. */
export type TaxonOfLot = (lotId: string) => PullTaxon | null;

function purchaseRow(line: PurchaseLine, taxonOf: TaxonOfLot): PaperRow {
  const taxon = taxonOf(line.lotId);
  return {
    key: line.lotId,
    cells: {
      ordered: line.ordered,
      plant: taxon ? paperPlant(taxon) : line.taxonName,
      size: line.sizeText,
      code: line.code,
      each: line.centsEach,
      sum: line.cents,
      wanted: line.wanted,
      beds: line.beds.join(", "),
      remarks: line.remarks,
    },
  };
}

function orderNote(order: PurchaseOrder): string {
  const priced = order.unpricedPlants > 0 ? `${centsText(order.cents)} and ${order.unpricedPlants.toLocaleString("en-US")} not priced` : centsText(order.cents);
  return [
    priced,
    order.belowMinimumCents > 0 ? `${centsText(order.belowMinimumCents)} below the minimum of ${centsText(order.minimumCents ?? 0)}` : "",
    order.multiple > 1 ? `sold by ${order.multiple}` : "",
    order.orderBy ? `order by ${isoDateText(order.orderBy)}${order.late ? ", which is past" : ""}` : "",
    order.contact,
  ]
    .filter(Boolean)
    .join(" · ");
}

/** The purchase list as a paper, suppliers by name. */
export function purchasePaper(orders: readonly PurchaseOrder[], taxonOf: TaxonOfLot, job: PaperJob): Paper {
  const filled = orders.filter(({ lines }) => lines.some(({ ordered }) => ordered > 0));
  const plants = filled.reduce((sum, { lines }) => sum + lines.reduce((inner, line) => inner + line.ordered, 0), 0);
  const cents = filled.reduce((sum, order) => sum + order.cents, 0);
  return {
    title: "Purchase list",
    subtitle: paperSubtitle(job),
    fileName: paperFileName(job, "purchase list"),
    groupHead: "Supplier",
    columns: [
      { key: "ordered", head: "Order", kind: "number", width: 5, strong: true },
      { key: "plant", head: "Plant", kind: "plant", width: 25 },
      { key: "size", head: "Size", kind: "text", width: 11 },
      { key: "code", head: "Their no.", kind: "text", width: 9 },
      { key: "each", head: "Each", kind: "money", width: 8 },
      { key: "sum", head: "Sum", kind: "money", width: 9 },
      { key: "wanted", head: "Needed", kind: "number", width: 6 },
      { key: "beds", head: "Beds", kind: "text", width: 14 },
      { key: "remarks", head: "Remarks", kind: "text", width: 13 },
    ],
    groups: filled.map(
      (order): PaperGroup => ({
        key: order.supplierId,
        heading: order.supplierName,
        note: orderNote(order),
        rows: order.lines.filter(({ ordered }) => ordered > 0).map((line) => purchaseRow(line, taxonOf)),
      }),
    ),
    total: { ordered: plants, plant: "plants to order", sum: cents },
    notes: ["Prices are those of the suppliers' lists as they were taken in; freight and tax are not in them."],
    foot: paperFoot(job, plants, ["Ordered by", "Order no."]),
    empty: "Nothing to buy: no plant of this job is reserved from a supplier's list.",
  };
}
