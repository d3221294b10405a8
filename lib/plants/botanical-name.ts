// Plant names set by the rules of the nomenclatural codes: what is italic, what is roman, what is a trade designation.

/** What a name is made of; a Taxon satisfies it. */
export type NameParts = {
  /** Genus, hybrid sign, species and lower ranks: "Acer × freemanii", "Rudbeckia fulgida var. sullivantii". */
  readonly botanical: string;
  readonly cultivar: string | null;
  readonly group?: string | null;
  readonly tradeDesignation: string | null;
};

export type NameRole = "genus" | "species" | "infraspecific" | "hybrid" | "rank" | "group" | "cultivar" | "trade";

/**
 * One piece of a name. Segments are set side by side with one space between them.
 * `italic`: Latin names; `roman`: hybrid sign, rank words, Group, ‘Cultivar’;
 * `trade`: a trade designation, in small capitals and without quotes (it is no name: ICNCP, Principle 6 and Art. 13).
 */
export type NameSegment = { readonly text: string; readonly style: "italic" | "roman" | "trade"; readonly role: NameRole };

const RANK_WORDS = new Set(["var.", "subsp.", "ssp.", "f.", "subvar.", "subf.", "sect.", "subg.", "ser.", "cv.", "sp.", "spp.", "nothosubsp.", "nothovar."]);

function botanicalSegments(botanical: string): NameSegment[] {
  let below = false;
  let named = 0;
  return botanical
    .split(/\s+/)
    .filter(Boolean)
    .map((word) => {
      if (word === "×" || word === "+") return { text: word, style: "roman", role: "hybrid" };
      if (RANK_WORDS.has(word)) {
        below = true;
        return { text: word, style: "roman", role: "rank" };
      }
      const capital = /^\p{Lu}/u.test(word);
      named = capital ? 1 : named + 1;
      return { text: word, style: "italic", role: capital ? "genus" : below || named > 2 ? "infraspecific" : "species" };
    });
}

/** An epithet for the screen: typographic single quotes, and the typographic apostrophe inside. */
const epithetQuoted = (epithet: string): string => `‘${epithet.replace(/'/g, "’")}’`;

const groupText = (group: string): string => (/^\(.*\)$/.test(group) ? group : `(${group})`);

/**
 * A taxon's name as segments for setting, in order: botanical part, Group, ‘Cultivar’, trade designation.
 * Source: ICN Recommendation 60F for italics as the common custom, ICNCP for quotes, Group and trade designation
 * (family roman, genus and epithet italic: Arboretum at Penn State, Writing Plant Names, 2020).
 */
export function nameSegments(taxon: NameParts): NameSegment[] {
  const segments = botanicalSegments(taxon.botanical);
  if (taxon.group) segments.push({ text: groupText(taxon.group), style: "roman", role: "group" });
  if (taxon.cultivar) segments.push({ text: epithetQuoted(taxon.cultivar), style: "roman", role: "cultivar" });
  if (taxon.tradeDesignation) segments.push({ text: taxon.tradeDesignation, style: "trade", role: "trade" });
  return segments;
}

/** The name in plain characters for CSV and search fields: straight quotes, the trade designation in capitals. */
export function nameText(taxon: NameParts): string {
  const parts = [taxon.botanical];
  if (taxon.group) parts.push(groupText(taxon.group));
  if (taxon.cultivar) parts.push(`'${taxon.cultivar}'`);
  if (taxon.tradeDesignation) parts.push(taxon.tradeDesignation.toUpperCase());
  return parts.join(" ");
}
