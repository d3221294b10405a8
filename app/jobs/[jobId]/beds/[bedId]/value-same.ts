/** Whether two values that JSON can hold are the same, whatever the order of their fields; a field that is undefined is as good as absent. */
export function valueSame(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) return false;
  if (Array.isArray(a) || Array.isArray(b)) return Array.isArray(a) && Array.isArray(b) && a.length === b.length && a.every((value, i) => valueSame(value, b[i]));
  const [one, other] = [new Map<string, unknown>(Object.entries(a)), new Map<string, unknown>(Object.entries(b))];
  return [...new Set([...one.keys(), ...other.keys()])].every((key) => valueSame(one.get(key), other.get(key)));
}
