// The drawing of a bed in a real Chromium: plants set, chosen, moved and arranged by mouse, keyboard and touch; kept; shown by year; printed.
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { expectAccessible, openBrowser, openPage, PHONE, screenshot, WIDE } from "../support/browser";
import { startServer, type TestServer } from "../support/server";

let server: TestServer;
let browser: Browser;
let page: Page;
let address = "";
beforeAll(async () => {
  server = await startServer({ demo: true });
  browser = await openBrowser();
  page = await openPage(browser);
  await page.goto(server.url);
  await page.getByRole("link", { name: "Clinic entrance garden" }).click();
  await page.getByRole("link", { name: "Entrance bed", exact: false }).click();
  await page.locator(".plant-row").first().waitFor();
  address = `${page.url()}/drawing`;
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
});

const area = (on: Page) => on.getByRole("listbox", { name: "Plants on the drawing" });
const options = (on: Page) => area(on).getByRole("option");
const texts = (on: Page) => options(on).allTextContents();
const row = (on: Page, name: string) => on.getByRole("button", { name: new RegExp(`${name}.*placed`) });
const chosen = (on: Page) => area(on).locator("[role=option][aria-selected=true]");
const said = (on: Page, words: RegExp) => on.locator("main > p[role=status]").filter({ hasText: words }).waitFor({ state: "attached" });

async function middle(on: Page): Promise<readonly [number, number]> {
  await area(on).scrollIntoViewIfNeeded();
  const box = await area(on).boundingBox();
  if (!box) throw new Error("The drawing is not on the screen.");
  return [box.x + box.width / 2, box.y + box.height / 2];
}

async function kept(on: Page): Promise<void> {
  await on.waitForFunction(() => !localStorage.getItem(`twelvemonth:bed:${location.pathname.split("/").at(-2)}`));
  await on.getByText(/^Saved \d/).waitFor();
}

describe("plants on the drawing", () => {
  it("are set by mouse, each with a press", async () => {
    await page.goto(address);
    await area(page).waitFor();
    if (await options(page).count()) {
      await area(page).focus();
      await page.keyboard.press("Control+a");
      await page.keyboard.press("Delete");
    }
    await expect.poll(() => options(page).count()).toBe(0);
    await row(page, "Palibin").click();
    await page.getByRole("button", { name: "Single" }).click();
    const [x, y] = await middle(page);
    await page.mouse.click(x - 120, y);
    await page.mouse.click(x + 60, y + 20);
    await expect.poll(() => options(page).count()).toBe(2);
    await expect.poll(() => row(page, "Palibin").textContent()).toContain("2 of 3 placed");
    await expectAccessible(page);
  });

  it("are set by keyboard alone, with the place said", async () => {
    await page.keyboard.press("Escape");
    await said(page, /put away/);
    await page.getByRole("button", { name: "Single" }).focus();
    await page.keyboard.press("Enter");
    for (let i = 0; i < 6; i++) await page.keyboard.press("ArrowRight");
    await page.keyboard.press("ArrowUp");
    await page.keyboard.press("Enter");
    await expect.poll(() => options(page).count()).toBe(3);
    await said(page, /Syringa.*from the left.*up/);
    await page.keyboard.press("Escape");
  });

  it("are set as a group and as a drift, with their number before they are set", async () => {
    await row(page, "Jane").click();
    await page.getByRole("button", { name: "Group", exact: true }).click();
    await page.getByRole("button", { name: "Set 3 plants" }).click();
    await expect.poll(() => options(page).count()).toBe(6);
    await page.getByRole("button", { name: "Put the tool away" }).click();
    await row(page, "Caradonna").click();
    await page.getByRole("button", { name: "Drift" }).click();
    const [x, y] = await middle(page);
    await page.mouse.move(x - 180, y + 60);
    await page.mouse.down();
    await page.mouse.move(x + 100, y + 50, { steps: 6 });
    await page.mouse.up();
    await page.getByRole("button", { name: /^Set \d+ plants$/ }).waitFor();
    await expectAccessible(page);
    await page.keyboard.press("Enter");
    await expect.poll(() => options(page).count()).toBeGreaterThan(8);
    await page.getByRole("button", { name: "Undo" }).click();
    await expect.poll(() => options(page).count()).toBe(6);
    await page.getByRole("button", { name: "Redo" }).click();
    await expect.poll(() => options(page).count()).toBeGreaterThan(8);
  });

  it("fill what is left of the bed, with quantity by area beside the drawing's", async () => {
    await row(page, "Goldsturm").click();
    await page.getByRole("button", { name: "Fill" }).click();
    await page.getByText(/By area \d+, on the drawing \d+: at the edge/).waitFor();
    await page.getByRole("combobox", { name: /^Fill/ }).selectOption("left");
    await page.getByRole("button", { name: /^Set \d+ plants$/ }).waitFor();
    await page.getByRole("button", { name: "Put the tool away" }).click();
  });

  it("are chosen, nudged, copied, grouped, brought into line and taken out by keyboard, and undo brings all back", async () => {
    const before = await texts(page);
    await area(page).focus();
    await page.keyboard.press("n");
    await expect.poll(() => chosen(page).count()).toBeGreaterThan(0);
    await page.keyboard.press("ArrowRight");
    await expect.poll(() => texts(page)).not.toEqual(before);
    await page.keyboard.press("Control+z");
    await expect.poll(() => texts(page)).toEqual(before);
    await page.keyboard.press("Control+a");
    await expect.poll(() => chosen(page).count()).toBe(before.length);
    await page.keyboard.press("g");
    await expect.poll(async () => (await texts(page)).every((text) => text.includes(`of ${before.length} plants`))).toBe(true);
    await page.keyboard.press("u");
    await expect.poll(async () => (await texts(page)).every((text) => !text.includes("group"))).toBe(true);
    await page.getByRole("button", { name: "left", exact: true }).click();
    await expect.poll(async () => new Set((await texts(page)).map((text) => /, (.*) from the left/.exec(text)?.[1])).size).toBe(1);
    await area(page).focus();
    await page.keyboard.press("d");
    await expect.poll(() => options(page).count()).toBe(2 * before.length);
    await page.keyboard.press("Delete");
    await expect.poll(() => options(page).count()).toBe(before.length);
    for (let i = 0; i < 5; i++) await page.keyboard.press("Control+z");
    await expect.poll(() => texts(page)).toEqual(before);
  });

  it("are dragged by mouse with their group, and one by its exact place", async () => {
    await page.keyboard.press("Escape");
    const [x, y] = await middle(page);
    await page.mouse.click(x - 120, y);
    await expect.poll(() => chosen(page).count()).toBe(1);
    const before = await chosen(page).textContent();
    await page.mouse.move(x - 120, y);
    await page.mouse.down();
    await page.mouse.move(x - 160, y - 40, { steps: 6 });
    await page.mouse.up();
    await expect.poll(() => chosen(page).textContent()).not.toBe(before);
    await page.getByLabel("From the left of the bed").fill("7 ft 6 in");
    await page.getByLabel("From the left of the bed").press("Enter");
    await expect.poll(() => chosen(page).textContent()).toContain("7 ft 6 in from the left");
  });

  it("are there after a reload", async () => {
    await kept(page);
    const before = await texts(page);
    await page.reload();
    await area(page).waitFor();
    await expect.poll(() => texts(page)).toEqual(before);
  });

  it("follow the year and the day", async () => {
    const look = async () => (await area(page).screenshot()).toString("base64");
    const before = await look();
    await page.getByLabel("Year", { exact: false }).first().fill("15");
    await page.getByText("15 years after planting", { exact: true }).first().waitFor();
    await expect.poll(look).not.toBe(before);
    const grown = await look();
    await page.getByRole("slider", { name: "Day" }).fill("20");
    await page.getByText("Jan 20", { exact: true }).first().waitFor();
    await expect.poll(look).not.toBe(grown);
    await page.getByRole("slider", { name: "Day" }).fill("170");
    await screenshot(page, "drawing");
  });

  it("are vectors on paper, with a key", async () => {
    const count = await options(page).count();
    await page.emulateMedia({ media: "print" });
    await expect.poll(() => page.locator(".plan-print-plants use").count()).toBe(count);
    await page.getByText("Scale on paper").waitFor();
    expect(await page.locator(".plan-key li").count()).toBe(9);
    expect(await page.locator(".drawing-area").isVisible()).toBe(false);
    await screenshot(page, "drawing-print");
    await page.emulateMedia({ media: "screen" });
  });

  it("stay as they are while the outline is drawn", async () => {
    await page.getByRole("button", { name: "Outline", exact: true }).click();
    await page.locator(".outline-layer").waitFor();
    await expectAccessible(page);
    await page.getByRole("button", { name: "Plants", exact: true }).click();
    await area(page).waitFor();
  });
});

describe("on a phone, and in the dark", () => {
  it("sets a plant by touch, drags it with a finger, and pinches the sheet closer", async () => {
    const phone = await openPage(browser, PHONE);
    await phone.goto(address);
    await area(phone).waitFor();
    const before = await options(phone).count();
    await row(phone, "Festiva").click();
    await phone.getByRole("button", { name: "Single" }).click();
    const [x, y] = await middle(phone);
    await phone.touchscreen.tap(x, y);
    await expect.poll(() => options(phone).count()).toBe(before + 1);
    await phone.getByRole("button", { name: "Put the tool away" }).click();
    const [px, py] = await middle(phone);
    const session = await phone.context().newCDPSession(phone);
    const touch = (type: "touchStart" | "touchMove" | "touchEnd", ...points: readonly (readonly [number, number])[]) =>
      session.send("Input.dispatchTouchEvent", { type, touchPoints: points.map(([left, top], id) => ({ x: left, y: top, id })) });
    const standing = await texts(phone);
    await touch("touchStart", [px, py]);
    for (const step of [8, 16, 24]) await touch("touchMove", [px - step, py + step / 2]);
    await touch("touchEnd");
    await expect.poll(() => texts(phone)).not.toEqual(standing);
    const scale = () => phone.locator(".scale-bar text").textContent();
    const scaleBefore = await scale();
    await touch("touchStart", [px - 20, py], [px + 20, py]);
    for (const step of [20, 50, 90]) await touch("touchMove", [px - 20 - step, py], [px + 20 + step, py]);
    await touch("touchEnd");
    await expect.poll(scale).not.toBe(scaleBefore);
    await expectAccessible(phone);
    await screenshot(phone, "drawing-phone");
    await kept(phone);
    await phone.context().close();
  });

  it("reads in the dark with the same contrast", async () => {
    const dark = await openPage(browser, { ...WIDE, colorScheme: "dark" });
    await dark.goto(address);
    await area(dark).waitFor();
    await dark.getByText("Keys on the drawing").click();
    await expectAccessible(dark);
    await screenshot(dark, "drawing-dark");
    await dark.context().close();
  });
});
