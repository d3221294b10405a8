/** Whitespace, then one token of JSON (RFC 8259): a bracket, comma or colon, a string, a number or a word. */
const TOKEN = /[ \t\r\n]*(?:([[\]{},:])|("(?:[^"\\\r\n\t]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*")|(-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null))/y;

type Awaited = "value" | "value or end" | "key" | "key or end" | "colon" | "comma or end" | "nothing";

/** What is awaited after a token, or null where the token is out of place. Keeps the stack of open brackets. */
function awaitedAfter(awaited: Awaited, sign: string, isString: boolean, open: string[]): Awaited | null {
  const closed = (): Awaited | null => (open.pop() === (sign === "]" ? "[" : "{") ? (open.length === 0 ? "nothing" : "comma or end") : null);
  if (awaited === "nothing") return null;
  if (awaited === "colon") return sign === ":" ? "value" : null;
  if (awaited === "comma or end") return sign === "," ? (open.at(-1) === "[" ? "value" : "key") : sign === "]" || sign === "}" ? closed() : null;
  if (awaited === "key" || awaited === "key or end") return isString ? "colon" : sign === "}" && awaited === "key or end" ? closed() : null;
  if (sign === "[" || sign === "{") {
    open.push(sign);
    return sign === "[" ? "value or end" : "key or end";
  }
  if (sign === "]" && awaited === "value or end") return closed();
  return sign === "" ? (open.length === 0 ? "nothing" : "comma or end") : null;
}

/** Where a text stops being JSON: the index of the first sign that is out of place, the text's length where it is cut off. For texts that JSON.parse refuses. */
export function jsonFaultIndex(text: string): number {
  const open: string[] = [];
  let awaited: Awaited = "value";
  let at = 0;
  while (at < text.length) {
    TOKEN.lastIndex = at;
    const match = TOKEN.exec(text);
    const blank = /[ \t\r\n]*/y;
    blank.lastIndex = at;
    const start = at + (blank.exec(text)?.[0].length ?? 0);
    if (!match) return start;
    const next = awaitedAfter(awaited, match[1] ?? "", match[2] !== undefined, open);
    if (next === null) return start;
    awaited = next;
    at += match[0].length;
  }
  return text.length;
}
