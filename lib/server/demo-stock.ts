// The demo's stock: the invented firm's own lots in two fields and a yard, planted once and only where there are no lots yet. They fit the demo's job
// so that selling it shows something: some plants are too few, one lot is not ready before spring, one has no price, two plants must be bought.
import { matchName } from "../plants/name-match";
import { database } from "./database";
import { lotAdd } from "./lots";
import { taxaHeld } from "./taxa";
import { today } from "./today";

const MARK = "demo stock";

/** Counted so many days ago; null: not counted yet. */
type DemoLot = readonly [name: string, size: string, place: string, quantity: number, priceCents: number | null, costCents: number | null, more?: DemoMore];
type DemoMore = { readonly grade?: string; readonly remarks?: string; readonly fromSpring?: boolean; readonly countedDaysAgo?: number | null };

const LOTS: readonly DemoLot[] = [
  ["Amelanchier × grandiflora 'Autumn Brilliance'", "8-10 ft clump", "North field, row 1", 14, 28_500, 11_000, { grade: "3 stems and more", countedDaysAgo: 12 }],
  ["Acer rubrum 'October Glory'", "2-2.5 in cal", "North field, row 2", 22, 33_000, 12_500, { remarks: "spring dig only", countedDaysAgo: 12 }],
  ["Cercis canadensis", "2 in cal", "North field, row 3", 9, 29_500, 12_000, { remarks: "spring dig only", countedDaysAgo: 12 }],
  ["Amelanchier × grandiflora 'Autumn Brilliance'", "6-7 ft clump", "North field, row 3", 11, 21_000, 8_500, { countedDaysAgo: 190 }],
  ["Thuja occidentalis 'Smaragd'", "5-6 ft", "South field, row 1", 64, 11_500, 4_200, { countedDaysAgo: 190 }],
  ["Taxus × media 'Hicksii'", "30-36 in", "South field, row 2", 26, 8_900, 3_600, { remarks: "under deer fence", countedDaysAgo: null }],
  ["Hydrangea paniculata 'Jane'", "#3", "Yard, bay 1", 12, 4_200, 1_750, {}],
  ["Hydrangea paniculata 'Limelight'", "#3", "Yard, bay 1", 18, 4_200, 1_750, {}],
  ["Hydrangea macrophylla 'Bailmer'", "#3", "Yard, bay 1", 7, 4_450, 1_900, {}],
  ["Juniperus chinensis 'Sea Green'", "#3", "Yard, bay 1", 20, 3_600, 1_400, { countedDaysAgo: 40 }],
  ["Cornus sericea 'Cardinal'", "#3", "Yard, bay 1", 4, 3_800, 1_500, { remarks: "four left of the spring's" }],
  ["Cornus sericea 'Cardinal'", "#5", "Yard, bay 2", 6, 5_600, 2_300, {}],
  ["Syringa meyeri 'Palibin'", "#5", "Yard, bay 2", 8, 6_400, 2_700, {}],
  ["Physocarpus opulifolius 'Monlo'", "#5", "Yard, bay 2", 5, null, 2_300, { remarks: "ask for the new price", countedDaysAgo: 40 }],
  ["Paeonia 'Festiva Maxima'", "#2", "Yard, bay 3", 9, 3_100, 1_300, {}],
  ["Salvia nemorosa 'Caradonna'", "#1", "Yard, bay 3", 8, 1_450, 520, {}],
  ["Nepeta 'Walker's Low'", "#1", "Yard, bay 3", 30, 1_350, 480, {}],
  ["Geranium 'Rozanne'", "#1", "Yard, bay 3", 36, 1_650, 640, { fromSpring: true, remarks: "potted this fall" }],
  ["Rudbeckia fulgida 'Goldsturm'", "#1", "Yard, bay 3", 40, 1_250, 450, { countedDaysAgo: 40 }],
  ["Symphyotrichum novae-angliae 'Purple Dome'", "#1", "Yard, bay 3", 16, 1_350, 480, {}],
  ["Hemerocallis 'Happy Returns'", "#1", "Yard, bay 3", 50, 1_300, 470, { countedDaysAgo: 40 }],
  ["Astilbe 'Fanal'", "#1", "Yard, bay 4", 12, 1_450, 520, {}],
  ["Hosta 'Halcyon'", "#1", "Yard, bay 4", 22, 1_450, 520, {}],
  ["Helleborus × hybridus", "#1", "Yard, bay 4", 14, 1_950, 800, { countedDaysAgo: null }],
  ["Tiarella cordifolia", "qt", "Yard, bay 4", 32, 850, 300, {}],
  ["Cercis canadensis", "2 in cal B&B", "Yard, heel-in bed", 2, 38_500, 16_500, { remarks: "dug last spring, keep watered" }],
];

/** 20 April that comes next. @param iso today */
function springDay(iso: string): string {
  const year = Number(iso.slice(0, 4));
  return `${iso.slice(5) < "04-20" ? year : year + 1}-04-20`;
}

/** Plants the demo's stock unless it was planted before (also when it was removed since) or there are lots already. @param say told when it is planted */
export async function demoStockPlant(say: (line: string) => void): Promise<void> {
  const db = database();
  if (await db.mark.findUnique({ where: { key: MARK } })) return;
  await db.mark.create({ data: { key: MARK, value: "1" } });
  if (await db.lot.count()) return;
  const { index, byId } = await taxaHeld();
  for (const [name, size, place, quantity, priceCents, costCents, more = {}] of LOTS) {
    const { fromSpring = false, countedDaysAgo = 3, ...words } = more;
    const taxon = byId.get(matchName(index, name)?.taxonId ?? "");
    if (!taxon) throw new Error(`The demo's "${name}" is not in the dataset`);
    const readyFrom = fromSpring ? springDay(today().iso) : null;
    const answer = await lotAdd(taxon.id, { size, place, quantity, priceCents, costCents, readyFrom, ...words }, { who: "", why: "demo" });
    if (answer.kind !== "saved") throw new Error(`The demo's lot of "${name}" cannot be added`);
    const countedAt = countedDaysAgo === null ? null : new Date(Date.now() - countedDaysAgo * 86_400_000);
    await db.lot.update({ where: { id: answer.lot.id }, data: { countedAt } });
  }
  say(`demo: the firm's stock, ${LOTS.length} lots`);
}
