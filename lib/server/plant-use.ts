// Where plants are used: in which beds of which jobs.
import { database } from "./database";

const inUse = { deletedAt: null, job: { deletedAt: null } } as const;

/** Rows of beds by taxon, for those that are used at all. */
export async function plantUses(): Promise<Readonly<Record<string, number>>> {
  const groups = await database().bedRow.groupBy({ by: ["taxonId"], where: { bed: inUse }, _count: { _all: true } });
  return Object.fromEntries(groups.map((g) => [g.taxonId, g._count._all]));
}

export type PlantUse = { readonly jobId: string; readonly job: string; readonly bedId: string; readonly bed: string; readonly existing: boolean; readonly archived: boolean };

/** The beds that hold a taxon, newest job first. */
export async function plantUsesOf(taxonId: string): Promise<PlantUse[]> {
  const rows = await database().bedRow.findMany({
    where: { taxonId, bed: inUse },
    select: { existing: true, bed: { select: { id: true, name: true, job: { select: { id: true, name: true, archivedAt: true } } } } },
    orderBy: [{ bed: { job: { updatedAt: "desc" } } }, { bed: { position: "asc" } }],
  });
  const seen = new Set<string>();
  return rows.flatMap(({ existing, bed }) => {
    if (seen.has(bed.id)) return [];
    seen.add(bed.id);
    return [{ jobId: bed.job.id, job: bed.job.name, bedId: bed.id, bed: bed.name, existing, archived: bed.job.archivedAt !== null }];
  });
}
