// Degree days at bloom of the Ohio phenology calendar: base 50 °F from 1 January, modified (50/86) method, Secrest Arboretum, Wooster.
// Source of the calendar: D. Herms and others, Ohio State University; each row names the page that gives the figure.

export type DegreeDaysAtBloom = { readonly names: readonly string[]; readonly event: "first bloom" | "full bloom"; readonly degreeDays: number; readonly page: string };

export const OHIO_DEGREE_DAYS: readonly DegreeDaysAtBloom[] = [
  { names: ["Acer saccharinum"], event: "first bloom", degreeDays: 34, page: "quoted by an arborist's weather page, 2017" },
  { names: ["Cornus mas"], event: "first bloom", degreeDays: 40, page: "bygl.osu.edu/node/1452" },
  { names: ["Acer saccharinum"], event: "full bloom", degreeDays: 42, page: "bygl.osu.edu/node/1452" },
  { names: ["Acer rubrum"], event: "first bloom", degreeDays: 44, page: "bygl.osu.edu/node/1452" },
  { names: ["Alnus incana", "Alnus incana subsp. rugosa", "Alnus rugosa"], event: "first bloom", degreeDays: 52, page: "u.osu.edu/sustainability 2018-02-26" },
  { names: ["Forsythia 'Northern Lights'", "Forsythia × intermedia 'Northern Lights'"], event: "first bloom", degreeDays: 58, page: "bygl.osu.edu/node/1452" },
  {
    names: ["Forsythia 'Northern Lights'", "Forsythia × intermedia 'Northern Lights'"],
    event: "full bloom",
    degreeDays: 94,
    page: "springfieldnewssun.com 2017-02-24, OSU Extension column",
  },
  { names: ["Magnolia stellata"], event: "first bloom", degreeDays: 83, page: "quoted by a garden page, 2021-04-08" },
  { names: ["Forsythia × intermedia"], event: "first bloom", degreeDays: 86, page: "bygl.osu.edu/node/1452" },
  { names: ["Pyrus calleryana 'Bradford'", "Pyrus calleryana"], event: "first bloom", degreeDays: 142, page: "springfieldnewssun.com 2017-02-24, OSU Extension column" },
  { names: ["Viburnum carlesii"], event: "first bloom", degreeDays: 185, page: "quoted by a tree-care page, 2014-05-05" },
  { names: ["Viburnum carlesii"], event: "full bloom", degreeDays: 205, page: "quoted by a tree-care page, 2014-05-05" },
  { names: ["Spiraea × arguta 'Compacta'", "Spiraea × arguta"], event: "full bloom", degreeDays: 205, page: "quoted by an arborist's weather page, 2017" },
  { names: ["Malus 'Spring Snow'"], event: "full bloom", degreeDays: 209, page: "quoted by an arborist's weather page, 2017" },
  { names: ["Halesia tetraptera", "Halesia carolina"], event: "first bloom", degreeDays: 213, page: "quoted by an arborist's weather page, 2017" },
  { names: ["Chaenomeles speciosa"], event: "full bloom", degreeDays: 214, page: "quoted by an arborist's weather page, 2017" },
  { names: ["Malus 'Coralcole'"], event: "first bloom", degreeDays: 217, page: "quoted by an arborist's weather page, 2017" },
  { names: ["Robinia pseudoacacia"], event: "full bloom", degreeDays: 548, page: "quoted by a tree-care page, 2014-04-21" },
];
