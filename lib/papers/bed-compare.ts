// One bed at two places: how each plant's year moves, and in words why the same list fails there.
import type { Bed } from "../ground/bed";
import { HALF_MONTHS, halfMonthRuns } from "../season/half-months";
import { dayIsGrowing, plantInterest, type Targets } from "../season/interest";
import { dayText } from "../season/sentence";
import { spansYear } from "../season/spans-year";
import type { SeasonWindow } from "../season/window";
import { type BedView, type BedViewRow, bedView, type PlacedTaxon, type ViewPlace } from "./bed-view";

/** One of the two places with the bed's view there. `label` as in "here, at Burlington, VT 05401". */
export type ComparedSide = {
  readonly label: string;
  readonly place: ViewPlace;
  readonly view: BedView;
  /** The year's score there of what is hardy, 0–1; that of the whole bed where nothing is lost. */
  readonly hardyScore: number;
};

const tenderRows = (view: BedView): ReadonlySet<string> => new Set(view.findings.flatMap((f) => (f.check === "hardiness" && f.severity === "fix" && f.rowId ? [f.rowId] : [])));

/** A bed at one of the places. @param placed taxa of the bed by id, with their year at the place */
export function comparedSide(label: string, bed: Bed, placed: Readonly<Record<string, PlacedTaxon>>, place: ViewPlace, targets: Targets): ComparedSide {
  const view = bedView(bed, placed, place, targets);
  const lost = tenderRows(view);
  const hardy = lost.size ? bedView({ ...bed, rows: bed.rows.filter((row) => !lost.has(row.id)) }, placed, place, targets) : view;
  return { label, place, view, hardyScore: hardy.season.score };
}

export type ComparedRow = { readonly here: BedViewRow; readonly there: BedViewRow /** "bloom 12 days later, fall color 6 days earlier". */; readonly shiftWords: string };

export type BedComparison = {
  readonly rows: readonly ComparedRow[];
  /** The reasons, the gravest first; one sentence each. */
  readonly words: readonly string[];
};

const DAYS = 365;
const MIDSUMMER_DAY = 172;
/** Days from `b` to `a` the short way round the year. */
const apart = (a: number, b: number): number => ((((a - b + DAYS / 2) % DAYS) + DAYS) % DAYS) - DAYS / 2;
const count = (n: number, noun: string): string => `${n} ${noun}${n === 1 ? "" : "s"}`;
const shiftText = (days: number): string => (days === 0 ? "the same day" : `${count(Math.abs(days), "day")} ${days > 0 ? "later" : "earlier"}`);
const listText = (items: readonly string[]): string => (items.length < 2 ? items.join("") : `${items.slice(0, -1).join(", ")} and ${items.at(-1)}`);
const nameOf = (row: BedViewRow): string => row.placed?.taxon.name ?? row.row.taxonName;
const percent = (share: number): string => `${Math.round(share * 100)} %`;

/** What is told of a plant's shift: when each dated feature of these kinds begins. */
const TOLD = ["bloom", "fall color"] as const;

type Pair = { readonly here: SeasonWindow; readonly there: SeasonWindow };

/** The windows of a plant at both places, feature by feature; those of the whole year have no date. */
function windowPairs({ here, there }: Pick<ComparedRow, "here" | "there">): Pair[] {
  const [a, b] = [here.placed?.season.windows ?? [], there.placed?.season.windows ?? []];
  return a.flatMap((w, i) => {
    const other = b[i];
    return other && !spansYear(w) && w.drive !== "always" ? [{ here: w, there: other }] : [];
  });
}

function shiftWords(row: Pick<ComparedRow, "here" | "there">): string {
  const pairs = windowPairs(row);
  const told = TOLD.flatMap((kind) => {
    const pair = pairs.find((p) => p.here.kind === kind);
    return pair ? [`${kind} ${shiftText(Math.round(apart(pair.there.startDay, pair.here.startDay)))}`] : [];
  });
  return told.join(", ");
}

/** Plants with a hardiness finding at one place and not at the other: too tender ("fix"), or suffering from heat ("consider"). */
function illFitted(severity: "fix" | "consider", at: ComparedSide, not: ComparedSide): BedViewRow[] {
  const found = (side: ComparedSide) => new Set(side.view.findings.flatMap((f) => (f.check === "hardiness" && f.severity === severity && f.rowId ? [f.rowId] : [])));
  const [there, here] = [found(at), found(not)];
  return at.view.rows.filter((r) => there.has(r.row.id) && !here.has(r.row.id));
}

const lettered = (rows: readonly BedViewRow[]): string => listText(rows.map((r) => `${r.letter} ${nameOf(r)}`));

function hardinessWords(here: ComparedSide, there: ComparedSide): string[] {
  if (there.place.zone === null) return there.view.rows.length ? ["The hardiness zone there is not known, so hardiness was not compared."] : [];
  const [lost, gained, hot] = [illFitted("fix", there, here), illFitted("fix", here, there), illFitted("consider", there, here)];
  return [
    ...(lost.length ? [`Too tender there: ${lettered(lost)}. ${lost.length === 1 ? "It would be" : "They would be"} lost in the first hard winter.`] : []),
    ...(hot.length ? [`Beyond the heat ${hot.length === 1 ? "it stands" : "they stand"} there: ${lettered(hot)}.`] : []),
    ...(gained.length ? [`Hardy there, though too tender here: ${lettered(gained)}.`] : []),
  ];
}

function seasonWords(here: ComparedSide, there: ComparedSide): string[] {
  const length = ({ place }: ComparedSide) => (place.lastFreezeDay === null || place.firstFreezeDay === null ? null : place.firstFreezeDay - place.lastFreezeDay);
  const [a, b] = [length(here), length(there)];
  if (a === null && b === null) return [];
  if (b === null) return ["There is no season between a last and a first freeze there: freezes do not come in most years, or come all year."];
  if (a === null)
    return [
      `The growing season there lies between freezes, ${dayText(there.place.lastFreezeDay ?? 1)} to ${dayText(there.place.firstFreezeDay ?? 1)}; here there is no such bound.`,
    ];
  if (Math.abs(a - b) < 3) return [`The growing season is as long: ${b} days there, ${a} here.`];
  const last = (there.place.lastFreezeDay ?? 0) - (here.place.lastFreezeDay ?? 0);
  const first = (there.place.firstFreezeDay ?? 0) - (here.place.firstFreezeDay ?? 0);
  return [
    `The growing season is ${count(Math.abs(a - b), "day")} ${b < a ? "shorter" : "longer"}: ${b} days there against ${a} here. The last freeze comes ${shiftText(last)}, the first ${shiftText(first)}.`,
  ];
}

const mean = (xs: readonly number[]): number => xs.reduce((sum, x) => sum + x, 0) / xs.length;

/** The mean shift of all that blooms by warmth, and of all fall color. */
function moveWords(rows: readonly ComparedRow[]): string[] {
  const pairs = rows.flatMap(windowPairs);
  const shiftOf = (wanted: Pair[]) => (wanted.length ? Math.round(mean(wanted.map((p) => apart(p.there.startDay, p.here.startDay)))) : null);
  const bloom = shiftOf(pairs.filter((p) => p.here.kind === "bloom" && p.here.drive === "heat"));
  const fall = shiftOf(pairs.filter((p) => p.here.kind === "fall color"));
  const told = [bloom === null ? "" : `what blooms by warmth begins ${shiftText(bloom)}`, fall === null ? "" : `fall color ${shiftText(fall)}`].filter(Boolean);
  if (!told.length) return [];
  const squeezed =
    bloom !== null && fall !== null && bloom - fall >= 7
      ? ": the year is squeezed from both ends"
      : bloom !== null && fall !== null && fall - bloom >= 7
        ? ": the year is drawn out"
        : "";
  const text = `On average ${listText(told)} there${squeezed}.`;
  return [text];
}

/** What blooms for the most part after the first freeze there, and not here. */
function frostedWords(here: ComparedSide, there: ComparedSide, rows: readonly ComparedRow[]): string[] {
  const isAfter = (side: ComparedSide, w: SeasonWindow) =>
    side.place.firstFreezeDay !== null && w.startDay > MIDSUMMER_DAY && (w.startDay + w.endDay) / 2 > side.place.firstFreezeDay;
  const caught = rows.filter((row) => windowPairs(row).some((p) => p.here.kind === "bloom" && isAfter(there, p.there) && !isAfter(here, p.here)));
  return caught.length && there.place.firstFreezeDay !== null
    ? [`${lettered(caught.map((r) => r.there))} ${caught.length === 1 ? "blooms" : "bloom"} mostly after the first freeze there, ${dayText(there.place.firstFreezeDay)}.`]
    : [];
}

const MIDDLE = 7;

/** Plants that show in a half-month at one place and (mostly) not at the other, those that cover most first. */
function missed(index: number, at: ComparedSide, from: ComparedSide): BedViewRow[] {
  const day = (HALF_MONTHS[index]?.startDay ?? 1) + MIDDLE;
  const show = (side: ComparedSide, row: BedViewRow | undefined) => (row?.placed ? plantInterest(row.placed.season, day, dayIsGrowing(side.place, day)) : 0);
  return at.view.rows
    .map((row, i) => ({ row, drop: show(from, from.view.rows[i]) - show(at, row) }))
    .filter(({ drop }) => drop > 0.2)
    .sort((a, b) => b.drop - a.drop)
    .map(({ row }) => row);
}

/** Half-months in a row as one run: indexes that wrap over New Year. */
function runsOf(indexes: readonly number[]): number[][] {
  const wanted = new Set(indexes);
  if (wanted.size === HALF_MONTHS.length) return [[...wanted]];
  const starts = [...wanted].filter((i) => !wanted.has((i + 23) % 24)).sort((a, b) => a - b);
  return starts.map((start) => {
    const run = [start];
    for (let next = (start + 1) % 24; wanted.has(next); next = (next + 1) % 24) run.push(next);
    return run;
  });
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Why a run of half-months is bare at one place and not at the other. */
function gapReason(run: readonly number[], at: ComparedSide, from: ComparedSide): string {
  const rows = [...new Set(run.flatMap((i) => missed(i, at, from)))].slice(0, 3);
  if (rows.length) return `${lettered(rows)} ${rows.length === 1 ? "does" : "do"} not show then`;
  const middle = (HALF_MONTHS[run[0] ?? 0]?.startDay ?? 1) + MIDDLE;
  if (dayIsGrowing(at.place, middle) && !dayIsGrowing(from.place, middle)) return "it is growing season by then, with a higher target, to which bark and evergreens do not count";
  if (!dayIsGrowing(at.place, middle) && dayIsGrowing(from.place, middle)) return "it is winter by then";
  return "what shows falls just short of the target";
}

function gapWords(here: ComparedSide, there: ComparedSide): string[] {
  const indexes = (side: ComparedSide) => side.view.season.gaps.map((g) => g.index);
  const [a, b] = [indexes(here), indexes(there)];
  const opened = runsOf(b.filter((i) => !a.includes(i)));
  const closed = a.filter((i) => !b.includes(i));
  return [
    ...opened.map((run) => `${capital(listText(halfMonthRuns(run)))} ${run.length > 1 ? "fall" : "falls"} bare there: ${gapReason(run, there, here)}.`),
    ...(closed.length ? [`No longer bare there: ${listText(halfMonthRuns(closed))}.`] : []),
  ];
}

/** The year's score at both, and of what outlives the winters there: a list fails where half of it dies. */
function scoreWords(here: ComparedSide, there: ComparedSide): string {
  const [a, b, hardy] = [here.view.season.score, there.view.season.score, there.hardyScore].map(percent);
  const score = a === b ? `The year reaches ${a} of its targets at both` : `The year reaches ${b} of its targets there, ${a} here`;
  return hardy === b ? `${score}.` : `${score}; without what is lost there, ${hardy}.`;
}

/**
 * Compares a bed at two places. Both views are of the same bed in the same year after planting, so that their rows agree one by one.
 */
export function bedComparison(here: ComparedSide, there: ComparedSide): BedComparison {
  const rows = here.view.rows.flatMap((row, i): ComparedRow[] => {
    const other = there.view.rows[i];
    return other ? [{ here: row, there: other, shiftWords: shiftWords({ here: row, there: other }) }] : [];
  });
  if (!rows.length) return { rows, words: [] };
  return {
    rows,
    words: [...hardinessWords(here, there), ...seasonWords(here, there), ...moveWords(rows), ...frostedWords(here, there, rows), ...gapWords(here, there), scoreWords(here, there)],
  };
}
