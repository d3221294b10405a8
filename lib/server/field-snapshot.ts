// What a phone needs to pull a job without a signal: the sheet by place, what was done so far, and what stands in stock to pull instead.
import type { FieldLine, FieldSnapshot } from "../papers/field-list";
import type { PullSheetLine } from "../pulls/pull-sheet";
import { database } from "./database";
import { jobPullSheet } from "./job-pull-sheet";
import { pullEventsOfJob } from "./pull-events";
import { taxaHeld } from "./taxa";

function handlingWords({ ball, weightLb, lift, dig }: PullSheetLine): string {
  return [dig, ball && `${ball.diameterIn} in ball`, weightLb !== null && `about ${Math.round(weightLb)} lb`, lift !== null && lift !== "one person" && `lift: ${lift}`]
    .filter(Boolean)
    .join(", ");
}

function fieldLine(line: PullSheetLine): FieldLine {
  const { botanical, cultivar, group, tradeDesignation, commonNames } = line.taxon;
  return {
    lineId: line.lineId,
    letter: line.letter,
    bedName: line.bedName,
    taxon: { botanical, cultivar, group, tradeDesignation, commonNames: commonNames.slice(0, 1) },
    taxonId: line.taxon.id,
    sizeText: line.sizeText,
    wanted: line.wanted,
    handling: handlingWords(line),
    cautions: line.hazards,
    remarks: line.remarks,
  };
}

/** Plants of the firm's own with any free, by taxon: what may be pulled instead. */
async function pickable(): Promise<FieldSnapshot["pickable"]> {
  const [groups, held] = await Promise.all([
    database().lot.groupBy({ by: ["taxonId"], where: { deletedAt: null, supplierId: null, quantity: { gt: 0 } }, _sum: { quantity: true, reserved: true } }),
    taxaHeld(),
  ]);
  return groups
    .flatMap(({ taxonId, _sum }) => {
      const taxon = held.byId.get(taxonId);
      const free = (_sum.quantity ?? 0) - (_sum.reserved ?? 0);
      return taxon && free > 0 ? [{ taxonId, name: taxon.name, common: taxon.commonNames[0] ?? "", free }] : [];
    })
    .sort((a, b) => a.name.localeCompare(b.name, "en"));
}

/** The snapshot of a job for the phone; null when the job is gone. */
export async function fieldSnapshot(jobId: string): Promise<FieldSnapshot | null> {
  const [sheet, events, picks] = await Promise.all([jobPullSheet(jobId), pullEventsOfJob(jobId), pickable()]);
  if (!sheet) return null;
  return {
    jobId,
    jobName: sheet.job.name,
    stops: sheet.sheet.stops.map(({ place, lines }) => ({ place, lines: lines.map(fieldLine) })),
    events,
    pickable: picks,
    at: new Date().toISOString(),
  };
}
