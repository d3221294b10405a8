import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Curve, curveArc, curveAreaTerm, curveLength, curvePieces, curvePointAt, curvePoints } from "./curve";
import type { Point } from "./outline";

const place = fc.tuple(fc.double({ min: -50, max: 50, noNaN: true }), fc.double({ min: -50, max: 50, noNaN: true })) as fc.Arbitrary<Point>;
const curves: fc.Arbitrary<Curve> = fc.oneof(
  fc.record({ from: place, to: place, shape: fc.record({ kind: fc.constant("cubic" as const), control1: place, control2: place }) }),
  fc.record({ from: place, to: place, shape: fc.record({ kind: fc.constant("arc" as const), ordinateFt: fc.double({ min: -30, max: 30, noNaN: true }) }) }),
);
const chords = (curve: Curve, pieces: number) => Array.from({ length: pieces + 1 }, (_, i) => curvePointAt(curve, i / pieces));

describe("an edge", () => {
  it("that is a half circle by its middle ordinate has the circle's length and area", () => {
    const half: Curve = { from: [0, 0], to: [10, 0], shape: { kind: "arc", ordinateFt: 5 } };
    expect(curveLength(half)).toBeCloseTo(5 * Math.PI, 12);
    expect(curveAreaTerm(half)).toBeCloseTo((25 * Math.PI) / 2, 12);
    const middle = curvePointAt(half, 0.5);
    expect(middle[0]).toBeCloseTo(5, 12);
    expect(middle[1]).toBeCloseTo(-5, 12);
  });

  it("with an ordinate over half its chord is more than a half circle", () => {
    const arc = curveArc({ from: [0, 0], to: [6, 0], shape: { kind: "arc", ordinateFt: 9 } });
    expect(arc?.radiusFt).toBeCloseTo(5, 12);
    expect(arc?.sweep).toBeGreaterThan(Math.PI);
  });

  it("that is a Bézier with its controls on the chord is straight", () => {
    const straight: Curve = { from: [0, 0], to: [9, 12], shape: { kind: "cubic", control1: [3, 4], control2: [6, 8] } };
    expect(curveLength(straight)).toBeCloseTo(15, 10);
    expect(curvePieces(straight, 0.05)).toBe(1);
  });

  it("is sampled with every chord within the tolerance of the curve", () => {
    fc.assert(
      fc.property(curves, fc.constantFrom(0.05, 0.5), (curve, tolerance) => {
        const pieces = curvePieces(curve, tolerance);
        fc.pre(pieces < 2000);
        const samples = [...curvePoints(curve, tolerance), curve.to];
        for (let i = 0; i < pieces; i += Math.max(1, Math.floor(pieces / 8))) {
          const [a, b] = [samples[i], samples[i + 1]];
          if (!a || !b) throw new Error("samples are missing");
          const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
          for (const share of [0.25, 0.5, 0.75]) {
            const p = curvePointAt(curve, (i + share) / pieces);
            const along = length < 1e-9 ? 0 : Math.min(1, Math.max(0, ((p[0] - a[0]) * (b[0] - a[0]) + (p[1] - a[1]) * (b[1] - a[1])) / length ** 2));
            expect(Math.hypot(p[0] - a[0] - along * (b[0] - a[0]), p[1] - a[1] - along * (b[1] - a[1]))).toBeLessThan(tolerance * 1.0001);
          }
        }
      }),
      { numRuns: 150 },
    );
  });

  it("has the length and the area of its own fine samples", () => {
    fc.assert(
      fc.property(curves, (curve) => {
        const fine = chords(curve, 4000);
        let [length, area] = [0, 0];
        for (let i = 1; i < fine.length; i++) {
          const [a, b] = [fine[i - 1] ?? [0, 0], fine[i] ?? [0, 0]];
          length += Math.hypot(b[0] - a[0], b[1] - a[1]);
          area += (a[0] * b[1] - a[1] * b[0]) / 2;
        }
        expect(Math.abs(curveLength(curve) - length)).toBeLessThan(0.001 * length + 1e-6);
        expect(Math.abs(curveAreaTerm(curve) - area)).toBeLessThan(1e-3 * Math.max(1, length));
      }),
      { numRuns: 60 },
    );
  });
});
