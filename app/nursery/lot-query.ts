// What the nursery page is asked for, as its address holds it.
import { z } from "zod";
import { LOT_SORTS, type LotQuery } from "@/lib/nursery/lot-search";

const one = z.union([z.string(), z.array(z.string()).transform((list) => list[0])]).optional();
const address = z.object({ q: one, block: one, free: one, since: one, sort: one, page: one });
const day = z.iso.date();

/** Stands for all blocks where a choice must be sent; no block is called so. */
export const ALL_BLOCKS = "*";

export type NurseryQuery = LotQuery & { readonly page: number };

/** Reads an address; what it cannot read is as if it were not there. */
export function nurseryQueryRead(params: Readonly<Record<string, string | string[] | undefined>>): NurseryQuery {
  const { q, block, free, since, sort, page } = address.parse(params);
  return {
    q: (q ?? "").slice(0, 120),
    block: block === undefined || block === ALL_BLOCKS ? null : block,
    free: free === "1",
    since: day.safeParse(since).data ?? null,
    sort: LOT_SORTS.find((known) => known === sort) ?? "name",
    page: Math.max(1, Math.trunc(Number(page)) || 1),
  };
}

/** The address of a query; what is as usual is left out. */
export function nurseryAddress({ q, block, free, since, sort, page }: NurseryQuery, path = "/nursery"): string {
  const params = new URLSearchParams();
  if (q.trim()) params.set("q", q);
  if (block !== null) params.set("block", block);
  if (free) params.set("free", "1");
  if (since) params.set("since", since);
  if (sort !== "name") params.set("sort", sort);
  if (page > 1) params.set("page", String(page));
  const text = params.toString();
  return text ? `${path}?${text}` : path;
}
