// Rules on cultivar names and trade designations, transcribed from published summaries; and names of old books with their names of today.

export const NAMING_SOURCES = {
  ishs: "International Society for Horticultural Science, How to name a new cultivar",
  rhs: "Royal Horticultural Society, plant naming summary of ICNCP, 9th edition",
  icncp: "International Code of Nomenclature for Cultivated Plants, 8th edition 2009, Art. 13 and Principle 6",
  penn: "Arboretum at Penn State, Writing Plant Names, 2020",
} as const;

/** Epithets with the verdict of the rules: the source of the rule, and a word that the fault must contain (null: established form). */
export const EPITHETS: readonly (readonly [epithet: string, source: keyof typeof NAMING_SOURCES, fault: string | null])[] = [
  ["Limelight", "ishs", null],
  ["Andenken an Ludwig Späth", "icncp", null],
  ["Korlanum", "icncp", null],
  ["Peachie's Pick", "ishs", null],
  ["SMNHPPH", "rhs", null],
  ['"Limelight"', "ishs", "never double"],
  ["Lime “light”", "ishs", "never double"],
  ["'Limelight'", "ishs", "without its quotes"],
  ["A", "rhs", "single letter"],
  ["66", "rhs", "numerals"],
  ["Abcdefghij Abcdefghij Abcdefghij", "rhs", null],
  ["Abcdefghij Abcdefghij Abcdefghijk", "rhs", "at most 30"],
  ["Best of Show", "rhs", "superlatives"],
  ["Little Lime®", "icncp", "trade designation"],
];

/** Trade designations: set apart from the epithet and without quotes. */
export const TRADE_EXAMPLES = [
  { botanical: "Rosa", cultivar: "Korlanum", tradeDesignation: "Surrey", text: "Rosa 'Korlanum' SURREY" },
  { botanical: "Rosa", cultivar: "Korbin", tradeDesignation: "Iceberg", text: "Rosa 'Korbin' ICEBERG" },
  { botanical: "Syringa vulgaris", cultivar: "Andenken an Ludwig Späth", tradeDesignation: "Ludwig Spaeth", text: "Syringa vulgaris 'Andenken an Ludwig Späth' LUDWIG SPAETH" },
] as const;

/**
 * Names as printed in planting books of 1897 and 1910 with the names of today. The pairs are from memory, unverified; a pair is
 * checked where the dataset has the plant.
 */
export const OLD_NAMES: readonly (readonly [printed: string, today: string])[] = [
  ["Berberis Aquifolium", "Mahonia aquifolium"],
  ["Berberis Bealei", "Mahonia bealei"],
  ["Magnolia Umbrella", "Magnolia tripetala"],
  ["Stuartia Pseudo-Camellia", "Stewartia pseudocamellia"],
  ["Leucothoe Catesbaei", "Leucothoe fontanesiana"],
  ["Sophora japonica", "Styphnolobium japonicum"],
  ["Cornus stolonifera", "Cornus sericea"],
  ["Alyssum saxatile", "Aurinia saxatilis"],
  ["Arabis albida", "Arabis caucasica"],
  ["Dicentra spectabilis", "Lamprocapnos spectabilis"],
  ["Asperula odorata", "Galium odoratum"],
  ["Dictamnus Fraxinella", "Dictamnus albus"],
  ["Pentstemon barbatus", "Penstemon barbatus"],
  ["Althaea rosea", "Alcea rosea"],
  ["Anthemis tinctoria", "Cota tinctoria"],
  ["Platycodon grandiflorum", "Platycodon grandiflorus"],
  ["Platycodon Mariesi", "Platycodon grandiflorus 'Mariesii'"],
  ["Lychnis Chalcedonica", "Silene chalcedonica"],
  ["Aster Novae-Anglae var. roseus", "Symphyotrichum novae-angliae"],
  ["Hemerocallis flava", "Hemerocallis lilioasphodelus"],
  ["OEnothera Missouriensis", "Oenothera macrocarpa"],
  ["Polemonium coeruleum", "Polemonium caeruleum"],
  ["Scabiosa Caucascia", "Scabiosa caucasica"],
  ["Anemone patens", "Pulsatilla patens"],
  ["Robinia Pseud-Acacia", "Robinia pseudoacacia"],
];
