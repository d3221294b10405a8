// "Like X, but …": the form of an own taxon filled in from a taxon, its windows as they are at a place.
import type { OwnTaxonInput, SeenAt } from "../plants/own-taxon";
import type { Taxon } from "../plants/taxon";
import { spansYear } from "./spans-year";
import type { TaxonSeason } from "./window";

/**
 * A form that makes the same taxon again, save its cultivar, trade designation and former names: those are the new one's own.
 * @param season the taxon's at the place of `seenAt`
 */
export function ownTaxonLike(taxon: Taxon, season: TaxonSeason, seenAt: SeenAt): OwnTaxonInput {
  const { people, pets, horses, parts } = taxon.toxic;
  return {
    botanical: taxon.botanical,
    cultivar: null,
    trade: null,
    group: taxon.group,
    family: taxon.family,
    common: [...taxon.commonNames],
    synonyms: [],
    kind: taxon.kind,
    habit: taxon.habit,
    height: [...taxon.heightFt],
    spread: [...taxon.spreadFt],
    rate: taxon.growthRate,
    zones: [taxon.zoneLow, taxon.zoneHigh],
    light: [...taxon.light],
    moisture: [...taxon.moisture],
    ph: [...taxon.ph],
    salt: taxon.salt,
    deer: taxon.deer,
    drought: taxon.drought,
    wet: taxon.wetFeet,
    juglone: taxon.juglone,
    roots: taxon.roots,
    foliage: taxon.foliage,
    leaves: season.leaves,
    toxic: { people, pets, horses, ...(parts ? { parts } : {}) },
    sex: taxon.sex,
    partner: taxon.partner,
    wood: taxon.wood,
    pruning: taxon.pruning,
    maintenance: taxon.maintenance,
    wildlife: [...taxon.wildlife],
    flags: [...taxon.flags],
    usda: taxon.usda,
    note: null,
    features: season.windows.map(({ kind, feature, startDay, endDay }) => ({
      kind,
      color: feature.color,
      fade: feature.fade,
      winter: feature.winter,
      show: feature.show,
      drive: feature.drive,
      window: spansYear({ startDay, endDay }) || feature.drive === "always" ? null : { from: startDay, to: endDay },
    })),
    seenAt,
  };
}

/** A form for a plant that is like none: common answers, hazards not known, the rest to be filled in. */
export function ownTaxonBlank(seenAt: SeenAt): OwnTaxonInput {
  return {
    botanical: "",
    cultivar: null,
    trade: null,
    group: null,
    family: null,
    common: [],
    synonyms: [],
    kind: "perennial",
    habit: "clump",
    height: [1, 2],
    spread: [1, 2],
    rate: "medium",
    zones: [4, 8],
    light: ["sun"],
    moisture: ["average"],
    ph: [5.5, 7.5],
    salt: "low",
    deer: "sometimes",
    drought: "medium",
    wet: "no",
    juglone: "unknown",
    roots: "fibrous",
    foliage: "dies back",
    leaves: { onDay: 111, offDay: 288 },
    toxic: { people: "unknown", pets: "unknown", horses: "unknown" },
    sex: "both",
    partner: null,
    wood: null,
    pruning: "cut back early spring",
    maintenance: "low",
    wildlife: [],
    flags: [],
    usda: null,
    note: null,
    features: [{ kind: "bloom", color: "white", fade: null, winter: null, window: { from: 182, to: 222 }, show: 2, drive: null }],
    seenAt,
  };
}
