// Where balls and pots stand on a truck's deck: rows across, from the headboard back, in the order of loading.

export type DeckItem = { readonly key: string; readonly quantity: number; readonly widthIn: number };
/** A unit as it stands: its middle, from the left board and the headboard, feet. */
export type DeckSpot = { readonly key: string; readonly xFt: number; readonly yFt: number; readonly widthFt: number };
export type DeckSize = { readonly deckLengthFt: number; readonly deckWidthFt: number };

const EPSILON = 1e-9;

/** All units placed in one layer, rows filled from the left, each row as deep as its widest unit; null when they do not all fit. */
export function deckPlaced(items: readonly DeckItem[], { deckLengthFt, deckWidthFt }: DeckSize): DeckSpot[] | null {
  const spots: DeckSpot[] = [];
  let xFt = 0;
  let yFt = 0;
  let depthFt = 0;
  for (const { key, quantity, widthIn } of items) {
    const widthFt = widthIn / 12;
    if (widthFt > deckWidthFt + EPSILON) return null;
    for (let i = 0; i < quantity; i++) {
      if (xFt + widthFt > deckWidthFt + EPSILON) {
        yFt += depthFt;
        xFt = 0;
        depthFt = 0;
      }
      depthFt = Math.max(depthFt, widthFt);
      if (yFt + depthFt > deckLengthFt + EPSILON) return null;
      spots.push({ key, xFt: xFt + widthFt / 2, yFt: yFt + widthFt / 2, widthFt });
      xFt += widthFt;
    }
  }
  return spots;
}
