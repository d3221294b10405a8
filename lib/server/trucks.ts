// The firm's trucks.
import { z } from "zod";
import type { Truck } from "../pulls/loads";
import { database } from "./database";
import type { Truck as TruckRecord } from "./generated/client";
import { newId } from "./identity";

export type StoredTruck = Truck & { readonly id: string };
export type TruckAnswer = { readonly kind: "saved"; readonly truck: StoredTruck } | { readonly kind: "fault"; readonly field: string; readonly message: string };

const feet = (max: number) => z.number("A number of feet.").min(1, "At least 1 ft.").max(max, `At most ${max} ft.`);

/** What a truck is. Limits are those of slips of the keyboard. */
export const truckInput = z.object({
  name: z.string().trim().min(1, "A truck needs a name.").max(60, "At most 60 characters."),
  payloadLb: z.number("A number of pounds.").min(100, "At least 100 lb.").max(60_000, "At most 60,000 lb."),
  deckLengthFt: feet(60),
  deckWidthFt: feet(12),
  clearFt: feet(14).nullable(),
});
export type TruckInput = z.infer<typeof truckInput>;

/** Two trucks that a small firm has (invented; payloads after common practice, no source: the door plate of the truck goes before). */
export const USUAL_TRUCKS: readonly TruckInput[] = [
  { name: "One-ton stake body", payloadLb: 5000, deckLengthFt: 12, deckWidthFt: 7.5, clearFt: null },
  { name: "Pickup with trailer", payloadLb: 7000, deckLengthFt: 16, deckWidthFt: 6.75, clearFt: null },
];

const storedTruck = ({ id, name, payloadLb, deckLengthFt, deckWidthFt, clearFt }: TruckRecord): StoredTruck => ({ id, name, payloadLb, deckLengthFt, deckWidthFt, clearFt });

/** Trucks in the order in which they are loaded. */
export async function truckList(): Promise<StoredTruck[]> {
  return (await database().truck.findMany({ orderBy: [{ position: "asc" }, { id: "asc" }] })).map(storedTruck);
}

function faultOf(error: z.ZodError): TruckAnswer {
  const issue = error.issues[0];
  return { kind: "fault", field: String(issue?.path[0] ?? ""), message: issue?.message ?? "Cannot be read." };
}

/** Adds a truck after the others. */
export async function truckAdd(input: unknown): Promise<TruckAnswer> {
  const parsed = truckInput.safeParse(input);
  if (!parsed.success) return faultOf(parsed.error);
  return database().$transaction(async (tx): Promise<TruckAnswer> => {
    const last = await tx.truck.aggregate({ _max: { position: true } });
    return { kind: "saved", truck: storedTruck(await tx.truck.create({ data: { id: newId(), ...parsed.data, position: (last._max.position ?? 0) + 1 } })) };
  });
}

/** Changes some of a truck's figures. */
export async function truckChange(id: string, change: unknown): Promise<TruckAnswer> {
  const parsed = truckInput.partial().safeParse(change);
  if (!parsed.success) return faultOf(parsed.error);
  // Fields that are absent stay as they are; exact optional types leave no undefined in.
  const data = Object.fromEntries(Object.entries(parsed.data).filter(([, value]) => value !== undefined));
  const changed = await database().truck.updateMany({ where: { id }, data });
  const record = changed.count ? await database().truck.findUnique({ where: { id } }) : null;
  return record ? { kind: "saved", truck: storedTruck(record) } : { kind: "fault", field: "", message: "This truck was removed in another window." };
}

/** Removes a truck. @returns what it was, to bring it back; null when it was gone */
export async function truckRemove(id: string): Promise<StoredTruck | null> {
  const record = await database().truck.findUnique({ where: { id } });
  if (!record) return null;
  await database().truck.deleteMany({ where: { id } });
  return storedTruck(record);
}

/** Moves a truck one earlier or later in the order of loading. */
export async function truckMove(id: string, by: -1 | 1): Promise<void> {
  await database().$transaction(async (tx) => {
    const all = await tx.truck.findMany({ orderBy: [{ position: "asc" }, { id: "asc" }], select: { id: true } });
    const from = all.findIndex((truck) => truck.id === id);
    const moved = all[from];
    if (!moved || from + by < 0 || from + by >= all.length) return;
    all.splice(from, 1);
    all.splice(from + by, 0, moved);
    for (const [position, truck] of all.entries()) await tx.truck.update({ where: { id: truck.id }, data: { position } });
  });
}
