// Hues of fall color as lists name them, and the dataset's colors that answer to each.
import type { ColorName } from "./colors";
import type { Hue } from "./published-lists";

const HUE_COLORS: Record<Hue, readonly ColorName[]> = {
  red: ["red", "scarlet", "crimson", "red-orange", "coral red", "coral", "burgundy", "wine", "maroon", "mahogany", "red-purple", "red-brown", "twig red", "rose", "hot pink"],
  orange: ["orange", "red-orange", "apricot", "orange-brown", "copper", "rust", "scarlet", "golden yellow", "gold", "salmon", "peach", "coral", "cinnamon"],
  yellow: ["yellow", "pale yellow", "golden yellow", "gold", "greenish yellow", "yellow-green", "chartreuse", "lime", "apricot", "straw"],
  purple: ["purple", "deep purple", "plum", "red-purple", "wine", "burgundy", "maroon", "mauve", "magenta", "bronze"],
  brown: ["brown", "bronze", "russet", "rust", "copper", "tan", "buff", "chocolate", "red-brown", "orange-brown", "cinnamon", "straw", "gold"],
};

/** Whether a color answers to one of the hues. */
export const hueFits = (color: ColorName, hues: readonly Hue[]): boolean => hues.some((hue) => HUE_COLORS[hue].includes(color));
