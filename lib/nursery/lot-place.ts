// A place of the firm's fields and yard, written and read.

/** Block, row and bay as painted on the posts; "" where the nursery has none. */
export type PlaceName = { readonly block: string; readonly row: string; readonly bay: string };

export const NO_PLACE: PlaceName = { block: "", row: "", bay: "" };

/** A bare number or letter on a post: it needs the word for what it is the number of. */
const BARE = /^(?:\d+[a-z]?|[a-z]\d*)$/i;
const labelled = (kind: string, name: string): string => (BARE.test(name) ? `${kind} ${name}` : name);

/** The place in words: "North field, row 4, bay 2", "Block A, row 3"; "" where nothing is said. */
export function placeText({ block, row, bay }: PlaceName): string {
  const text = [block && labelled("block", block), row && labelled("row", row), bay && labelled("bay", bay)].filter(Boolean).join(", ");
  return text.charAt(0).toUpperCase() + text.slice(1);
}

const PARTS = ["block", "row", "bay"] as const;

/**
 * A place as a person types it: "North field, row 4, bay 2", "north field / 4 / 2", "yard bay 3". Parts without a word for what they are count
 * as block, row and bay in that order. Never throws; a text that names no part is the block.
 */
export function placeRead(text: string): PlaceName {
  const plain = text.trim().replace(/\s+/g, " ");
  // Without separators the words "row" and "bay" part the text.
  const pieces = /[,;/·]/.test(plain) ? plain.split(/[,;/·]/) : plain.split(/(?= (?:row|bay) \S+)/i);
  const place = { block: "", row: "", bay: "" };
  const bare: string[] = [];
  for (const piece of pieces.map((p) => p.trim()).filter(Boolean)) {
    const [, kind, name] = /^(block|row|bay)\s+(\S.*)$/i.exec(piece) ?? [];
    const part = PARTS.find((p) => p === kind?.toLowerCase());
    if (part && name && place[part] === "") place[part] = name;
    else bare.push(piece);
  }
  const last = PARTS.findLast((part) => place[part] === "") ?? "bay";
  for (const piece of bare) {
    const part = PARTS.find((p) => place[p] === "") ?? last;
    place[part] = [place[part], piece].filter(Boolean).join(" ");
  }
  return place;
}

/** Whether two texts name the same place: capitals and spaces do not count. */
export function placeSame(a: PlaceName, b: PlaceName): boolean {
  return placeText(a).toLowerCase() === placeText(b).toLowerCase();
}
