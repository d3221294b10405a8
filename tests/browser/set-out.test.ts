// What the ground tells beside the drawing: a list set out, looked at, taken and undone; crowding that leads to a move; density in words and money.
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { expectAccessible, openBrowser, openPage, PHONE, screenshot } from "../support/browser";
import { startServer, type TestServer } from "../support/server";

let server: TestServer;
let browser: Browser;
let page: Page;
beforeAll(async () => {
  server = await startServer({ demo: true });
  browser = await openBrowser();
  page = await openPage(browser);
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
});

async function drawingOf(on: Page, bed: string): Promise<void> {
  await on.goto(server.url);
  await on.getByRole("link", { name: "Clinic entrance garden" }).click();
  await on.getByRole("link", { name: bed, exact: false }).first().click();
  await on.locator(".plant-row").first().waitFor();
  await on.goto(`${on.url()}/drawing`);
  await on.getByRole("heading", { name: "Set it out" }).waitFor();
}
const panel = (on: Page, title: string) => on.locator("section.ground-panel").filter({ has: on.getByRole("heading", { name: title }) });
const facts = (on: Page) => on.locator(".plan-count").allTextContents();

describe("a plant list set out", () => {
  it("is offered as arrangements, the best first, and nothing is kept by looking", async () => {
    await drawingOf(page, "Walk bed");
    await panel(page, "Crowding").getByText("When plants stand on the drawing").waitFor();
    await panel(page, "Cover").getByText("nothing stands on the drawing yet").waitFor();
    await page.getByRole("button", { name: /^Set out \d+ plants/ }).click();
    await page.getByRole("button", { name: "Other arrangements" }).and(page.locator(":enabled")).waitFor();
    const scores = (await page.locator(".layout-look b").allTextContents()).map((text) => Number.parseInt(text, 10));
    expect(scores.length).toBe(4);
    expect(scores).toEqual([...scores].sort((a, b) => b - a));
    await page.locator(".layout-look").first().click();
    await page.getByText("shown on the drawing", { exact: true }).waitFor();
    await page.getByText("tall stands behind low").waitFor();
    expect((await facts(page)).every((text) => text.startsWith("0 of"))).toBe(true);
    await expectAccessible(page);
    await screenshot(page, "set-out");
  });
  it("is taken as one change that undo takes back and redo brings again", async () => {
    await page
      .getByRole("button", { name: /^Take arrangement/ })
      .first()
      .click();
    await expect.poll(async () => (await facts(page)).every((text) => text.startsWith("0 of"))).toBe(false);
    const taken = await facts(page);
    await page.getByRole("button", { name: "Undo" }).click();
    await expect.poll(async () => (await facts(page)).every((text) => text.startsWith("0 of"))).toBe(true);
    await page.getByRole("button", { name: "Redo" }).click();
    await expect.poll(() => facts(page)).toEqual(taken);
  });
});

/** Two shrubs far too near to each other in a bed with room. */
const CLOSE = {
  version: 1,
  name: "Too near",
  place: { zip: "05401" },
  size: { lengthFt: 30, widthFt: 12 },
  plants: [
    { name: "Syringa meyeri 'Palibin'", size: "#5", at: [[10, 6]] },
    { name: "Hydrangea paniculata 'Jane'", size: "#3", at: [[13.5, 6]] },
  ],
};

describe("crowding on the drawing", () => {
  it("is listed by year, and pressed it leads to a move after which nothing crowds", async () => {
    await page.goto(server.url);
    await page.getByRole("link", { name: "Clinic entrance garden" }).click();
    await page.getByText("Take in a bed file").click();
    await page.getByLabel("Bed file").setInputFiles({ name: "bed.json", mimeType: "application/json", buffer: Buffer.from(JSON.stringify(CLOSE)) });
    await page.getByRole("button", { name: "Take it in" }).click();
    await page.getByText("Too near").first().waitFor();
    await drawingOf(page, "Too near");
    const crowding = panel(page, "Crowding");
    const first = crowding.locator(".crowding-row").first();
    expect(await first.textContent()).toMatch(/^year \d+A ‘Palibin’ and B ‘Jane’ overlap by/);
    await first.click();
    await page.getByRole("heading", { name: /^2 plants chosen/ }).waitFor();
    await expectAccessible(page);
    await crowding.getByRole("button", { name: /^Move [AB] / }).click();
    await crowding.getByText("Nothing crowds in twenty years").waitFor();
    await page.getByRole("button", { name: "Undo" }).click();
    await first.waitFor();
  });
  it("offers smaller plants of the same look that suit the place, and takes one", async () => {
    const crowding = panel(page, "Crowding");
    const first = crowding.locator(".crowding-row").first();
    if ((await first.getAttribute("aria-expanded")) === "false") await first.click();
    await crowding.getByRole("button", { name: /^A smaller plant for/ }).click();
    const take = crowding.getByRole("button", { name: /^Take .* for all [AB]$/ });
    await take.first().waitFor();
    await screenshot(page, "crowding");
    const name = /^Take (.*) for all/.exec((await take.first().getAttribute("aria-label")) ?? "")?.[1] ?? "nothing";
    await take.first().click();
    await expect.poll(() => page.locator("[role=status]").allTextContents()).toContainEqual(expect.stringContaining(name));
    await page.getByRole("button", { name: "Undo" }).click();
    await first.waitFor();
  });
});

describe("density and cover", () => {
  it("say what a step costs in plants and money, and whose figures they are", async () => {
    await drawingOf(page, "Entrance bed");
    const density = panel(page, "Density");
    await density.getByText(/of 10 at hand-over/).waitFor();
    await density.getByText(/One step up.*plants more, \$[\d,.]+ more/).waitFor();
    await density.getByText(/One step down.*plants fewer, \$[\d,.]+ less/).waitFor();
    await panel(page, "Cover").getByText("Figures by the places of the drawing.").waitFor();
  });
  it("reads on a phone", async () => {
    const phone = await openPage(browser, PHONE);
    await drawingOf(phone, "Entrance bed");
    await panel(phone, "Density")
      .getByText(/of 10 when grown/)
      .waitFor();
    await expectAccessible(phone);
    await screenshot(phone, "set-out-phone");
  });
});
