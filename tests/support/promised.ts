import { expect } from "vitest";
import { EMPTY_BED } from "../../lib/ground/bed";
import { bedCreate, bedFind } from "../../lib/server/beds";
import { database } from "../../lib/server/database";
import { jobCreate } from "../../lib/server/jobs";
import { reservationsMake } from "../../lib/server/reservations";

/** So many plants of the Limelight lot promised to a job of that name. */
export async function promised(jobName: string, quantity: number): Promise<void> {
  const lot = await database().lot.findFirstOrThrow({ where: { deletedAt: null, taxonName: { contains: "Limelight" } } });
  const jobId = await jobCreate(jobName);
  const row = {
    id: "r1",
    taxonId: lot.taxonId,
    taxonName: lot.taxonName,
    quantity: { by: "count", count: quantity } as const,
    spacingFt: null,
    size: "#5",
    remarks: "",
    existing: false,
  };
  const bedId = await bedCreate(jobId, { ...EMPTY_BED, rows: [row] });
  const rowId = (await bedFind(bedId))?.bed.rows[0]?.id ?? "";
  expect(await reservationsMake(jobId, [{ lotId: lot.id, bedId, rowId, quantity, steps: 0 }], "")).toMatchObject({ kind: "reserved" });
}
