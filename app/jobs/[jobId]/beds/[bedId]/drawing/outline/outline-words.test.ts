import { expect, it } from "vitest";
import { rectangleOutline } from "@/lib/ground/outline";
import { planFromOutline } from "@/lib/ground/plan-outline";
import { edgeName, edgeSide } from "./outline-words";

it("names an edge by its corners and by the side it faces, whichever way the corners run", () => {
  const plan = planFromOutline(rectangleOutline(24, 8));
  expect([0, 1, 2, 3].map((edge) => `${edgeName(plan, edge)} ${edgeSide(plan, edge)}`)).toEqual(["1–2 front", "2–3 right", "3–4 back", "4–1 left"]);
  const turned = planFromOutline([...rectangleOutline(24, 8)].reverse());
  expect(new Set([0, 1, 2, 3].map((edge) => edgeSide(turned, edge)))).toEqual(new Set(["front", "right", "back", "left"]));
  expect(edgeSide(turned, 0)).toBe("back");
});
