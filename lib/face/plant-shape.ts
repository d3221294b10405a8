import type { Taxon } from "../plants/taxon";

/** What decides a plant's shape. Height and spread are what is drawn, in feet: the middle of the mature range, or the size at some year. */
export type SilhouettePlant = Pick<Taxon, "kind" | "habit" | "foliage" | "family" | "genus"> & { readonly heightFt: number; readonly spreadFt: number };
