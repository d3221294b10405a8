"use server";
// Who sits at this screen. There is no login: a person's name, kept in a cookie, goes into the history of what was done.
import { cookies } from "next/headers";
import { z } from "zod";

const COOKIE = "who";
const NAME_MAX = 60;
const YEAR_S = 365 * 24 * 60 * 60;

const nameOf = (text: string): string => text.trim().replace(/\s+/g, " ").slice(0, NAME_MAX);

/** The name that was given at this screen; "" where none was. */
export async function whoNow(): Promise<string> {
  return nameOf((await cookies()).get(COOKIE)?.value ?? "");
}

/** Remembers the name for a year; "" forgets it. @returns the name as kept */
export async function whoSetAction(name: string): Promise<string> {
  const kept = nameOf(z.string().max(1000).parse(name));
  const jar = await cookies();
  if (kept) jar.set(COOKIE, kept, { maxAge: YEAR_S, sameSite: "lax", path: "/" });
  else jar.delete(COOKIE);
  return kept;
}
