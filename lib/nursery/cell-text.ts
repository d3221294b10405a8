// A number of a spreadsheet as its format shows it: 18.5 under "$"#,##0.00 is $18.50, 3 under "#"0 is #3.

/** Figures beyond this are noise of the computer's arithmetic: 12.100000000000001. */
const DIGITS = 12;
const plainNumber = (value: number): string => String(Number(value.toPrecision(DIGITS)));

/**
 * @param format a number format as workbooks write it; of its sections the first counts for positive numbers and zero
 * Formats that are not understood (fractions, exponents, conditions) show the plain number.
 */
export function numberText(value: number, format = "General"): string {
  if (!Number.isFinite(value)) return "";
  const section = (format.split(";")[value < 0 && format.includes(";") ? 1 : 0] ?? "").replace(/\[\$([^\]-]*)(?:-[^\]]*)?\]/g, '"$1"').replace(/\[[^\]]*\]/g, "");
  // Literals: in quotes, behind a backslash; "_x" is a space as wide as x, "*x" fills the cell.
  const parts = [...section.matchAll(/"([^"]*)"|\\(.)|_.|\*.|([#0?][#0?,]*(?:\.[#0?]+)?%?)|([^"\\_*])/g)];
  const figures = parts.filter((part) => part[3] !== undefined);
  if (/general/i.test(section) || figures.length !== 1 || /[E/@]/i.test(section.replace(/"[^"]*"|\\./g, ""))) return plainNumber(value);
  return parts
    .map(([whole, quoted, escaped, figure, other]) => {
      if (quoted !== undefined) return quoted;
      if (escaped !== undefined) return escaped;
      if (figure === undefined) return other ?? (whole.startsWith("_") ? "" : "");
      const percent = figure.endsWith("%");
      const decimals = /\.([#0?]+)/.exec(figure)?.[1] ?? "";
      return `${(percent ? value * 100 : value).toLocaleString("en-US", {
        useGrouping: /[#0?],[#0?]/.test(figure),
        minimumFractionDigits: decimals.replace(/[^0]/g, "").length,
        maximumFractionDigits: decimals.length,
      })}${percent ? "%" : ""}`;
    })
    .join("")
    .replace(/\s+/g, " ")
    .trim();
}

const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

/** A date of a workbook (UTC). Under a format without a year the text has none: "6-May", as the sheet shows it. */
export function dateText(date: Date, format = ""): string {
  if (Number.isNaN(date.getTime())) return "";
  if (/^d+-mmm$/i.test(format)) return `${date.getUTCDate()}-${MONTHS[date.getUTCMonth()] ?? ""}`;
  return date.toISOString().slice(0, 10);
}

/** A size that a spreadsheet took for a date: "5-6" becomes "6-May", "2-10" "10-Feb". The size again; other texts as they are. */
export function sizeFromDate(text: string): string {
  const match = /^(\d{1,2})-(Jan|Feb|Mar|Apr|May|June?|July?|Aug|Sept?|Oct|Nov|Dec)$/i.exec(text.trim());
  const month = match ? MONTHS.findIndex((name) => (match[2] ?? "").toLowerCase().startsWith(name.toLowerCase())) + 1 : 0;
  return month > 0 ? `${month}-${match?.[1] ?? ""}` : text;
}
