import { describe, expect, it } from "vitest";
import { sizeFromText } from "../nursery/size-read";
import type { Kind } from "../plants/vocabulary";
import { digMethod, liftClass, plantWeightLb, rootBall } from "./root-ball";

const ball = (text: string, kind: Kind) => rootBall(sizeFromText(text, kind), kind);

describe("a root ball", () => {
  it("is sized by the upper caliper, else by the height of the kind, else as stated", () => {
    expect(ball("2-2.5 in cal B&B", "tree")).toMatchObject({ diameterIn: 28, by: "caliper" });
    expect(ball("5-6 ft B&B", "conifer")).toMatchObject({ diameterIn: 22, by: "height" });
    expect(ball("24-30 in B&B", "shrub")).toMatchObject({ diameterIn: 13, by: "height" });
    expect(ball('6-7 ft 28" ball', "conifer")).toMatchObject({ diameterIn: 28, by: "stated" });
    expect(ball("#3", "shrub")).toBeNull();
  });

  it("grows with the plant, in width, depth and weight", () => {
    const balls = ["1 in cal B&B", "2 in cal B&B", "3 in cal B&B", "5 in cal B&B", "9 in cal B&B"].flatMap((text) => ball(text, "tree") ?? []);
    for (const key of ["diameterIn", "depthIn", "weightLb"] as const) expect(balls.map((one) => one[key])).toEqual(balls.map((one) => one[key]).sort((a, b) => a - b));
    for (const { weightLb, weightRangeLb } of balls) expect(weightRangeLb[0] < weightLb && weightLb < weightRangeLb[1]).toBe(true);
  });
});

describe("handling", () => {
  it("knows the weight of pots and trays, and is silent where a size says nothing", () => {
    expect(plantWeightLb(sizeFromText("#3"), "shrub")).toBe(21.5);
    expect(plantWeightLb(sizeFromText("72 plug"), "perennial")).toBe(20);
    expect(plantWeightLb(sizeFromText("as sample"), "shrub")).toBeNull();
  });

  it("sets one person to 50 lb, two to 100, a machine above", () => {
    expect([50, 50.1, 100, 100.1].map(liftClass)).toEqual(["one person", "two people", "two people", "machine"]);
  });

  it("digs small balls by hand, larger ones with the smallest spade that cuts them", () => {
    expect([14, 28, 50, 80, 96].map(digMethod)).toEqual(["by hand", "44 in tree spade", "60 in tree spade", "90 in tree spade", null]);
  });
});
