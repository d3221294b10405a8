// The whole job in a real Chromium: from an empty database to a pull list.
import { readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { expectAccessible, openBrowser, openPage, PHONE, saved, screenshot } from "../support/browser";
import { startServer, type TestServer } from "../support/server";

let server: TestServer;
let browser: Browser;
let page: Page;
beforeAll(async () => {
  server = await startServer();
  browser = await openBrowser();
  page = await openPage(browser);
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
});

async function plantAdd(on: Page, typed: string, expected: string) {
  await on.getByRole("combobox", { name: /Add a plant/ }).fill(typed);
  await on.getByRole("listbox").getByRole("option").filter({ hasText: expected }).first().waitFor();
  await on.keyboard.press("Enter");
  await on.locator(".plant-row").filter({ hasText: expected }).waitFor();
}

describe("from an empty database to a pull list", () => {
  it("shows the first step when there is nothing yet", async () => {
    await page.goto(server.url);
    await page.getByText("No jobs yet.").waitFor();
    await expectAccessible(page);
  });

  it("says what is wrong with a ZIP code and keeps what was typed", async () => {
    await page.getByLabel("Job name").fill("Clinic entrance");
    await page.getByLabel("ZIP code of the site").fill("99999");
    await page.getByRole("button", { name: "Create the job" }).click();
    await page.getByText("ZIP 99999 is not in the Census table").waitFor();
  });

  it("makes a job at a ZIP code and knows zone and freeze dates there", async () => {
    await page.getByLabel("Job name").fill("Clinic entrance");
    await page.getByLabel("ZIP code of the site").fill("05401");
    await page.getByRole("button", { name: "Create the job" }).click();
    await page.waitForURL(/jobs\/\w+$/);
    await page.getByText("5b").first().waitFor();
    await page.getByText("No beds yet.").waitFor();
    await expectAccessible(page);
  });

  it("sizes a bed and says what each plant needs as it is added by any of its names", async () => {
    await page.getByRole("button", { name: "Add a bed" }).click();
    await page.getByText("No plants yet.").waitFor();
    await expectAccessible(page);
    await page.getByLabel("Bed name").fill("Front bed");
    await page.getByLabel("Bed name").press("Enter");
    await page.getByLabel("Bed length").fill("20'");
    await page.getByLabel("Bed length").press("Enter");
    await page.getByLabel("Bed width").fill("96 in");
    await page.getByLabel("Bed width").press("Enter");
    await page.getByText("160 sq ft", { exact: true }).waitFor();
    await plantAdd(page, "limelite hydranga", "‘Limelight’");
    await plantAdd(page, "Aster novae-angliae Purple Dome", "Symphyotrichum");
    await plantAdd(page, "red sprite winterbery", "‘Red Sprite’");
    await plantAdd(page, "karl foerster", "‘Karl Foerster’");
    await page
      .getByText(/fruits only with a pollination partner/)
      .first()
      .waitFor({ state: "attached" });
    await saved(page);
    await expectAccessible(page);
    await screenshot(page, "bed-new");
  });

  it("takes quantity, size and spacing in the trade's words, and refuses nonsense with the reason", async () => {
    const row = page.locator(".plant-row").filter({ hasText: "Limelight" });
    await row.getByLabel(/^Quantity of/).fill("many");
    await row.getByLabel(/^Quantity of/).press("Enter");
    await row.getByText("A whole number of plants").waitFor();
    await row.getByLabel(/^Quantity of/).fill("2");
    await row.getByLabel(/^Quantity of/).press("Enter");
    await row.getByLabel(/^Spacing on center/).fill("30 in oc");
    await row.getByLabel(/^Spacing on center/).press("Enter");
    await page
      .getByRole("button", { name: /^Space at/ })
      .first()
      .waitFor({ state: "attached" });
    await row.getByLabel(/^Size at planting/).fill("#5");
    await row.getByLabel(/^Size at planting/).press("Enter");
    await saved(page);
  });

  it("finds the quantity from an area and its spacing", async () => {
    const row = page.locator(".plant-row").filter({ hasText: "Purple Dome" });
    await row.locator(".name-button").click();
    await page.getByLabel("Quantity", { exact: true }).selectOption("area");
    await page.getByLabel(/^Area for Symphyotrichum/).fill("30");
    await page.getByLabel(/^Area for Symphyotrichum/).press("Enter");
    await row.getByLabel(/^Spacing on center/).fill("18");
    await row.getByLabel(/^Spacing on center/).press("Enter");
    // 30 sq ft at 18 in on a triangular grid: 30 ÷ (0.866 · 1.5²) = 15.4
    await row.getByText("16", { exact: true }).waitFor();
    await row.locator(".name-button").click();
  });

  it("moves a plant by keyboard, takes one out, and undoes and redoes both", async () => {
    const names = () => page.locator(".plant-row .name-button").allTextContents();
    const before = await names();
    await page.getByRole("button", { name: /^B, / }).focus();
    await page.keyboard.press("Alt+ArrowUp");
    await expect.poll(names).toEqual([before[1], before[0], ...before.slice(2)]);
    await page.getByRole("button", { name: /^A, / }).focus();
    await page.keyboard.press("Delete");
    await expect.poll(async () => (await names()).length).toBe(before.length - 1);
    await page.getByRole("button", { name: "Undo" }).click();
    await page.getByRole("button", { name: "Undo" }).click();
    await expect.poll(names).toEqual(before);
    await page.getByRole("button", { name: "Redo" }).click();
    await expect.poll(names).toEqual([before[1], before[0], ...before.slice(2)]);
    await page.getByRole("button", { name: "Undo" }).click();
    await saved(page);
  });

  it("offers plants that would fill a bare time here, and adding one lifts the year", async () => {
    const score = async () => Number(/year score (\d+)/.exec((await page.locator(".facts").textContent()) ?? "")?.[1]);
    const before = await score();
    await page.locator(".findings").getByRole("button", { name: "See what would fill it here" }).first().click();
    await page
      .getByRole("dialog")
      .getByRole("button", { name: /^Add \d+/ })
      .first()
      .click();
    await expect.poll(score).toBeGreaterThan(before);
    await saved(page);
  });

  it("draws an outline by its corners and refuses one that crosses itself", async () => {
    await page.getByLabel("Size by").selectOption("outline");
    await page.getByRole("button", { name: /^Add a corner between 2 and 3/ }).click();
    const corner = page.getByRole("button", { name: /^Corner 3 at/ });
    await corner.focus();
    for (let i = 0; i < 4; i++) await page.keyboard.press("ArrowLeft");
    await page.getByText("152 sq ft", { exact: true }).waitFor();
    for (let i = 0; i < 50; i++) await page.keyboard.press("ArrowLeft");
    await page.getByText(/The last sound outline is kept/).waitFor();
    for (let i = 0; i < 50; i++) await page.keyboard.press("ArrowRight");
    await page.getByText("152 sq ft", { exact: true }).waitFor();
    await screenshot(page, "outline");
    await expectAccessible(page);
    await saved(page);
  });

  it("keeps everything through a reload and a restart of the program", async () => {
    const names = await page.locator(".plant-row .name-button").allTextContents();
    await server.restart();
    await page.reload();
    expect(await page.locator(".plant-row .name-button").allTextContents()).toEqual(names);
  });

  it("keeps edits made while the program is down, and saves them when it is back", async () => {
    const row = page.locator(".plant-row").filter({ hasText: "Karl Foerster" });
    await page.route("**/*", (route) => (route.request().method() === "POST" ? route.abort() : route.continue()));
    await row.getByLabel(/^Quantity of/).fill("11");
    await row.getByLabel(/^Quantity of/).press("Enter");
    await page.getByText(/Not saved: the program does not answer/).waitFor();
    await page.unroute("**/*");
    await saved(page);
    await page.reload();
    expect(await row.getByLabel(/^Quantity of/).inputValue()).toBe("11");
  });

  it("tells a second window that its bed is stale, and loses neither list", async () => {
    const other = await page.context().newPage();
    await other.goto(page.url());
    const here = page
      .locator(".plant-row")
      .filter({ hasText: "Karl Foerster" })
      .getByLabel(/^Quantity of/);
    const there = other
      .locator(".plant-row")
      .filter({ hasText: "Karl Foerster" })
      .getByLabel(/^Quantity of/);
    await here.fill("5");
    await here.press("Enter");
    await saved(page);
    await there.fill("7");
    await there.press("Enter");
    await other.getByText("This bed was changed in another window").waitFor();
    await expectAccessible(other);
    await other.getByRole("button", { name: /^Take the other/ }).click();
    await expect.poll(() => there.inputValue()).toBe("5");
    await other.getByRole("button", { name: "Undo" }).click();
    await expect.poll(() => there.inputValue()).toBe("7");
    await saved(other);
    await other.close();
    await page.reload();
    await expect.poll(() => here.inputValue()).toBe("7");
  });

  it("leaves plants that stay out of the pull list, totals the rest, and downloads it", async () => {
    const row = page.locator(".plant-row").filter({ hasText: "Red Sprite" });
    await row.locator(".name-button").click();
    await page.getByLabel("stands there already and stays").check();
    await saved(page);
    await page.getByRole("link", { name: /^Pull list/ }).click();
    await page.getByRole("heading", { name: "Pull list" }).waitFor();
    expect(await page.getByText("Red Sprite").count()).toBe(0);
    const line = page.locator(".pull-line").filter({ hasText: "Karl Foerster" });
    expect(await line.locator(".qty").textContent()).toBe("7");
    expect(await line.locator("i").allTextContents()).toContain("Calamagrostis");
    await expectAccessible(page);
    await screenshot(page, "pull");
    const [download] = await Promise.all([page.waitForEvent("download"), page.getByRole("link", { name: "CSV" }).click()]);
    const csv = readFileSync(await download.path(), "utf8");
    expect(csv).toContain("Calamagrostis × acutiflora 'Karl Foerster'");
    expect(csv).not.toContain("Red Sprite");
  });

  it("gives the bed as a file and takes it in again, whole or not at all", async () => {
    await page.goBack();
    const [download] = await Promise.all([page.waitForEvent("download"), page.getByRole("link", { name: "Save as a bed file" }).click()]);
    const file = path.join(tmpdir(), `bed-${process.pid}.json`);
    const text = readFileSync(await download.path(), "utf8");
    await page.getByRole("link", { name: "Clinic entrance", exact: true }).click();
    await page.getByText("Take in a bed file").click();
    writeFileSync(file, text.replace("Karl Foerster", "Karl Nobody"));
    await page.getByLabel("Bed file").setInputFiles(file);
    await page.getByRole("button", { name: "Take it in" }).click();
    await page.getByText(/plants\[\d\]\.name.*Karl Nobody.* is no plant of the dataset/).waitFor();
    expect(await page.locator(".bed-card").count()).toBe(1);
    writeFileSync(file, text);
    await page.getByLabel("Bed file").setInputFiles(file);
    await page.getByRole("button", { name: "Take it in" }).click();
    await page.waitForURL(/beds\/\w+$/);
    await page.getByText("bed 2 of 2").waitFor();
  });

  it("copies plants from another bed", async () => {
    const rows = page.locator(".plant-row");
    const before = await rows.count();
    await page.getByRole("button", { name: "Copy from another bed" }).click();
    await page.getByRole("dialog").getByRole("checkbox").first().uncheck();
    await page.getByRole("button", { name: /^Copy \d+ plants/ }).click();
    await expect.poll(() => rows.count()).toBe(2 * before - 1);
    await saved(page);
  });

  it("brings back a deleted bed and a deleted job; duplicates and archives a job", async () => {
    await page.getByRole("link", { name: "Clinic entrance", exact: true }).click();
    await page.getByRole("button", { name: "Delete Front bed" }).last().click();
    await page.getByRole("button", { name: "Undo" }).click();
    await expect.poll(() => page.locator(".bed-card").count()).toBe(2);
    await page.goto(server.url);
    await page.getByRole("button", { name: "Duplicate Clinic entrance" }).click();
    await page.waitForURL(/jobs\/\w+$/);
    await expect.poll(() => page.locator(".bed-card").count()).toBe(2);
    await page.goto(server.url);
    await page.getByRole("button", { name: "Archive Clinic entrance (copy)" }).click();
    await page.getByText("Archived (1)").waitFor();
    await page.getByRole("button", { name: "Delete Clinic entrance", exact: true }).click();
    await page.getByRole("button", { name: "Undo" }).click();
    await page.getByRole("link", { name: "Clinic entrance", exact: true }).waitFor();
    await expectAccessible(page);
  });

  it("dates everything anew when the job's place changes, and asks for the zone where the table has none", async () => {
    await page.getByRole("link", { name: "Clinic entrance", exact: true }).click();
    await page.getByRole("link", { name: /05401/ }).click();
    await page.getByText("This is not the official map.").waitFor();
    await page.locator(".recharts-surface").first().waitFor();
    await expectAccessible(page);
    await screenshot(page, "place");
    await page.getByLabel("ZIP code").fill("99501");
    await page.getByRole("button", { name: "Save the place" }).click();
    await page.getByText(/has no zone for ZIP 99501/).waitFor();
    await page.getByRole("button", { name: "Save the place", disabled: false }).waitFor();
    await page.getByLabel("Hardiness zone").selectOption("5a");
    await page.getByRole("button", { name: "Save the place" }).click();
    await page.getByText("5a, coldest night", { exact: false }).waitFor();
    await page.getByRole("button", { name: "Save the place", disabled: false }).waitFor();
    await page.getByLabel("Latitude").fill("north");
    await page.getByRole("button", { name: "Save the place" }).click();
    await page.getByText(/Latitude in degrees north/).waitFor();
  });
});

describe("on a phone", () => {
  it("shows jobs, bed and pull list in 390 px, with nothing cut off", async () => {
    const phone = await openPage(browser, PHONE);
    await phone.goto(server.url);
    await expectAccessible(phone);
    await phone.getByRole("link", { name: "Clinic entrance", exact: true }).click();
    await phone.waitForURL(/jobs\/\w+$/);
    await expectAccessible(phone);
    const job = phone.url();
    await phone.locator(".job-name").first().click();
    await phone.waitForURL(/beds/);
    await phone.locator(".plant-row").first().waitFor();
    await expectAccessible(phone);
    await plantAdd(phone, "hosta halcyon", "‘Halcyon’");
    await saved(phone);
    await screenshot(phone, "phone-bed");
    await phone.goto(`${job}/pull`);
    await expectAccessible(phone);
    await screenshot(phone, "phone-pull");
    await phone.goto(`${job}/place`);
    await expectAccessible(phone);
  });
});
