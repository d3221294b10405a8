"use client";

import Link from "next/link";
import { useState } from "react";
import { BotanicalText } from "@/app/parts/botanical-text";
import { usePlantList } from "../use-plant-list";
import { usePlantSearch } from "../use-plant-search";

const SHOWN = 12;

/** The first step: a plant like it, whose values fill the form. */
export function LikeChooser({ address, placeKey }: { address: string; placeKey: string }) {
  const [query, setQuery] = useState("");
  const { plants, failed, again } = usePlantList(address);
  const found = usePlantSearch(address, plants, query);
  const place = encodeURIComponent(placeKey);
  const hits = found?.plants.slice(0, SHOWN) ?? [];
  return (
    <div className="like-chooser">
      <p>Begin with a plant that is much like it: its size, zones, leaves and year fill the form, and you change what differs.</p>
      <label htmlFor="like-q">It is like …</label>
      <input
        id="like-q"
        type="search"
        autoComplete="off"
        spellCheck={false}
        placeholder="limelight hydrangea, Cornus ser. Cardinal, coneflower …"
        value={query}
        onChange={(event) => setQuery(event.target.value)}
      />
      {failed ? (
        <p className="notice alert">
          The list of plants did not come.{" "}
          <button type="button" onClick={again}>
            Try again
          </button>
        </p>
      ) : null}
      <ul className="card-list like-hits">
        {hits.map((plant) => (
          <li key={plant.id}>
            <Link href={`/plants/new?like=${plant.id}&place=${place}`} prefetch={false}>
              <BotanicalText taxon={plant} />
            </Link>{" "}
            <span className="common">{plant.commonNames[0]}</span>
          </li>
        ))}
      </ul>
      <p role="status" className="soft small">
        {found && hits.length === 0 ? `No plant is called “${query.trim()}” or nearly so.` : ""}
      </p>
      <p>
        <Link className="button" href={`/plants/new?like=none&place=${place}`}>
          It is like none: begin with an empty form
        </Link>
      </p>
    </div>
  );
}
