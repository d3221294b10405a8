// The demo that greets a newcomer: three beds, each with its own trouble, found at once. Also the screenshot of the README.
import { copyFileSync, mkdirSync } from "node:fs";
import path from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { expectAccessible, openBrowser, openPage, screenshot, WIDE } from "../support/browser";
import { startServer, type TestServer } from "../support/server";

const ROOT = path.resolve(import.meta.dirname, "../..");
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

const bed = async (name: string) => {
  await page.goto(server.url);
  await page.getByRole("link", { name: "Clinic entrance garden" }).click();
  await page.getByRole("link", { name, exact: false }).click();
  await page.locator(".plant-row").first().waitFor();
  return page.locator(".findings li").allTextContents();
};

/** Renews a picture of the README from a screenshot, when it is asked for. */
function pictureRenewed(shot: string, name: string): void {
  if (!process.env.UPDATE_SCREENS) return;
  mkdirSync(path.join(ROOT, "public/screens"), { recursive: true });
  copyFileSync(path.join(ROOT, `test-results/screens/${shot}.png`), path.join(ROOT, `public/screens/${name}.png`));
}

describe("the demo job", () => {
  it("has a bed that is bare in winter", async () => {
    const found = await bed("Entrance bed");
    expect(found.some((text) => /to fix.*(November|December|January).* bare/.test(text))).toBe(true);
    await expectAccessible(page);
    await page.locator(".recharts-surface").first().waitFor();
    await screenshot(page, "demo-entrance");
    pictureRenewed("demo-entrance", "bed");
  });
  it("has that bed drawn to scale, with every plant in its place", async () => {
    await page.goto(`${page.url()}/drawing`);
    await page.getByText(/55 of 55 plants placed/).waitFor();
    // The symbols are painted on a canvas: it is not blank.
    const painted = () =>
      page.evaluate(() => {
        const canvas = document.querySelector("canvas");
        const pixels = canvas?.getContext("2d")?.getImageData(0, 0, canvas.width, canvas.height).data;
        return pixels ? pixels.some((value, i) => i % 4 === 3 && value > 0) : false;
      });
    await expect.poll(painted).toBe(true);
    await page.screenshot({ path: path.join(ROOT, "test-results/screens/demo-drawing.png") });
    pictureRenewed("demo-drawing", "drawing");
    await page.goBack();
  });
  it("has a bed that is overplanted", async () => {
    const found = await bed("Walk bed");
    expect(found.some((text) => /to fix.*Planting density (9|10) of 10/.test(text))).toBe(true);
  });
  it("has a bed with a plant too tender", async () => {
    const found = await bed("North court");
    expect(found.some((text) => /to fix.*Nandina.*is hardy to zone 6, this place is zone 5b/.test(text))).toBe(true);
    await screenshot(page, "demo-court");
  });
  it("reads in the dark with the same contrast", async () => {
    const dark = await openPage(browser, { ...WIDE, colorScheme: "dark" });
    await dark.goto(page.url());
    await dark.locator(".plant-row").first().waitFor();
    await expectAccessible(dark);
    await screenshot(dark, "dark-bed");
  });
  it("prints the sheet without its buttons", async () => {
    await page.emulateMedia({ media: "print" });
    expect(await page.getByRole("button", { name: "Undo" }).isVisible()).toBe(false);
    expect(await page.locator(".plant-row").first().isVisible()).toBe(true);
    expect(await page.locator(".title-block").isVisible()).toBe(true);
    await screenshot(page, "print-bed");
    await page.emulateMedia({ media: "screen" });
  });
  it("opens the keys on a question mark and jumps to the search on a slash", async () => {
    await page.keyboard.press("?");
    await page.getByRole("dialog", { name: "Keys" }).waitFor();
    await page.keyboard.press("Escape");
    await page.keyboard.press("/");
    expect(await page.evaluate(() => document.activeElement?.getAttribute("role"))).toBe("combobox");
  });
  it("is removable, and stays removed", async () => {
    await page.goto(server.url);
    await page.getByRole("button", { name: "Delete Clinic entrance garden" }).click();
    await page.getByText("No jobs yet.").waitFor();
    await server.restart();
    await page.reload();
    await page.getByText("No jobs yet.").waitFor();
  });
  it("says its data and cautions", async () => {
    await page.goto(`${server.url}/about`);
    await page.getByText("Call 811", { exact: false }).first().waitFor();
    await page.getByText("This is not the official map.").waitFor();
    await expectAccessible(page);
  });
});
