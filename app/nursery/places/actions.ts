"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import { type PlaceAnswer, placeAdd, placeDelete, placeRename, placesOrder } from "@/lib/server/stock-places";

const id = z.string().min(1).max(200);
/** Places stand on the nursery's pages and on pull lists. */
const everywhere = () => revalidatePath("/", "layout");

function told(answer: PlaceAnswer): PlaceAnswer {
  if (answer.kind === "saved") everywhere();
  return answer;
}

export async function placeAddAction(name: unknown): Promise<PlaceAnswer> {
  return told(await placeAdd(name));
}

export async function placeRenameAction(placeId: string, name: unknown): Promise<PlaceAnswer> {
  return told(await placeRename(id.parse(placeId), name));
}

export async function placeDeleteAction(placeId: string): Promise<PlaceAnswer> {
  return told(await placeDelete(id.parse(placeId)));
}

export async function placesOrderAction(ids: readonly string[]): Promise<void> {
  await placesOrder(z.array(id).max(5000).parse(ids));
  everywhere();
}
