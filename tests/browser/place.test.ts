// A job's place in a real Chromium: its pictures, what is said of the site, bad input, and one bed at two places.
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { expectAccessible, openBrowser, openPage, PHONE, screenshot } from "../support/browser";
import { startServer, type TestServer } from "../support/server";

let server: TestServer;
let browser: Browser;
let page: Page;
let placeUrl = "";
let bedUrl = "";
beforeAll(async () => {
  server = await startServer({ demo: true });
  browser = await openBrowser();
  page = await openPage(browser);
  await page.goto(server.url);
  await page.getByRole("link", { name: "Clinic entrance garden" }).click();
  await page.waitForURL(/\/jobs\/\w+$/);
  placeUrl = `${page.url()}/place`;
  await page.getByRole("link", { name: "North court" }).click();
  await page.waitForURL(/\/beds\/\w+$/);
  bedUrl = page.url();
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
});

const facts = async () => (await page.locator(".facts").textContent()) ?? "";
const strip = (name: string) => page.locator(".plant-row").filter({ hasText: name }).locator("svg.strip").getAttribute("aria-label");
async function placeSave() {
  await page.getByRole("button", { name: "Save the place" }).click();
  await page.getByText("Every bed of this job is dated anew").waitFor();
}

describe("the place page", () => {
  it("shows the year in pictures, the spring's spread and how a warmer climate moves it", async () => {
    await page.goto(placeUrl);
    await page.locator(".place-charts .recharts-surface").nth(2).waitFor();
    await page.getByText(/shaded: from a hard to a mild spring/).waitFor();
    const moves = page.locator("table.year-moves");
    expect(await moves.locator("thead th").allTextContents()).toEqual(["Event", "mild spring", "as springs go", "hard spring", "+2 °F", "+4 °F"]);
    expect(await moves.locator("tbody tr").count()).toBeGreaterThanOrEqual(6);
    await expectAccessible(page);
    await screenshot(page, "place");
  });

  it("takes what the site is, with its amounts, and dates every bed anew at once", async () => {
    await page.goto(bedUrl);
    const [before, freezes] = [await strip("Astilbe"), /freeze (\w+ \d+ · \w+ \d+)/.exec(await facts())?.[1]];
    await page.goto(placeUrl);
    await page.getByText("How the site differs from its ZIP").click();
    await page.getByText(/common practice, no source/).waitFor();
    await page.getByRole("radio", { name: /^Frost pocket.+nights 4 °F colder/ }).check();
    await page.getByRole("radio", { name: /^Hard/ }).check();
    await placeSave();
    await page.getByText(/5a, coldest night.+2023 table for the ZIP: 5b, moved for the frost pocket/).waitFor();
    await page.getByText(/frost pocket \(nights −4 °F, days as they are\); hard spring/).waitFor();
    await expectAccessible(page);
    await screenshot(page, "place-set");
    await page.goto(bedUrl);
    expect(await facts()).toMatch(/frost pocket.+hard spring \(one year in six\)/);
    expect(await facts()).toMatch(/zone 5a/);
    expect(/freeze (\w+ \d+ · \w+ \d+)/.exec(await facts())?.[1]).not.toBe(freezes);
    expect(await strip("Astilbe")).not.toBe(before);
  });

  it("goes back to the ZIP's open ground", async () => {
    await page.goto(placeUrl);
    await page.getByRole("radio", { name: /^Open/ }).check();
    await page.getByRole("radio", { name: /^As springs go/ }).check();
    await placeSave();
    await page.goto(bedUrl);
    expect(await facts()).not.toMatch(/frost pocket|hard spring/);
    expect(await facts()).toMatch(/zone 5b/);
  });

  it("fits a phone", async () => {
    const phone = await openPage(browser, PHONE);
    await phone.goto(placeUrl);
    await phone.locator(".place-charts .recharts-surface").nth(2).waitFor();
    await phone.getByText("How the site differs from its ZIP").click();
    await expectAccessible(phone);
    await screenshot(phone, "place-phone");
    await phone.context().close();
  });
});

describe("a plant's dates on the sheet", () => {
  it("say begin, best, end, how sure, and what decides them", async () => {
    await page.goto(bedUrl);
    await page.locator(".plant-row").filter({ hasText: "Cercis" }).locator(".name-button").click();
    await page.getByText(/^bloom .+: \w+ \d+ to \w+ \d+, best about \w+ \d+, ± \d+ days; by warmth/).waitFor();
    await page.getByText(/^in leaf: .+± \d+ and ± \d+ days/).waitFor();
  });
});

describe("bad places", () => {
  it.each([
    ["ZIP code", "0540", /five digits are wanted/],
    ["ZIP code", "05498", /not in the Census table\. The nearest that is known is 054\d\d/],
  ])("%s %s is refused beside its field", async (label, typed, words) => {
    await page.goto(placeUrl);
    await page.getByLabel(label).fill(typed);
    await page.getByRole("button", { name: "Save the place" }).click();
    await page.getByText(words).waitFor();
  });

  it("an elevation that cannot be is refused beside its field", async () => {
    await page.goto(placeUrl);
    await page.getByText("By hand", { exact: true }).click();
    await page.getByLabel("Elevation, ft").fill("99999");
    await page.getByRole("button", { name: "Save the place" }).click();
    await page.getByText(/Elevation in feet, between −282 and 20,310/).waitFor();
  });

  it("a point in the ocean is kept, said to be beyond reach, and set right by hand", async () => {
    await page.goto(placeUrl);
    await page.getByText("By hand", { exact: true }).click();
    await page.getByLabel("ZIP code").fill("");
    await page.getByLabel("Latitude").fill("35");
    await page.getByLabel("Longitude").fill("-45");
    await page.getByRole("button", { name: "Save the place" }).click();
    await page.getByText(/Saved, but: No weather station within 150 miles/).waitFor();
    await page.goto(bedUrl);
    await page.getByText(/Until then the year shown is that of the reference climate/).waitFor();
    await page.goto(placeUrl);
    await page.getByLabel("ZIP code").fill("05401");
    await page.getByLabel("Latitude").fill("");
    await page.getByLabel("Longitude").fill("");
    await placeSave();
  });

  it("a ZIP that has no zone takes a default, says so, and takes one by hand", async () => {
    await page.goto(placeUrl);
    await page.getByLabel("ZIP code").fill("99501");
    await placeSave();
    await page.reload();
    await page.getByText(/no zone for ZIP 99501.+estimate from the normals/).waitFor();
    // The fields by hand stand open where the table has no zone.
    expect(await page.getByLabel("Hardiness zone").locator("option").first().textContent()).toMatch(/^[3-5][ab], estimated$/);
    await page.getByLabel("Hardiness zone").selectOption("4b");
    await placeSave();
    await page.reload();
    await page.getByText(/4b, coldest night.+set by hand/).waitFor();
    expect(await page.getByText(/no zone for ZIP/).count()).toBe(0);
    await page.getByLabel("Hardiness zone").selectOption("");
    await page.getByLabel("ZIP code").fill("05401");
    await placeSave();
  });
});

describe("one bed at two places", () => {
  it("is reached from the sheet, and asks for the other place", async () => {
    await page.goto(bedUrl);
    await page.getByRole("link", { name: "Compare with another place" }).click();
    await page.waitForURL(/\/compare$/);
    await expectAccessible(page);
    await page.getByLabel("ZIP code of the other place").fill("99999");
    await page.getByRole("button", { name: "Compare" }).click();
    await page.getByText(/ZIP 99999 is not in the Census table/).waitFor();
  });

  it("sets both years of every plant one above the other, and says why the list fails there", async () => {
    await page.getByLabel("ZIP code of the other place").fill("56649");
    await page.getByRole("button", { name: "Compare" }).click();
    await page.waitForURL(/zip=56649/);
    await page.getByText(/Too tender there: .*Cercis canadensis/).waitFor();
    await page.getByText(/The growing season is \d+ days shorter/).waitFor();
    expect(await page.locator("table.compared svg.strip").count()).toBe(16);
    expect(await page.locator("table.compared svg.interest").count()).toBe(2);
    await expectAccessible(page);
    await screenshot(page, "compare");
  });

  it("takes latitude and longitude, and fits a phone", async () => {
    const phone = await openPage(browser, PHONE);
    await phone.goto(`${bedUrl}/compare?lat=33.75&lon=-84.39`);
    await phone.getByText(/The growing season is \d+ days longer/).waitFor();
    await expectAccessible(phone);
    await screenshot(phone, "compare-phone");
    await phone.goto(`${bedUrl}/compare?lat=north&lon=-84`);
    await phone.getByText('"north" is not a number').waitFor();
    await phone.context().close();
  });
});
