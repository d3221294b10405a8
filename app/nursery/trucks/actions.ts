"use server";
import { revalidatePath } from "next/cache";
import { z } from "zod";
import { type StoredTruck, type TruckAnswer, truckAdd, truckChange, truckMove, truckRemove, USUAL_TRUCKS } from "@/lib/server/trucks";

const idText = z.string().min(1).max(64);
const done = () => revalidatePath("/nursery/trucks");

/** Adds one of the usual trucks, to be corrected after the door plate. */
export async function truckUsualAction(which: number): Promise<TruckAnswer> {
  const answer = await truckAdd(USUAL_TRUCKS[z.int().parse(which)]);
  done();
  return answer;
}

/** Adds a truck, also one that was removed. */
export async function truckAddAction(input: unknown): Promise<TruckAnswer> {
  const answer = await truckAdd(input);
  done();
  return answer;
}

export async function truckChangeAction(id: string, change: unknown): Promise<TruckAnswer> {
  const answer = await truckChange(idText.parse(id), change);
  done();
  return answer;
}

export async function truckRemoveAction(id: string): Promise<StoredTruck | null> {
  const truck = await truckRemove(idText.parse(id));
  done();
  return truck;
}

export async function truckMoveAction(id: string, by: number): Promise<void> {
  await truckMove(idText.parse(id), z.union([z.literal(-1), z.literal(1)]).parse(by));
  done();
}
