// How far two written words are apart.

/**
 * Edits between two words: letters dropped, added, changed, or two neighbors swapped (optimal string alignment distance;
 * Damerau 1964, Communications of the ACM 7:171).
 * @param most stop counting beyond it
 * @returns the edits, or most + 1 when there are more
 */
export function editDistance(a: string, b: string, most: number): number {
  if (a === b) return 0;
  if (Math.abs(a.length - b.length) > most) return most + 1;
  let start = 0;
  let ends = 0;
  const shorter = Math.min(a.length, b.length);
  while (start < shorter && a.charCodeAt(start) === b.charCodeAt(start)) start++;
  while (ends < shorter - start && a.charCodeAt(a.length - 1 - ends) === b.charCodeAt(b.length - 1 - ends)) ends++;
  const rows = a.length - start - ends;
  const columns = b.length - start - ends;
  if (rows === 0 || columns === 0) return Math.min(rows + columns, most + 1);
  let before: number[] = [];
  let last: number[] = [];
  for (let j = 0; j <= columns; j++) last.push(j);
  for (let i = 1; i <= rows; i++) {
    const row: number[] = [i];
    const letter = a.charCodeAt(start + i - 1);
    const previous = i > 1 ? a.charCodeAt(start + i - 2) : -1;
    let least = i;
    for (let j = 1; j <= columns; j++) {
      const other = b.charCodeAt(start + j - 1);
      let cost = (last[j - 1] ?? 0) + (letter === other ? 0 : 1);
      const added = Math.min(last[j] ?? 0, row[j - 1] ?? 0) + 1;
      if (added < cost) cost = added;
      if (j > 1 && previous === other && letter === b.charCodeAt(start + j - 2)) cost = Math.min(cost, (before[j - 2] ?? 0) + 1);
      row.push(cost);
      if (cost < least) least = cost;
    }
    if (least > most) return most + 1;
    before = last;
    last = row;
  }
  return Math.min(last[columns] ?? 0, most + 1);
}

/** Edits from `typed` to the nearest beginning of `word`, at most `most` (else most + 1): a misspelt word not yet finished. */
export function prefixDistance(typed: string, word: string, most: number): number {
  let least = most + 1;
  for (let length = typed.length - most; length <= typed.length + most; length++) {
    if (length < 2 || length > word.length) continue;
    const edits = editDistance(typed, word.slice(0, length), Math.min(most, least));
    if (edits < least) least = edits;
  }
  return least;
}

/** The set of letters in a word as bits; digits share one. */
export function letterSet(word: string): number {
  let set = 0;
  for (let i = 0; i < word.length; i++) {
    const code = word.charCodeAt(i) - 97;
    set |= 1 << (code >= 0 && code < 26 ? code : 26);
  }
  return set;
}

/** Letters that only one of two sets has. One edit changes at most two, so more than 2 n of them mean more than n edits. */
export function lettersApart(a: number, b: number): number {
  let bits = a ^ b;
  bits -= (bits >>> 1) & 0x55555555;
  bits = (bits & 0x33333333) + ((bits >>> 2) & 0x33333333);
  return (((bits + (bits >>> 4)) & 0x0f0f0f0f) * 0x01010101) >>> 24;
}

const LATIN_ENDINGS = /(?:iae|us|um|is|ae|ii|as|os|a|e|i)$/;

/**
 * A word without what writers of Latin differ in: the ending (gender: alatus, alata), doubled letters (sieboldii, pensylvanica),
 * ae/oe/e, y/i, ph/f, w/v. Words with one fold are spellings of one word.
 */
export function latinFold(word: string): string {
  const stem = word.length > 4 ? word.replace(LATIN_ENDINGS, "") : word;
  return stem
    .replace(/ae|oe/g, "e")
    .replace(/ph/g, "f")
    .replace(/y|j/g, "i")
    .replace(/w/g, "v")
    .replace(/(.)\1+/g, "$1");
}
