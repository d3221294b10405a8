import { randomUUID } from "node:crypto";

/** A new id for a row of the database: 16 hexadecimal digits. */
export function newId(): string {
  return randomUUID().replaceAll("-", "").slice(0, 16);
}
