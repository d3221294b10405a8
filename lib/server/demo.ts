// The demo: an invented firm's job, the entrance garden of a small clinic in Burlington, Vermont. Planted once, into an empty database,
// with three beds that each have a trouble of their own, so that a newcomer sees findings at once.
import type { Bed, BedRow } from "../ground/bed";
import { EMPTY_DRAWING } from "../ground/bed-drawing";
import { USUAL_CLEAR_FT } from "../ground/border";
import { STRAIGHT } from "../ground/curve";
import { layoutFromSeed } from "../ground/layout";
import { rangeMiddle } from "../ground/stratum";
import { rowLetter, rowQuantityOf } from "../papers/bed-view";
import { bedSetOut, layoutPlants, type SetOutRows, setOutAsk } from "../papers/set-out";
import { matchName } from "../plants/name-match";
import { bedCreate } from "./beds";
import { database } from "./database";
import { jobCreate } from "./jobs";
import { type TaxaHeld, taxaHeld } from "./taxa";

const MARK = "demo";

type DemoPlant = readonly [name: string, count: number, size: string, spacingFt?: number | null, more?: { remarks?: string; existing?: boolean; areaSqFt?: number }];
type DemoBed = Omit<Bed, "rows"> & { readonly plants: readonly DemoPlant[] };

const BEDS: readonly DemoBed[] = [
  {
    name: "Entrance bed",
    // Looked at from its front, the walk at the foot of the drawing: it swings out before the middle, where the serviceberry has its room from the wall.
    size: {
      by: "drawing",
      edges: [
        { from: [0, 4], shape: { kind: "cubic", control1: [9.35, 4], control2: [9.35, -3] }, border: { what: "walk" } },
        { from: [17, -3], shape: { kind: "cubic", control1: [24.65, -3], control2: [24.65, 4] }, border: { what: "walk" } },
        { from: [34, 4], shape: STRAIGHT, border: { what: "lawn" } },
        {
          from: [34, 10],
          shape: STRAIGHT,
          border: {
            what: "house wall",
            windows: [
              { fromFt: 2, toFt: 6, sillFt: 3 },
              { fromFt: 28, toFt: 32, sillFt: 3 },
            ],
          },
        },
        { from: [0, 10], shape: STRAIGHT, border: { what: "lawn" } },
      ],
    },
    drawing: {
      ...EMPTY_DRAWING,
      things: [
        {
          what: "buried line",
          path: [
            [28.5, 10],
            [30, 2],
          ],
          clearFt: USUAL_CLEAR_FT["buried line"],
        },
        { what: "spout", at: [33.4, 9.6], radiusFt: 0.3, clearFt: USUAL_CLEAR_FT.spout },
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
      ["Nepeta 'Walker's Low'", 7, "#1", 2.5],
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
  return bed.drawing ? demoSetOut({ ...bed, rows }, byId) : { ...bed, rows };
}

/** The best arrangement of the first eight seeds, looked at and found good; one is set out instead of eight, for a first start that does not wait. */
const SEED = 3;

/** The drawn bed with its plants set out, the same on every machine. */
function demoSetOut(bed: Bed, byId: TaxaHeld["byId"]): Bed {
  const view: SetOutRows = {
    rows: bed.rows.map((row, i) => {
      const taxon = byId.get(row.taxonId) ?? null;
      return {
        row,
        letter: rowLetter(i),
        quantity: rowQuantityOf(row, taxon, 0),
        spacingFt: row.spacingFt ?? (taxon ? rangeMiddle(taxon.spreadFt) : null),
        placed: taxon ? { taxon } : null,
      };
    }),
  };
  const standpoint = (bed.drawing ?? EMPTY_DRAWING).standpoint;
  const ask = setOutAsk(bed, view, standpoint, false);
  return bedSetOut(bed, view, layoutPlants(ask.kept, layoutFromSeed(ask.input, SEED)), standpoint);
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
