// The Plants screen in a real Chromium: search and filters, a taxon's page, own plants and corrections.
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { expectAccessible, openBrowser, openPage, PHONE, screenshot, WIDE } from "../support/browser";
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

const rows = (on: Page) => on.locator(".found tbody tr");
const count = async (on: Page) => Number(((await on.locator(".count b").textContent()) ?? "").replace(",", ""));
const search = (on: Page) => on.getByRole("searchbox", { name: /Any botanical/ });
/** Waits until the first result is the one meant. */
const firstIs = (on: Page, text: string) => rows(on).first().filter({ hasText: text }).waitFor();

describe("finding plants", () => {
  it("lists the plants in use first, each with size, zones and its year at the job's place", async () => {
    await page.goto(`${server.url}/plants`);
    await rows(page).first().waitFor();
    expect(await count(page)).toBeGreaterThan(1500);
    await expect.poll(() => rows(page).count()).toBe(60);
    await expect.poll(() => rows(page).first().textContent()).toMatch(/in \d bed/);
    expect(await page.getByLabel("Windows at").locator("option:checked").textContent()).toContain("Burlington");
    expect(await rows(page).first().locator("svg.strip").getAttribute("aria-label")).toMatch(/\.$/);
    await expectAccessible(page);
    await screenshot(page, "plants");
  });

  it("finds a plant by a misspelt trade name as it is typed, and goes to it with the keyboard", async () => {
    await page.keyboard.press("/");
    await page.keyboard.type("limelite hydranga", { delay: 15 });
    await firstIs(page, "‘Limelight’");
    await page.waitForURL(/q=limelite/);
    await page.keyboard.press("ArrowDown");
    expect(await page.evaluate(() => document.activeElement?.textContent)).toContain("Limelight");
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("ArrowUp");
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { level: 1, name: /Limelight/ }).waitFor();
  });

  it("goes back to the search as it was, and Esc empties it", async () => {
    await page.goBack();
    await firstIs(page, "‘Limelight’");
    expect(await search(page).inputValue()).toBe("limelite hydranga");
    await search(page).press("Escape");
    await expect.poll(() => count(page)).toBeGreaterThan(1500);
  });

  it("says by which former name a plant was found", async () => {
    await search(page).fill("Aster novae-angliae Purple Dome");
    await firstIs(page, "was Aster novae-angliae");
    await search(page).fill("");
  });

  it("keeps up with typing: a key is echoed and painted within a tenth of a second", async () => {
    await page.evaluate(() => {
      const paints: number[] = [];
      Object.assign(window, { paints });
      document.addEventListener(
        "keydown",
        () => {
          const pressed = performance.now();
          requestAnimationFrame(() => {
            const after = new MessageChannel();
            after.port1.onmessage = () => paints.push(performance.now() - pressed);
            after.port2.postMessage(0);
          });
        },
        true,
      );
    });
    await search(page).focus();
    await page.keyboard.type("purple coneflower", { delay: 60 });
    const paints = (await page.evaluate("window.paints")) as number[];
    expect(paints.length).toBe(17);
    expect(paints.sort((a, b) => a - b)[8], "median").toBeLessThan(100);
    await search(page).fill("");
  });

  it("filters by kind, month and color; the filter is in the address and Back undoes it", async () => {
    const all = await count(page);
    await page.getByRole("checkbox", { name: "shrub" }).check();
    await page.getByLabel("In color in").selectOption("August");
    await page.getByRole("checkbox", { name: "white" }).check();
    await page.waitForURL(/kind=shrub&month=8&color=white/);
    const white = await count(page);
    expect(white).toBeGreaterThan(0);
    expect(white).toBeLessThan(all);
    await page.reload();
    await expect.poll(() => count(page)).toBe(white);
    await page.goBack();
    await expect.poll(() => count(page)).toBeGreaterThan(white);
    expect(await page.getByRole("checkbox", { name: "white" }).isChecked()).toBe(false);
    await page.getByRole("button", { name: "Without shrub" }).click();
    await page.getByRole("button", { name: "Reset" }).click();
    await expect.poll(() => count(page)).toBe(all);
  });

  it("reads sizes as the trade writes them and refuses nonsense with the reason", async () => {
    await page.getByLabel("Grows to, height, to").fill("18 in");
    await page.getByLabel("Grows to, height, to").press("Enter");
    await page.waitForURL(/height=~1\.5/);
    await page.getByLabel("Grows to, height, from").fill("tall");
    await page.getByLabel("Grows to, height, from").press("Enter");
    await page.getByText("is not a length").waitFor();
    await page.getByLabel("Grows to, height, from").press("Escape");
    await page.getByRole("button", { name: "Reset" }).click();
  });

  it("knows what is native to the state of the place", async () => {
    await page.getByRole("checkbox", { name: "native to VT" }).check();
    await expect.poll(() => count(page)).toBeLessThan(1500);
    await search(page).fill("Acer saccharum");
    await firstIs(page, "Acer saccharum");
    await search(page).fill("");
    await page.getByRole("button", { name: "Reset" }).click();
  });

  it("says what to give up when nothing fits, and when no plant is called so", async () => {
    await page.goto(`${server.url}/plants?kind=fern&month=1&color=blue`);
    await page.getByText("No plant fits all of this.").waitFor();
    await page.getByRole("button", { name: "Without fern" }).first().waitFor();
    await expectAccessible(page);
    await page.goto(`${server.url}/plants?q=qqqqzzzzxx`);
    await page.getByText("No plant is called “qqqqzzzzxx” or nearly so.").waitFor();
    await page.getByRole("button", { name: "All plants" }).click();
    await expect.poll(() => count(page)).toBeGreaterThan(1500);
  });

  it("shows more on demand, and as many again on the way back", async () => {
    await page.goto(`${server.url}/plants?kind=shrub`);
    await page.getByRole("button", { name: /^Show 60 more/ }).click();
    await expect.poll(() => rows(page).count()).toBe(120);
    await page.reload();
    await expect.poll(() => rows(page).count()).toBe(120);
  });

  it("dates the years anew at another place", async () => {
    await page.goto(`${server.url}/plants?q=Cercis canadensis`);
    await firstIs(page, "Cercis canadensis");
    const here = await rows(page).first().locator("svg.strip").getAttribute("aria-label");
    await page.getByLabel("Windows at").selectOption({ label: "Wooster, Ohio (reference climate)" });
    await page.waitForURL(/place=reference/);
    await expect.poll(() => rows(page).first().locator("svg.strip").getAttribute("aria-label")).not.toBe(here);
    expect(await search(page).inputValue()).toBe("Cercis canadensis");
  });
});

describe("a taxon's page", () => {
  it("has name, year, drawing to scale, cautions and the beds that hold it", async () => {
    await page.goto(`${server.url}/plants/hydrangea-paniculata-jane`);
    await page.getByRole("heading", { level: 1, name: /Jane.*Little Lime/ }).waitFor();
    await page.getByRole("img", { name: /drawn to scale beside a 6 ft person/ }).waitFor();
    await page.getByRole("link", { name: "Entrance bed" }).waitFor();
    await page
      .getByRole("row", { name: /Bloom/ })
      .getByText(/± \d+ days/)
      .waitFor();
    await expectAccessible(page);
    await screenshot(page, "plant");
  });

  it("tells the source of a value on focus and on hover, and Esc puts it away", async () => {
    const value = page
      .getByRole("row", { name: /^Hardy in zones/ })
      .getByRole("button")
      .first();
    const card = page.getByRole("row", { name: /^Hardy in zones/ }).getByRole("tooltip");
    await value.focus();
    await expect.poll(() => card.isVisible()).toBe(true);
    expect(await card.textContent()).toContain("Common practice, from memory, no source.");
    await page.keyboard.press("Escape");
    await expect.poll(() => card.isVisible()).toBe(false);
    await page
      .getByRole("row", { name: /^Soil pH/ })
      .getByRole("button")
      .first()
      .hover();
    await page
      .getByRole("row", { name: /^Soil pH/ })
      .getByRole("tooltip")
      .waitFor();
  });

  it("draws another day of its year", async () => {
    await page.getByRole("radio", { name: "Midwinter" }).check({ force: true });
    await page.getByRole("img", { name: /midwinter/ }).waitFor();
  });

  it("says which states regulate a plant, with law and date, and to check the present list", async () => {
    await page.goto(`${server.url}/plants/berberis-thunbergii`);
    await page
      .getByText(/Check the state's present list\./)
      .first()
      .waitFor();
    await expectAccessible(page);
  });

  it("says that there is no such plant", async () => {
    expect((await page.goto(`${server.url}/plants/nobody`))?.status()).toBe(404);
  });
});

describe("corrections for one's own region", () => {
  it("keep the dataset's value and the note beside the corrected one", async () => {
    await page.goto(`${server.url}/plants/hydrangea-paniculata-limelight`);
    await page.getByRole("button", { name: "Correct hardy in zones for your region" }).click();
    const dialog = page.getByRole("dialog");
    await dialog.getByLabel("From", { exact: true }).fill("9");
    await dialog.getByLabel("To", { exact: true }).fill("4");
    await dialog.getByRole("button", { name: "Keep the correction" }).click();
    await dialog.getByText("the colder first").waitFor();
    await expectAccessible(page);
    await dialog.getByLabel("From", { exact: true }).fill("4");
    await dialog.getByLabel("To", { exact: true }).fill("7");
    await dialog.getByLabel(/^Note/).fill("lost two on the ridge");
    await dialog.getByRole("button", { name: "Keep the correction" }).click();
    const row = page.getByRole("row", { name: /^Hardy in zones/ });
    await row.getByText("4–7").waitFor();
    await row.getByText("corrected here; the dataset says 3–8").waitFor();
    await row.getByText("lost two on the ridge").waitFor();
    await expectAccessible(page);
  });

  it("move a bloom to when it is seen at the place", async () => {
    await page.getByRole("button", { name: "Correct time of bloom for your region" }).click();
    const dialog = page.getByRole("dialog");
    await dialog.getByLabel("From", { exact: true }).selectOption("early Aug");
    await dialog.getByRole("button", { name: "Keep the correction" }).click();
    await page
      .getByRole("row", { name: /^Bloom/ })
      .getByText(/^early August to/)
      .waitFor();
  });

  it("are told in the list, can be taken back, and taken back again", async () => {
    await page.goto(`${server.url}/plants?own=1`);
    await rows(page).filter({ hasText: "corrected here" }).first().waitFor();
    await page.getByRole("link", { name: /Limelight/ }).click();
    await page.getByRole("button", { name: "Take back the correction of hardy in zones" }).click();
    await page
      .getByRole("row", { name: /^Hardy in zones/ })
      .getByText("3–8")
      .waitFor();
    await page.getByRole("button", { name: "Undo" }).click();
    await page
      .getByRole("row", { name: /^Hardy in zones/ })
      .getByText("4–7")
      .waitFor();
  });
});

describe("a plant of one's own", () => {
  it("is made like another in a minute; a fault names its field", async () => {
    await page.goto(`${server.url}/plants/new`);
    await page.getByLabel("It is like …").fill("limelight");
    await page
      .getByRole("link", { name: /Limelight/ })
      .first()
      .click();
    await page.getByRole("heading", { name: "Names" }).waitFor();
    await expectAccessible(page);
    await page.getByLabel("Cultivar").fill("'Limelight'");
    await page.getByRole("button", { name: "Add it to my plants" }).click();
    await page
      .getByText(/is already in the dataset/)
      .first()
      .waitFor();
    await page.getByLabel("Cultivar").fill("Porch Lantern");
    await page.getByLabel("Height, low").fill("nonsense");
    await page.getByRole("button", { name: "Add it to my plants" }).click();
    await page.getByText("is not a length").first().waitFor();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("own-height");
    await page.getByLabel("Height, low").fill("2 ft 6 in");
    await page.getByLabel("Height, high").fill("3 ft");
    await page.getByRole("button", { name: "Add it to my plants" }).click();
    await page.getByRole("heading", { level: 1, name: /Porch Lantern/ }).waitFor();
    await page
      .getByRole("row", { name: /^Height/ })
      .getByText("2½–3 ft")
      .waitFor();
    await screenshot(page, "plant-own");
  });

  it("is found among the plants and in a bed", async () => {
    await page.goto(`${server.url}/plants?q=porch lantern`);
    await firstIs(page, "your own");
    await page.goto(server.url);
    await page.getByRole("link", { name: "Clinic entrance garden" }).click();
    await page.getByRole("link", { name: "Walk bed" }).click();
    await page.getByRole("combobox", { name: /Add a plant/ }).fill("porch lantern");
    await page.getByRole("listbox").getByRole("option").filter({ hasText: "Porch Lantern" }).first().waitFor();
    await page.keyboard.press("Enter");
    await page.locator(".plant-row").filter({ hasText: "Porch Lantern" }).waitFor();
    await page.getByText(/^Saved \d/).waitFor();
  });

  it("is edited, deleted, and brought back", async () => {
    await page.goto(`${server.url}/plants?q=porch lantern`);
    await page
      .getByRole("link", { name: /Porch Lantern/ })
      .first()
      .click();
    await page.getByRole("link", { name: "Walk bed" }).waitFor();
    await page.getByRole("link", { name: "Edit" }).click();
    await page.getByLabel("Common names").fill("porch hydrangea");
    await page.getByRole("button", { name: "Save" }).click();
    await page.getByText("porch hydrangea").first().waitFor();
    await page.getByRole("button", { name: /^Delete/ }).click();
    await page.getByText(/was deleted/).waitFor();
    await expectAccessible(page);
    await page.getByRole("button", { name: "Undo" }).click();
    await page.getByRole("heading", { level: 1, name: /Porch Lantern/ }).waitFor();
  });
});

describe("on a phone, and in the dark", () => {
  it.each([
    ["phone", PHONE],
    ["dark", { ...WIDE, colorScheme: "dark" as const }],
    ["dark phone", { ...PHONE, colorScheme: "dark" as const }],
  ])("%s: no violation, nothing wider than the window", async (name, options) => {
    const other = await openPage(browser, options);
    await other.goto(`${server.url}/plants?q=oakleaf hydrangea&kind=shrub&month=7`);
    await rows(other).first().waitFor();
    const filters = other.getByRole("button", { name: /^Filters/ });
    if (await filters.isVisible()) await filters.click();
    await expectAccessible(other);
    await screenshot(other, `plants-${name.replace(" ", "-")}`);
    await other.goto(`${server.url}/plants/quercus-alba`);
    await other.getByRole("img", { name: /drawn to scale/ }).waitFor();
    await expectAccessible(other);
    await screenshot(other, `plant-${name.replace(" ", "-")}`);
    await other.goto(`${server.url}/plants/new?like=quercus-alba`);
    await other.getByRole("heading", { name: "Names" }).waitFor();
    await expectAccessible(other);
    await other.context().close();
  });
});
