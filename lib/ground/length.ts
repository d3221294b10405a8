// Lengths as the trade writes them. Inside the program every length is a number of feet.

export type LengthUnit = "in" | "ft" | "cm" | "m";
export type UnitSystem = "us" | "metric";
export type LengthResult = { readonly ok: true; readonly feet: number } | { readonly ok: false; readonly fault: string };

/** Feet in one of each unit. The foot is 0.3048 m exactly (international foot). */
export const FEET_PER_UNIT = { in: 1 / 12, ft: 1, cm: 0.01 / 0.3048, m: 1 / 0.3048 } as const satisfies Record<LengthUnit, number>;
/** Square meters in a square foot. */
const SQ_M_PER_SQ_FT = 0.3048 ** 2;
/** Longer than any bed or plant: a slip of the keyboard. */
export const LENGTH_MAX_FT = 10_000;

const VULGAR: Readonly<Record<string, string>> = { "¼": "1/4", "½": "1/2", "¾": "3/4", "⅓": "1/3", "⅔": "2/3", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8" };
const QUARTERS = ["", "¼", "½", "¾"] as const;

const NUMBER = String.raw`(?:\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d+[ -]\d+\/\d+|\d+\/\d+|\d*\.\d+|\d+\.?)`;
const FEET = String.raw`(?:feet|foot|ft\.?|')`;
const INCHES = String.raw`(?:inches|inch|in\.?|")`;
const SINGLE = new RegExp(`^(${NUMBER}) ?(${FEET}|${INCHES}|cm|centimeters?|meters?|m)?$`);
const COMPOUND = new RegExp(`^(${NUMBER}) ?${FEET}[ ,-]*(${NUMBER}) ?(?:${INCHES})?$`);
/** "on center" and its short forms say how a spacing is measured, not how long it is. */
const ON_CENTER = / ?(?:o\.? ?c\.?|on[ -]centers?|apart)$/;

/** Quotes, primes, dashes and vulgar fractions in plain letters, lower case, one space between words. */
function lengthPlain(text: string): string {
  return text
    .toLowerCase()
    .replace(/[¼½¾⅓⅔⅛⅜⅝⅞]/g, (sign) => ` ${VULGAR[sign] ?? ""}`)
    .replace(/['’‘′]{2}|[″”“]/g, '"')
    .replace(/[’‘′]/g, "'")
    .replace(/[‐‑‒–—−]/g, "-")
    .replace(/\s+/g, " ")
    .trim();
}

/** A number with decimals, thousands commas or a fraction; NaN for a fraction over zero. */
function numberFromText(text: string): number {
  const mixed = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/.exec(text);
  if (!mixed) return Number(text.replaceAll(",", ""));
  const denominator = Number(mixed[3]);
  return denominator === 0 ? Number.NaN : Number(mixed[1] ?? 0) + Number(mixed[2]) / denominator;
}

function unitFromWord(word: string): LengthUnit {
  if (word.startsWith("f") || word === "'") return "ft";
  if (word.startsWith("i") || word === '"') return "in";
  return word.startsWith("c") ? "cm" : "m";
}

function feetChecked(feet: number): LengthResult {
  if (!Number.isFinite(feet)) return { ok: false, fault: "That fraction cannot be read. Write a length such as 18 in or 2 ft 6 in." };
  if (feet <= 0) return { ok: false, fault: "A length must be more than zero." };
  if (feet > LENGTH_MAX_FT) return { ok: false, fault: "A length over 10,000 ft is not a bed. Check the unit." };
  return { ok: true, feet };
}

/**
 * Feet from a length as typed: `18 in`, `18"`, `2 ft`, `2'6"`, `2 ft 6 in`, `2.5 ft`, `4½ ft`, `30in oc`, `45 cm`, `1.2 m`.
 * A bare number is in `bareUnit`: inches for a spacing, feet for a bed. What cannot be read comes back as a fault in plain words.
 */
export function lengthFromText(text: string, bareUnit: LengthUnit): LengthResult {
  if (text.length > 60) return { ok: false, fault: "That is too long to be a length. Write a length such as 18 in or 2 ft 6 in." };
  const plain = lengthPlain(text).replace(ON_CENTER, "");
  if (plain === "") return { ok: false, fault: "The length is missing. Write a length such as 18 in or 2 ft 6 in." };
  if (/^-/.test(plain)) return { ok: false, fault: "A length cannot be negative." };
  const single = SINGLE.exec(plain);
  if (single) {
    const unit = single[2] === undefined ? bareUnit : unitFromWord(single[2]);
    return feetChecked(numberFromText(single[1] ?? "") * FEET_PER_UNIT[unit]);
  }
  const compound = COMPOUND.exec(plain);
  if (compound) {
    const inches = numberFromText(compound[2] ?? "");
    if (inches >= 12) return { ok: false, fault: "After feet, the inches must be less than 12." };
    return feetChecked(numberFromText(compound[1] ?? "") + inches / 12);
  }
  if (/\d,\d/.test(plain)) return { ok: false, fault: "Write decimals with a point, such as 1.5 ft." };
  return { ok: false, fault: `“${text.trim()}” is not a length. Write a length such as 18 in or 2 ft 6 in.` };
}

/** A number with at most so many decimals and commas between thousands; no trailing zeros. */
function numberText(value: number, decimals: number): string {
  return value.toLocaleString("en-US", { maximumFractionDigits: decimals });
}

/** A whole number and quarters: 4½, ¾, 12. `value` is rounded to the nearest quarter. */
function quartersText(value: number): string {
  const quarters = Math.round(value * 4);
  const whole = Math.floor(quarters / 4);
  const fraction = QUARTERS[quarters % 4] ?? "";
  return whole === 0 && fraction !== "" ? fraction : `${numberText(whole, 0)}${fraction}`;
}

function metricText(feet: number): string {
  const centimeters = Math.round(feet / FEET_PER_UNIT.cm);
  return centimeters < 100 ? `${centimeters} cm` : `${numberText(centimeters / 100, 2)} m`;
}

/**
 * A length to be set out with a tape: inches under 2 ft, then feet and inches (`18 in`, `4 ft`, `2 ft 6 in`), to the nearest quarter inch;
 * metric to the nearest centimeter. `lengthFromText` reads it back to the same quarter inch or centimeter.
 */
export function lengthText(feet: number, system: UnitSystem = "us"): string {
  if (system === "metric") return metricText(feet);
  const inches = Math.round(feet * 48) / 4;
  if (inches < 24) return `${quartersText(inches)} in`;
  const whole = Math.floor(inches / 12);
  const rest = inches - whole * 12;
  return rest === 0 ? `${numberText(whole, 0)} ft` : `${numberText(whole, 0)} ft ${quartersText(rest)} in`;
}

/** A plant's size to the exactness that plants have: inches under 2 ft, half feet to 10 ft, whole feet above (`18 in`, `4½ ft`, `12 ft`). */
export function plantSizeText(feet: number, system: UnitSystem = "us"): string {
  if (system === "metric") return feet < FEET_PER_UNIT.m ? metricText(feet) : `${numberText(feet / FEET_PER_UNIT.m, 1)} m`;
  if (Math.round(feet * 12) < 24) return `${Math.round(feet * 12)} in`;
  return feet < 10 ? `${quartersText(Math.round(feet * 2) / 2)} ft` : `${numberText(feet, 0)} ft`;
}

/** A plant's low and high size with the unit written once where both share it: `4–6 ft`, `18–24 in`, `8 in–3 ft`. */
export function plantSizeRangeText(range: readonly [number, number], system: UnitSystem = "us"): string {
  const [low, high] = range;
  if (system === "us" && low < 2 && high <= 3) {
    const [lowIn, highIn] = [Math.round(low * 12), Math.round(high * 12)];
    return lowIn === highIn ? `${lowIn} in` : `${lowIn}–${highIn} in`;
  }
  const halfFeet = system === "us" && low >= 1 && Number.isInteger(low * 2) ? `${quartersText(low)} ft` : plantSizeText(low, system);
  const highText = plantSizeText(high, system);
  if (halfFeet === highText) return highText;
  const [lowNumber, lowUnit] = halfFeet.split(" ");
  return lowUnit === highText.split(" ")[1] ? `${lowNumber}–${highText}` : `${halfFeet}–${highText}`;
}

/** An area: `312 sq ft`, one decimal under 10; metric `29 m²`. */
export function areaText(sqFt: number, system: UnitSystem = "us"): string {
  const value = system === "us" ? sqFt : sqFt * SQ_M_PER_SQ_FT;
  return `${numberText(value, value < 10 ? 1 : 0)} ${system === "us" ? "sq ft" : "m²"}`;
}
