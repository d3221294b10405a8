// A truck's deck from above, headboard at the left, tailgate at the right: balls and pots to scale, trees laid back with their tops to the tail.
import { loadName } from "@/lib/papers/paper-loads";
import type { TruckLoad } from "@/lib/pulls/loads";

/** Feet around the deck for what is written beside it. */
const MARGIN_FT = 0.9;
const HEADBOARD_FT = 0.25;
/** Marks are written into balls and pots from this width on, feet. */
const MARK_FROM_FT = 0.5;
/** Half the width of a tied-in crown as a share of its length (drawing only). */
const CROWN_SHARE = 0.09;

/** A tree laid back: trunk and tied-in crown, pointing to the tail. */
function crownPath(x: number, y: number, lengthFt: number): string {
  const half = Math.min(1.6, Math.max(0.35, lengthFt * CROWN_SHARE));
  const begin = x + lengthFt * 0.35;
  const end = x + lengthFt;
  return `M${x} ${y}L${begin} ${y}M${begin} ${y}C${begin + lengthFt * 0.12} ${y - half * 1.4} ${end - lengthFt * 0.15} ${y - half * 0.8} ${end} ${y}C${end - lengthFt * 0.15} ${y + half * 0.8} ${begin + lengthFt * 0.12} ${y + half * 1.4} ${begin} ${y}Z`;
}

/** `marks`: what is written on each line's balls and pots, by key. */
export function DeckPlan({ load, marks }: { load: TruckLoad; marks: ReadonlyMap<string, string> }) {
  const { deckLengthFt, deckWidthFt } = load.by;
  const items = new Map(load.items.map((item) => [item.key, item]));
  const width = deckLengthFt + MARGIN_FT * 2 + load.pastTailgateFt;
  const height = deckWidthFt + MARGIN_FT * 2;
  const machine = load.items.filter(({ lift }) => lift === "machine").reduce((sum, { quantity }) => sum + quantity, 0);
  return (
    <svg
      className="deck-plan"
      preserveAspectRatio="xMinYMid meet"
      viewBox={`${-MARGIN_FT} ${-MARGIN_FT} ${width} ${height}`}
      role="img"
      aria-label={`${loadName(load)}: ${load.spots.length} on a deck of ${deckLengthFt} by ${deckWidthFt} ft${machine > 0 ? `, ${machine} to be lifted by machine` : ""}. The table says what stands where, in the order of loading.`}
    >
      <rect className="deck" x={0} y={0} width={deckLengthFt} height={deckWidthFt} />
      <rect className="headboard" x={-HEADBOARD_FT} y={0} width={HEADBOARD_FT} height={deckWidthFt} />
      <text className="deck-word" x={0} y={-0.3}>
        headboard
      </text>
      <text className="deck-word" x={deckLengthFt} y={-0.3} textAnchor="end">
        tailgate
      </text>
      {load.spots.map(({ key, xFt, yFt, widthFt }, index) => {
        const item = items.get(key);
        const mark = marks.get(key) ?? "";
        return (
          <g key={`${key}${index}`} className={`spot ${item?.lift === "machine" ? "machine" : item?.lift === "two people" ? "two" : ""}`}>
            <circle cx={yFt} cy={xFt} r={widthFt / 2} />
            {item?.lift === "two people" ? <circle className="ring" cx={yFt} cy={xFt} r={widthFt * 0.4} /> : null}
            {widthFt >= MARK_FROM_FT ? (
              <text x={yFt} y={xFt} fontSize={Math.min(0.85, widthFt * 0.42)}>
                {mark}
              </text>
            ) : null}
          </g>
        );
      })}
      {load.spots.map(({ key, xFt, yFt }, index) => {
        const item = items.get(key);
        return item?.laidBack ? <path key={`crown ${key}${index}`} className="crown" d={crownPath(yFt, xFt, item.heightFt)} /> : null;
      })}
    </svg>
  );
}
