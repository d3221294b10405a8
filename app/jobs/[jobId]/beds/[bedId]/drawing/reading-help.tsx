import type { ReactNode } from "react";

const ink = { fill: "none", stroke: "var(--ink)" };

/** What the marks of the drawing are, each as it is drawn, in the order in which a newcomer meets them. */
const MARKS: readonly (readonly [mark: ReactNode, words: string])[] = [
  [
    <g key="plant">
      <circle cx="20" cy="12" r="11" fill="none" stroke="var(--soft)" strokeWidth="0.7" />
      <circle cx="20" cy="12" r="7" fill="var(--rule)" stroke="var(--soft)" />
      <text x="20" y="15.5" textAnchor="middle" className="reading-letter">
        A
      </text>
    </g>,
    "A plant from above. The letter is its line in the plant list (a group of small ones has one letter). The crown has its size in the year of the slider and its colors on the day; the thin ring is its size when grown.",
  ],
  [
    <g key="lens" stroke="var(--alert)" fill="var(--alert)" strokeWidth="1.3">
      <path d="M20 4A11 11 0 0 1 20 20A11 11 0 0 1 20 4Z" fillOpacity="0.16" />
    </g>,
    "Two plants that are in each other’s way by the year shown; a line from a plant leads to the wall, window, walk or wire it is in the way of.",
  ],
  [
    <g key="wall" {...ink}>
      <path d="M2 8H38" strokeWidth="6" />
      <path d="M12 8H28" stroke="var(--paper)" strokeWidth="4.4" />
      <path d="M12 8H28" />
      <path d="M2 18H38" strokeWidth="3" />
      <path d="M6 18v5M14 18v5M22 18v5M30 18v5" />
    </g>,
    "Above a house wall with a window, below a retaining wall: its ticks point to the low side. Dots, tufts, hatching and waves outside an edge are walk, lawn, drive and water.",
  ],
  [
    <g key="clear" {...ink}>
      <circle cx="12" cy="12" r="9" strokeDasharray="2 3" strokeWidth="0.8" />
      <circle cx="12" cy="12" r="3" />
      <path d="M32 1V23" strokeOpacity="0.12" strokeWidth="12" />
      <path d="M32 1V23" strokeWidth="1.4" strokeDasharray="7 3 2 3" />
    </g>,
    "Something to keep clear of, and the ground kept clear: a dashed ring round a tree, stone or spout, a grey band along a line.",
  ],
  [
    <g key="eye" {...ink} transform="translate(20 14)" strokeWidth="1.2">
      <path d="M-11 0Q0 -9 11 0Q0 9 -11 0Z" />
      <circle cy="-1" r="2.6" fill="var(--ink)" />
    </g>,
    "Where the bed is looked at from. “Set it out” puts low plants there and tall ones away from it.",
  ],
];

/** How to read the drawing, under it. */
export function ReadingHelp() {
  return (
    <details className="keys-help screen-only">
      <summary>How to read the drawing</summary>
      <ul className="reading-marks">
        {MARKS.map(([mark, words]) => (
          <li key={words}>
            <svg width="40" height="24" viewBox="0 0 40 24" aria-hidden="true" focusable="false">
              {mark}
            </svg>
            <span>{words}</span>
          </li>
        ))}
      </ul>
    </details>
  );
}
