import { describe, expect, it } from "vitest";
import { sizeFromText } from "../../lib/nursery/size-read";
import { ballDepthShare, ballWeightLb, liftClass, rootBall } from "../../lib/pulls/root-ball";
import { BALL_DEPTHS, BALL_MINIMA, BALL_RULES, BALL_WEIGHTS, BALLS_DUG, DEPTH_EXAMPLE, NIOSH_LIFT, SMALL_TREE } from "./root-balls";

const treeBall = (caliperIn: number) => rootBall(sizeFromText(`${caliperIn} in cal B&B`, "tree"), "tree");

describe("root balls", () => {
  it.each(BALL_MINIMA)("of $caliperIn in caliper are the published $ballIn in ($source)", ({ caliperIn, ballIn }) => {
    expect(treeBall(caliperIn)?.diameterIn).toBe(ballIn);
  });

  it("of a small tree by height are as published", () => {
    expect(rootBall(sizeFromText(`${SMALL_TREE.heightFt} ft B&B`, "tree"), "tree")?.diameterIn).toBe(SMALL_TREE.ballIn);
  });

  it("keep the rules of thumb from 2 in caliper to 8", () => {
    for (let caliperIn = 2; caliperIn <= 8; caliperIn += 0.5)
      for (const { low, high } of BALL_RULES) {
        const inchesAnInch = (treeBall(caliperIn)?.diameterIn ?? 0) / caliperIn;
        expect(inchesAnInch, `${caliperIn} in`).toBeGreaterThanOrEqual(low);
        if (high !== null) expect(inchesAnInch, `${caliperIn} in`).toBeLessThanOrEqual(high);
      }
  });

  it("are no larger than a grower digs them, and at least three quarters of that", () => {
    for (const { size, kind, ballIn } of BALLS_DUG) {
      const own = rootBall(sizeFromText(size, kind), kind)?.diameterIn ?? 0;
      expect(own, size).toBeLessThanOrEqual(ballIn);
      expect(own, size).toBeGreaterThanOrEqual(ballIn * 0.75);
    }
  });

  it("are as deep as published, or deeper", () => {
    for (const { diameterIn, share } of BALL_DEPTHS) expect(ballDepthShare(diameterIn), `${diameterIn} in`).toBeGreaterThanOrEqual(share);
    expect(rootBall(sizeFromText(`${DEPTH_EXAMPLE.diameterIn} in ball`), "shrub")?.depthIn).toBe(DEPTH_EXAMPLE.depthIn);
  });
});

describe("weights of root balls", () => {
  it.each(BALL_WEIGHTS.filter(({ planned }) => planned))("of $diameterIn in are planned within a tenth of the grower's ($source)", ({ diameterIn, lb }) => {
    expect(ballWeightLb(diameterIn)).toBeGreaterThanOrEqual(lb[0] * 0.9);
    expect(ballWeightLb(diameterIn)).toBeLessThanOrEqual(lb[1] * 1.1);
  });

  it("leave room for every published weight in the range they show", () => {
    for (const { diameterIn, lb } of BALL_WEIGHTS) {
      const [low, high] = rootBall(sizeFromText(`${diameterIn} in ball`), "tree")?.weightRangeLb ?? [0, 0];
      expect(low, `${diameterIn} in`).toBeLessThanOrEqual(lb[0]);
      expect(high, `${diameterIn} in`).toBeGreaterThanOrEqual(lb[1]);
    }
  });

  it("give one person no more than the published limit", () => {
    expect(liftClass(NIOSH_LIFT.lb)).not.toBe("one person");
    expect(liftClass(NIOSH_LIFT.lb - 1)).toBe("one person");
  });
});
