// From a line of a supplier's list to the plant it offers, its size, quantity and price, with what is sure and what a person should look at.
import { matchName } from "../plants/name-match";
import type { PlantDoc } from "../plants/plant-names";
import { type PlantIndex, searchPlants } from "../plants/search";
import type { Kind } from "../plants/vocabulary";
import { type ListLine, type ListRead, type ListSheet, listRead } from "./list-read";
import type { ColumnMap } from "./list-columns";
import type { PriceBreak } from "./lot";
import { pricesJoined } from "./price-read";
import { type LineQuantity, quantityFromText, readyInText } from "./quantity-read";
import { type ShortIndex, shortIndex, shortReadings } from "./short-name";
import { type LineSize, sizeFromText } from "./size-read";
import { sizeSplit } from "./size-split";

/** What matching needs of a taxon; a Taxon satisfies it. */
export type ListedPlant = PlantDoc & { readonly kind: Kind };

export type NameReading = {
  readonly taxonId: string | null;
  /** Whether it may pass without a person looking. */
  readonly sure: boolean;
  /** Up to three plants, likeliest first; empty where the name is sure. */
  readonly candidates: readonly string[];
};

export type MatchedLine = {
  readonly sheet: string;
  readonly row: number;
  readonly text: string;
  /** The name as read from the line, sizes taken out. */
  readonly written: string;
  readonly reading: NameReading;
  readonly sizeText: string;
  readonly size: LineSize;
  readonly quantity: LineQuantity;
  readonly priceCents: number | null;
  readonly prices: readonly PriceBreak[];
  readonly ready: string | null;
  readonly remarks: readonly string[];
};

/** Names confirmed before for this supplier: as written (`nameKey`) to taxon. */
export type LearnedNames = ReadonlyMap<string, string>;

/** One key for a name as a list writes it, whatever its capitals and spaces. */
export function nameKey(written: string): string {
  return written.toLowerCase().replace(/[’‘`´]/g, "'").replace(/\s+/g, " ").trim();
}

const CANDIDATES = 3;
/** A doubtful reading of the name as a whole beats the shorthand reading only from here on. */
const WHOLE_NAME_MIN = 0.9;

/** What stands on labels and is no part of a name: trade mark letters, stars, item numbers, "new". */
function labelsCleared(text: string): string {
  return text
    .replace(/^\s*#?\d{3,}\s*[-–:.]?\s+(?=\p{L})/u, "")
    .replace(/(?<=\S)\s+(?:TM|SM|\(TM\)|PPAF|PBR|NEW!?)(?=\s|$|[,;)])/g, " ")
    .replace(/\*+|^new!?\s+(?=[A-Z])|\s+\(?(?:new|natives?|improved stock)!?\)?\s*$/gi, " ")
    .replace(/\s+/g, " ")
    .trim();
}

export type LineMatcher = {
  /** @param common the common name where it has a column of its own. @param section heading above: a genus completes names that leave it out. */
  readonly nameRead: (name: string, common: string, section: string) => NameReading;
  readonly lineMatch: (line: ListLine) => MatchedLine;
  /** Whether a text is a plant's name: for guessing columns. */
  readonly isName: (text: string) => boolean;
};

type Reading = { taxonId: string; sure: boolean; fallback: boolean; confidence: number };

/**
 * Matches lines against plants. Built once for a list, since names repeat from size to size and are read once.
 * A name passes as sure when it is one of a plant's names, or shorthand that no other plant explains; a species that is not among the plants
 * is never read as another, nor a cultivar as its species.
 */
export function lineMatcher<T extends ListedPlant>(index: PlantIndex<T>, learned: LearnedNames = new Map()): LineMatcher {
  const byId = new Map(index.plants.map(({ taxon }) => [taxon.id, taxon]));
  let short: ShortIndex<T> | null = null;
  const read = new Map<string, NameReading>();

  function textRead(text: string): { best: Reading | null; others: string[] } {
    const match = matchName(index, text);
    const whole: Reading | null = match && { taxonId: match.taxonId, sure: match.sure && !match.fallback, fallback: match.fallback !== undefined, confidence: match.confidence };
    if (whole?.sure) return { best: whole, others: [] };
    short ??= shortIndex(index);
    const readings = shortReadings(short, text);
    const [first] = readings;
    const agree = first && whole && !whole.fallback && whole.taxonId === first.taxonId;
    const weak = !whole || whole.fallback || whole.confidence < WHOLE_NAME_MIN;
    const others = readings.map(({ taxonId }) => taxonId);
    if (first?.sure && (agree || weak)) return { best: { taxonId: first.taxonId, sure: true, fallback: false, confidence: first.score }, others };
    return { best: whole ?? (first ? { taxonId: first.taxonId, sure: false, fallback: false, confidence: first.score } : null), others };
  }

  /** A species in one column and its cultivar in the other: the cultivar is meant. */
  function moreTold(botanical: Reading, common: Reading | null): Reading {
    const own = byId.get(botanical.taxonId);
    const other = common?.sure ? byId.get(common.taxonId) : undefined;
    const isSpecies = own && own.cultivar === null && own.tradeDesignation === null;
    return isSpecies && other && other.botanical === own.botanical && (other.cultivar !== null || other.tradeDesignation !== null) && common ? common : botanical;
  }

  function fresh(name: string, common: string, section: string): NameReading {
    const known = learned.get(nameKey(name));
    if (known !== undefined && byId.has(known)) return { taxonId: known, sure: true, candidates: [] };
    const text = labelsCleared(name);
    let { best, others } = textRead(text);
    const called = common ? textRead(labelsCleared(common)).best : null;
    if (best?.sure) best = moreTold(best, called);
    else if (called?.sure && (!best || best.fallback || best.taxonId === called.taxonId) && !best?.fallback) best = called;
    if (!best?.sure && section) {
      const genus = /\p{L}{3,}/u.exec(section)?.[0] ?? "";
      if (index.table().genera.has(genus.toLowerCase()) && !text.toLowerCase().startsWith(genus.toLowerCase())) {
        const under = textRead(`${genus} ${text}`);
        if (under.best?.sure || !best) ({ best, others } = under);
      }
    }
    if (best?.sure) return { taxonId: best.taxonId, sure: true, candidates: [] };
    const searched = searchPlants(index, text, CANDIDATES).map(({ taxon }) => taxon.id);
    const candidates = [...new Set([...(best ? [best.taxonId] : []), ...others, ...searched])].slice(0, CANDIDATES);
    return { taxonId: best && !best.fallback ? best.taxonId : null, sure: false, candidates };
  }

  function nameRead(name: string, common: string, section: string): NameReading {
    const key = `${name}\u0000${common}\u0000${section}`;
    const known = read.get(key);
    if (known) return known;
    const made = fresh(name, common, section);
    read.set(key, made);
    return made;
  }

  function lineMatch(line: ListLine): MatchedLine {
    const own = sizeSplit(line.name);
    const written = own.name || line.name;
    const reading = nameRead(written, line.common, line.section);
    const kind = reading.taxonId === null ? undefined : byId.get(reading.taxonId)?.kind;
    const sizeText = [line.sizeText, own.name ? own.sizeText : ""].filter(Boolean).join(" ");
    const price = pricesJoined(line.prices);
    const quantity = quantityFromText(line.quantityText);
    const remarks = [...line.remarks, ...(line.grade ? [line.grade] : []), ...[quantity.note, price.note].filter(Boolean), ...(quantity.unit ? [`by the ${quantity.unit}`] : [])];
    return {
      sheet: line.sheet,
      row: line.row,
      text: line.text,
      written,
      reading,
      sizeText,
      size: sizeFromText(sizeText, kind),
      quantity,
      priceCents: price.cents,
      prices: price.breaks,
      ready: quantity.ready ?? (line.readyText || readyInText(line.remarks.join(" "))),
      remarks: [...new Set(remarks)],
    };
  }

  const isName = (text: string): boolean => {
    const match = matchName(index, labelsCleared(text));
    return match !== null && (match.sure || match.confidence >= 0.85);
  };
  return { nameRead, lineMatch, isName };
}

/** A whole list: columns guessed (or as kept in `maps`), every line matched. */
export function listMatch<T extends ListedPlant>(
  index: PlantIndex<T>,
  sheets: readonly ListSheet[],
  { maps, learned }: { readonly maps?: ReadonlyMap<string, ColumnMap>; readonly learned?: LearnedNames } = {},
): ListRead & { readonly matched: readonly MatchedLine[] } {
  const matcher = lineMatcher(index, learned);
  const list = listRead(sheets, matcher.isName, maps);
  return { ...list, matched: list.lines.map(matcher.lineMatch) };
}
