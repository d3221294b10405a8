// Plants and money in words, as the sheets of a job say them.

/** "1 plant", "1,200 plants". */
export function plantsText(count: number): string {
  return `${count.toLocaleString("en-US")} ${count === 1 ? "plant" : "plants"}`;
}

/** "$1,250.00"; a sum below zero has its sign before the mark. @param cents whole cents */
export function centsText(cents: number): string {
  const dollars = (Math.abs(cents) / 100).toLocaleString("en-US", { minimumFractionDigits: 2, maximumFractionDigits: 2 });
  return `${cents < 0 ? "−" : ""}$${dollars}`;
}

/** "the same size", "1 size up", "2 sizes down". */
export function stepsText(steps: number): string {
  if (steps === 0) return "the same size";
  const count = Math.abs(steps);
  return `${count} ${count === 1 ? "size" : "sizes"} ${steps > 0 ? "up" : "down"}`;
}
