import type { Metadata } from "next";
import Link from "next/link";
import { placeList } from "@/lib/server/stock-places";
import { placeAddAction } from "./actions";
import { PlaceForm } from "./place-form";
import { PlaceWalk } from "./place-walk";
import "../nursery.css";

export const metadata: Metadata = { title: "Places" };
export const dynamic = "force-dynamic";

export default async function PlacesPage() {
  const places = await placeList();
  return (
    <main id="main" className="sheet nursery">
      <p className="small screen-only">
        <Link href="/nursery">Nursery</Link>
      </p>
      <div className="sheet-head">
        <h1>Places</h1>
      </div>
      <p>
        {places.length
          ? "Your fields and yard in the order in which they are walked. Counts and pull lists follow it."
          : "No places yet. Add the first row or bay you come to when you walk your nursery; lots, counts and pull lists then follow the walk."}
      </p>
      <PlaceWalk places={places} />
      <section aria-label="Add a place" className="screen-only">
        <h2>Add a place</h2>
        <PlaceForm label="Add" send={placeAddAction} />
      </section>
    </main>
  );
}
