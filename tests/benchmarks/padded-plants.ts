// Further names to bring an index up to a size, so that a benchmark of few plants is fair.
import { nameWords } from "../../lib/plants/name-parse";
import type { PlantDoc } from "../../lib/plants/plant-names";
import { drawn, seededRandom } from "./seeded";

/** Further names to fill an index up to `size`: real genera with epithets and cultivar words of other plants. They are no plants. */
export function paddedPlants(plants: readonly PlantDoc[], size: number, seed: number): PlantDoc[] {
  const random = seededRandom(seed);
  const species = [...new Set(plants.map((plant) => nameWords(plant.botanical)[1]).filter((word) => word !== undefined))];
  const fancy = [...new Set(plants.flatMap((plant) => [plant.cultivar, plant.tradeDesignation].flatMap((text) => (text ? text.split(/[ -]/) : []))))].filter(
    (word) => word.length > 2,
  );
  const taken = new Set(plants.flatMap((plant) => [plant.botanical, `${plant.genus} ${plant.cultivar}`, `${plant.genus} ${plant.tradeDesignation}`]));
  const out = [...plants];
  while (out.length < size) {
    const model = drawn(plants, random);
    const botanical = random() < 0.5 ? model.botanical : `${model.genus} ${drawn(species, random)}`;
    const cultivar = random() < 0.6 ? (random() < 0.4 ? drawn(fancy, random) : `${drawn(fancy, random)} ${drawn(fancy, random)}`) : null;
    const key = cultivar ? `${model.genus} ${cultivar}` : botanical;
    if (taken.has(key)) continue;
    taken.add(key);
    const name = cultivar ? `${botanical} '${cultivar}'` : botanical;
    const noun = drawn(model.commonNames, random).split(" ").at(-1) ?? "";
    out.push({
      id: `padding-${out.length}`,
      name,
      genus: model.genus,
      botanical,
      cultivar,
      tradeDesignation: null,
      synonyms: [],
      commonNames: [`${drawn(fancy, random).toLowerCase()} ${noun}`],
    });
  }
  return out;
}
