// All the names a plant goes by, in the words of lists and people.

/** What search needs of a taxon; a Taxon satisfies it, and so does a light row for the browser. */
export type PlantDoc = {
  readonly id: string;
  readonly name: string;
  readonly genus: string;
  readonly botanical: string;
  readonly cultivar: string | null;
  readonly tradeDesignation: string | null;
  readonly synonyms: readonly string[];
  readonly commonNames: readonly string[];
};

export type NameKind = "botanical" | "trade" | "former" | "common";
/** A name, and the runs of it within which two words may be written as one. */
export type PlantName = { readonly text: string; readonly kind: NameKind; readonly runs: readonly string[] };

/** A botanical name in runs: the genus, its epithets, and what stands in quotes. */
function botanicalRuns(text: string): string[] {
  const quote = text.search(/['‘"]/);
  const botanical = quote < 0 ? text : text.slice(0, quote);
  const space = botanical.indexOf(" ");
  const runs = space < 0 ? [botanical] : [botanical.slice(0, space), botanical.slice(space + 1)];
  return quote < 0 ? runs : [...runs, text.slice(quote)];
}

/**
 * Every name of a plant, accepted name first: botanical, trade designation with the botanical part and with the cultivar, former names (with the cultivar
 * and with the trade designation), common names, and the cultivar or trade designation with a common name, in full and by its
 * last word alone ("Limelight panicle hydrangea", "Limelight hydrangea").
 */
export function plantNames(plant: PlantDoc): PlantName[] {
  const { botanical, cultivar, tradeDesignation: trade } = plant;
  const names: PlantName[] = [];
  if (cultivar || !trade) names.push({ text: plant.name, kind: "botanical", runs: botanicalRuns(plant.name) });
  if (trade) names.push({ text: `${botanical} ${trade}`, kind: "trade", runs: [...botanicalRuns(botanical), trade] });
  if (trade && cultivar) names.push({ text: `${plant.name} ${trade}`, kind: "trade", runs: [...botanicalRuns(plant.name), trade] });
  for (const synonym of plant.synonyms) {
    const runs = botanicalRuns(synonym);
    names.push({ text: synonym, kind: "former", runs });
    if (trade && !synonym.toLowerCase().includes(trade.toLowerCase())) {
      const species = synonym.replace(/ ['‘"].*$/, "");
      names.push({ text: `${species} ${trade}`, kind: "former", runs: [...botanicalRuns(species), trade] });
    }
  }
  for (const common of plant.commonNames) {
    names.push({ text: common, kind: "common", runs: [common] });
    const noun = common.slice(common.lastIndexOf(" ") + 1);
    for (const called of noun === common ? [common] : [common, noun]) {
      if (cultivar) names.push({ text: `${cultivar} ${called}`, kind: "common", runs: [cultivar, called] });
      if (trade) names.push({ text: `${trade} ${called}`, kind: "trade", runs: [trade, called] });
    }
  }
  return names;
}
