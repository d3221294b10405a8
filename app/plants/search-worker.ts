// Holds the search index beside the page, so that building it (half a second) and searching never keep a key waiting.
import { type ListedPlant, type PlantListFile, plantListDecode } from "@/lib/plants/plant-list";
import { type PlantIndex, plantIndex, searchPlants } from "@/lib/plants/search";

export type SearchAsk = { readonly type: "list"; readonly address: string } | { readonly type: "find"; readonly query: string };
/** `places`: of the plants found, best first, in the list; `former`: the former name that matched, "" for none. */
export type SearchAnswer = { readonly type: "ready" } | { readonly type: "found"; readonly query: string; readonly places: readonly number[]; readonly former: readonly string[] };

/** A whole large genus, and then some. */
const LIMIT = 400;

let index: PlantIndex<ListedPlant> | null = null;
let places = new Map<string, number>();
let waiting: string | null = null;

const say = (answer: SearchAnswer) => self.postMessage(answer);

function find(query: string): void {
  if (!index) {
    waiting = query;
    return;
  }
  const hits = searchPlants(index, query, LIMIT);
  say({ type: "found", query, places: hits.map((h) => places.get(h.taxon.id) ?? 0), former: hits.map((h) => (h.matched === "former" ? h.matchedName : "")) });
}

async function load(address: string): Promise<void> {
  const plants = plantListDecode((await (await fetch(address)).json()) as PlantListFile);
  places = new Map(plants.map((p, i) => [p.id, i]));
  index = plantIndex(plants);
  say({ type: "ready" });
  if (waiting !== null) find(waiting);
}

self.onmessage = (event: MessageEvent<SearchAsk>) => {
  if (event.data.type === "find") find(event.data.query);
  else void load(event.data.address);
};
