// The demo: an invented firm's job, the entrance garden of a small clinic in Burlington, Vermont. Planted once, into an empty database,
// with three beds that each have a trouble of their own, so that a newcomer sees findings at once.
import type { Bed, BedRow } from "../ground/bed";
import { matchName } from "../plants/name-match";
import { bedCreate } from "./beds";
import { database } from "./database";
import { jobCreate } from "./jobs";
import { taxaHeld } from "./taxa";

const MARK = "demo";

type DemoPlant = readonly [name: string, count: number, size: string, spacingFt?: number | null, more?: { remarks?: string; existing?: boolean; areaSqFt?: number }];
type DemoBed = Omit<Bed, "rows"> & { readonly plants: readonly DemoPlant[] };

const BEDS: readonly DemoBed[] = [
  {
    name: "Entrance bed",
    size: {
      by: "outline",
      points: [
        [0, 0],
        [34, 0],
        [34, 6],
        [28, 10.5],
        [20, 11.5],
        [12, 9],
        [6, 9.5],
        [0, 7.5],
      ],
    },
    site: { light: "sun", moisture: "average", ph: 6.6, salt: "none", deer: "some", faces: "south" },
    notes: "Along the south wall, seen from the door, the street and the waiting room.",
    plants: [
      ["Amelanchier × grandiflora 'Autumn Brilliance'", 1, "8-10 ft clump", null, { remarks: "multi-stem, between the windows" }],
      ["Syringa meyeri 'Palibin'", 3, "#5", 4.5],
      ["Hydrangea paniculata 'Jane'", 3, "#3", 4],
      ["Paeonia 'Festiva Maxima'", 5, "#2", 3],
      ["Salvia nemorosa 'Caradonna'", 11, "#1", 1.5],
      ["Nepeta 'Walker's Low'", 7, "#1", 2.5, { remarks: "along the walk" }],
      ["Geranium 'Rozanne'", 9, "#1", 1.75],
      ["Rudbeckia fulgida 'Goldsturm'", 0, "#1", 1.5, { areaSqFt: 20 }],
      ["Symphyotrichum novae-angliae 'Purple Dome'", 5, "#1", 2],
    ],
  },
  {
    name: "Walk bed",
    size: { by: "rectangle", lengthFt: 26, widthFt: 6 },
    site: { light: "sun", moisture: "average", ph: null, salt: "heavy", deer: "some", faces: "west" },
    notes: "Beside the ramp; plowed snow lands here.",
    plants: [
      ["Juniperus chinensis 'Sea Green'", 5, "#3", 2.5],
      ["Cornus sericea 'Cardinal'", 6, "#3", 2.5],
      ["Physocarpus opulifolius 'Monlo'", 4, "#5", 3, { remarks: "dark leaf behind the bench" }],
      ["Spiraea japonica 'Goldflame'", 9, "#2", 2],
      ["Hemerocallis 'Happy Returns'", 21, "#1", 1.25],
    ],
  },
  {
    name: "North court",
    size: { by: "rectangle", lengthFt: 18, widthFt: 10 },
    site: { light: "part", moisture: "moist", ph: 6.2, salt: "none", deer: "none", faces: "north" },
    notes: "Walled on three sides; the old yew stays.",
    plants: [
      ["Taxus × media 'Hicksii'", 1, "6 ft", null, { existing: true, remarks: "by the gate" }],
      ["Cercis canadensis", 1, "2 in cal B&B"],
      ["Hydrangea macrophylla 'Bailmer'", 3, "#3", 4],
      ["Nandina domestica 'Gulf Stream'", 3, "#3", 3, { remarks: "asked for by the client" }],
      ["Astilbe 'Fanal'", 0, "#1", 1.5, { areaSqFt: 22 }],
      ["Hosta 'Halcyon'", 7, "#1", 2],
      ["Helleborus × hybridus", 5, "#1", 1.5],
      ["Tiarella cordifolia", 9, "qt", 1.25],
    ],
  },
];

async function demoBed(demo: DemoBed): Promise<Bed> {
  const { index, byId } = await taxaHeld();
  const { plants, ...bed } = demo;
  const rows = plants.flatMap(([name, count, size, spacingFt = null, more = {}], i): BedRow[] => {
    const match = matchName(index, name);
    const taxon = match ? byId.get(match.taxonId) : undefined;
    if (!taxon) throw new Error(`The demo's "${name}" is not in the dataset`);
    const quantity = more.areaSqFt ? ({ by: "area", areaSqFt: more.areaSqFt } as const) : ({ by: "count", count } as const);
    return [{ id: `demo${i}`, taxonId: taxon.id, taxonName: taxon.name, quantity, spacingFt, size, remarks: more.remarks ?? "", existing: more.existing ?? false }];
  });
  return { ...bed, rows };
}

/** Plants the demo unless it was planted before (also when it was removed since). @param say told when it is planted */
export async function demoPlant(say: (line: string) => void): Promise<void> {
  const db = database();
  if (await db.mark.findUnique({ where: { key: MARK } })) return;
  const beds = await Promise.all(BEDS.map(demoBed));
  await db.mark.create({ data: { key: MARK, value: "1" } });
  const job = await jobCreate("Clinic entrance garden", { zip: "05401", town: "Burlington" }, { client: "Lakeside clinic (demo)", demo: true });
  for (const bed of beds) await bedCreate(job, bed);
  say("demo: the clinic's entrance garden");
}
