import type { Metadata } from "next";
import Link from "next/link";
import { truckList, USUAL_TRUCKS } from "@/lib/server/trucks";
import { TruckList } from "./truck-list";
import "./trucks.css";

export const metadata: Metadata = { title: "Trucks" };
export const dynamic = "force-dynamic";

export default async function TrucksPage() {
  return (
    <main id="main" className="sheet">
      <p className="small screen-only">
        <Link href="/nursery">Nursery</Link>
      </p>
      <div className="sheet-head">
        <h1>Trucks</h1>
      </div>
      <p>
        In the order in which they are loaded. Payload is what may be put on: the registered gross weight less the truck itself, driver, fuel and tools. The plate on the door and
        the registration say it, and they go before any figure here.
      </p>
      <TruckList trucks={await truckList()} usual={USUAL_TRUCKS.map(({ name }) => name)} />
    </main>
  );
}
