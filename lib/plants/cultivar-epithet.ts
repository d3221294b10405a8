// What the code for cultivated plants forbids in a cultivar epithet, as far as the letters alone can show it.

/** Longest epithet established from 1 January 1996, in characters without spaces and quotes (ICNCP 9th ed.). */
export const EPITHET_CHARACTERS = 30;

const LENGTH_RULE_YEAR = 1996;
const SUPERLATIVES = /\b(best|finest|greatest|loveliest|superlative|unsurpassed|unbeatable)\b/i;

/**
 * What is wrong with a cultivar epithet, in plain words; null when nothing can be seen.
 * That it must not be Latin since 1959 cannot be told from the letters and is not checked.
 * @param epithet without its quotes
 * @param namedIn year of naming where known: the length rule holds from 1996
 * Source: ISHS, How to name a new cultivar; RHS summary of ICNCP 9th ed.; ICNCP Art. 13 for trade designations.
 */
export function epithetFault(epithet: string, namedIn: number | null = null): string | null {
  const bare = epithet.trim();
  if (!bare) return "a cultivar epithet must not be empty";
  if (/["“”„]/.test(bare)) return "a cultivar epithet stands in single quotes, never double";
  if (/^['‘’].*['‘’]$/.test(bare)) return "write the epithet without its quotes: they are set around it";
  if (/[™®©℠]/.test(bare)) return "a trade mark is no cultivar epithet: keep it as the trade designation";
  if (/[×✕]/.test(bare)) return "a hybrid sign belongs to the botanical name, not to the epithet";
  const letters = bare.replace(/[\s'‘’]/g, "");
  if (/^\p{L}\.?$/u.test(letters)) return "a cultivar epithet must not be a single letter";
  if (/^[\d.,\-–/#]+$/.test(letters)) return "a cultivar epithet must not be numerals only";
  if (letters.length > EPITHET_CHARACTERS && (namedIn === null || namedIn >= LENGTH_RULE_YEAR))
    return `a cultivar epithet has at most ${EPITHET_CHARACTERS} characters without spaces (this one ${letters.length}), if named since ${LENGTH_RULE_YEAR}`;
  if (SUPERLATIVES.test(bare)) return "a cultivar epithet must not praise the plant in superlatives";
  if (!/^[\p{Lu}\d'‘’]/u.test(bare)) return "a cultivar epithet begins with a capital";
  return null;
}
