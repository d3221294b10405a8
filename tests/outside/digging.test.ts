// Times, loads and sizes of digging and trucking against published figures.
import { describe, expect, it } from "vitest";
import { sizeFromText } from "../../lib/nursery/size-read";
import { digPlan } from "../../lib/pulls/dig-method";
import { ROAD_HEIGHT_FT, ROAD_WIDTH_FT } from "../../lib/pulls/loads";
import { standHeightFt } from "../../lib/pulls/plant-stand";
import { plantWeightLb, rootBall } from "../../lib/pulls/root-ball";
import { DUG_BY_HAND, LOAD_ON_ROAD, SHADE_TREE_HEIGHTS, SIZED_CONTAINER } from "./digging";

describe("digging and trucking", () => {
  it(`take by hand about as long as a contractor says (${DUG_BY_HAND.source})`, () => {
    const size = sizeFromText(DUG_BY_HAND.size, "conifer");
    const ball = rootBall(size, "conifer");
    expect(Math.abs((ball?.diameterIn ?? 0) - DUG_BY_HAND.ballIn)).toBeLessThanOrEqual(4);
    const minutes = digPlan({ diameterIn: 20, weightLb: 200 }).minutes ?? [0, 0];
    const share = (20 / DUG_BY_HAND.ballIn) ** 2;
    expect(minutes[0]).toBe(Math.ceil(DUG_BY_HAND.minutes[0] * share));
    expect(minutes[1]).toBe(Math.ceil(DUG_BY_HAND.minutes[1] * share));
  });

  it("keep to the width and height that a tree farm ships at", () => {
    expect([ROAD_WIDTH_FT, ROAD_HEIGHT_FT]).toEqual([LOAD_ON_ROAD.widthFt, LOAD_ON_ROAD.heightFt]);
  });

  it.each(SIZED_CONTAINER)("weigh a $size container within what is said of it ($source)", ({ size, lb }) => {
    const weight = plantWeightLb(sizeFromText(size, "tree"), "tree") ?? 0;
    expect(weight).toBeGreaterThanOrEqual(lb[0]);
    expect(weight).toBeLessThanOrEqual(lb[1]);
  });

  it.each(SHADE_TREE_HEIGHTS)("take a tree of $caliperIn in caliper to be no lower than the standard's least height ($source)", ({ caliperIn, leastFt }) => {
    expect(standHeightFt(sizeFromText(`${caliperIn} in cal`, "tree"), null)).toBeGreaterThanOrEqual(leastFt);
  });
});
