// Whether a written word may be a misspelling of another, told strictly: two species differ by a few letters, too.
import { editDistance, latinFold } from "./spelling";

const LATIN_LIKE = /(?:us|a|um|is|ii|ae|ens|ans|or|ensis|iflorum)$/;

/** Could be a Latin adjective rather than a fancy name: 'Alba', 'Compacta'; such epithets recur in many species. */
export const isLatinLike = (word: string): boolean => LATIN_LIKE.test(word);

const sharedStart = (a: string, b: string): number => {
  let n = 0;
  while (n < a.length && n < b.length && a.charCodeAt(n) === b.charCodeAt(n)) n++;
  return n;
};

/** Edits that one typing hand may leave in a word of so many letters without making it another name. */
const editsOfHand = (letters: number): number => (letters < 5 ? 0 : letters < 8 ? 1 : 2);

/**
 * Likeness of a written epithet to a known one, 0–1: 1 the same, 0.95 another spelling of one Latin word, 0.85 or 0.75 misspelt, 0 another word.
 * Two edits near the end are another word (saccharum, saccharinum), and so is a flower for a leaf (grandiflora, grandifolia).
 * @param isKnown tells words that are names themselves
 */
export function epithetLikeness(written: string, known: string, isKnown: (word: string) => boolean): number {
  if (written === known) return 1;
  if (latinFold(written) === latinFold(known)) return 0.95;
  if (isKnown(written)) return 0;
  const most = editsOfHand(Math.min(written.length, known.length));
  const edits = editDistance(written, known, most);
  if (edits > most || edits === 0) return 0;
  if (/flor/.test(written) !== /flor/.test(known) && /fol(?!r)/.test(written) !== /fol(?!r)/.test(known)) return 0;
  if (written.charCodeAt(0) !== known.charCodeAt(0) && !(written[0] === known[1] && written[1] === known[0])) return 0;
  if (edits > 1 && sharedStart(written, known) >= 0.6 * Math.min(written.length, known.length)) return 0;
  return edits === 1 ? 0.85 : 0.75;
}

/** The same for a cultivar epithet or a common name of several words; each word must pass for itself. */
export function wordsLikeness(written: readonly string[], known: readonly string[], isKnown: (word: string) => boolean): number {
  const joined = written.join("");
  const whole = known.join("");
  if (joined === whole) return 1;
  if (/\d/.test(joined + whole) && joined.replace(/\D/g, "") !== whole.replace(/\D/g, "")) return 0;
  if (written.length !== known.length) {
    if (joined.length < 6 || isKnown(joined)) return 0;
    const edits = editDistance(joined, whole, 1);
    return edits === 1 && written.every((word) => !isKnown(word) || known.includes(word)) ? 0.75 : 0;
  }
  let worst = 1;
  for (const [i, word] of written.entries()) {
    const own = known[i] ?? "";
    if (word === own) continue;
    if (isKnown(word)) return 0;
    const most = editsOfHand(Math.min(word.length, own.length));
    const edits = editDistance(word, own, most);
    if (edits > most || word.charCodeAt(0) !== own.charCodeAt(0)) return 0;
    worst = Math.min(worst, edits === 1 ? 0.85 : 0.7);
  }
  return worst;
}
