// Light and shade of a plant's own color.

const channels = (hex: string): readonly [number, number, number] => [1, 3, 5].map((i) => Number.parseInt(hex.slice(i, i + 2), 16)) as unknown as [number, number, number];

/** Mixes `#rrggbb` with another by a share 0–1. */
export function hexMix(hex: string, other: string, share: number): string {
  const [a, b] = [channels(hex), channels(other)];
  return `#${a
    .map((value, i) =>
      Math.round(value + ((b[i] ?? value) - value) * share)
        .toString(16)
        .padStart(2, "0"),
    )
    .join("")}`;
}

const SUN = "#fff6d8";
const SHADE = "#14221c";

/** The color in sun: `amount` 0–1 of warm light. */
export const toneLight = (hex: string, amount = 0.18): string => hexMix(hex, SUN, amount);
/** The color in its own shade. */
export const toneDark = (hex: string, amount = 0.2): string => hexMix(hex, SHADE, amount);
