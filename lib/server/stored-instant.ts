/** An instant as the database client stores it, for statements written by hand. */
export function instantStored(at: Date): string {
  return at.toISOString().replace("Z", "+00:00");
}
