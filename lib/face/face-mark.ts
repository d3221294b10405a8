// One drawn piece of a plant, and a pen that gathers pieces: one path a color, back to front.

/** What a mark is, for tests and styles. */
export type FacePart = "stem" | "leaf" | "flower" | "fruit" | "seedhead" | "support" | "person";

/** A filled or stroked path, in feet from the plant's foot, y down. */
export type FaceMark = {
  readonly part: FacePart;
  readonly d: string;
  /** "none" for a line. */
  readonly fill: string;
  readonly stroke: string;
  /** Width of the line, ft; 0 for a fill. */
  readonly strokeFt: number;
  readonly opacity: number;
};

export type Pen = {
  readonly fill: (part: FacePart, fill: string, ...paths: readonly string[]) => void;
  readonly line: (part: FacePart, stroke: string, widthFt: number, ...paths: readonly string[]) => void;
  readonly marks: () => readonly FaceMark[];
};

/** A pen. Pieces of one look that follow each other become one mark. */
export function pen(): Pen {
  const marks: FaceMark[] = [];
  const put = (mark: FaceMark) => {
    if (!mark.d) return;
    const last = marks.at(-1);
    if (last && last.part === mark.part && last.fill === mark.fill && last.stroke === mark.stroke && last.strokeFt === mark.strokeFt)
      marks[marks.length - 1] = { ...last, d: last.d + mark.d };
    else marks.push(mark);
  };
  return {
    fill: (part, fill, ...paths) => put({ part, d: paths.join(""), fill, stroke: "none", strokeFt: 0, opacity: 1 }),
    line: (part, stroke, widthFt, ...paths) => put({ part, d: paths.join(""), fill: "none", stroke, strokeFt: Math.round(widthFt * 1000) / 1000, opacity: 1 }),
    marks: () => marks,
  };
}
