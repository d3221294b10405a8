// Plants for a job in a real Chromium: lots proposed, one chosen instead, stock that changes meanwhile, the job sold, plants released, and the rest bought.
import type { Browser, Locator, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { database } from "../../lib/server/database";
import { expectAccessible, openBrowser, openPage, PHONE, screenshot, WIDE } from "../support/browser";
import { startServer, type TestServer } from "../support/server";

let server: TestServer;
let browser: Browser;
let page: Page;
let jobUrl: string;
beforeAll(async () => {
  server = await startServer({ demo: true });
  process.env.DATABASE_URL = server.database;
  await database().supplier.create({ data: { id: "valley", name: "Invented Growers B", contact: "555-0101", minimumCents: 50_000, multiple: 5, leadDays: 14 } });
  const job = await database().job.findFirst({ where: { demo: true } });
  jobUrl = `${server.url}/jobs/${job?.id}`;
  browser = await openBrowser();
  page = await openPage(browser);
});
afterAll(async () => {
  await database().$disconnect();
  await browser?.close();
  await server?.stop();
});

const group = (name: RegExp): Locator => page.locator("tbody.stock-group").filter({ hasText: name });
const told = (): Locator => page.locator(".stock-answer");

describe("the plants of a job", () => {
  it("are shown with the lots that could serve them, what is short and why, and what they cost", async () => {
    await page.goto(`${jobUrl}/stock`);
    await page.getByRole("heading", { level: 1, name: "Plants for this job" }).waitFor();
    expect(await group(/Palibin/).textContent()).toMatch(/Yard, bay 2.*3.*\$64\.00.*\$192\.00.*proposed/);
    expect(await group(/Caradonna/).textContent()).toContain("3 plants short. Only 8 free");
    expect(await group(/Monlo/).textContent()).toContain("no price");
    expect(await page.locator("main").textContent()).toContain("Plants only, at list price.");
    expect(await page.locator("main").textContent()).toMatch(/Without a price, not in the sum: 4 Physocarpus/);
    await expectAccessible(page);
    await screenshot(page, "stock");
  });

  it("follow the planting date and the sizes that the job allows", async () => {
    const red = group(/Cardinal/);
    expect(await red.textContent()).toMatch(/In other sizes: 6 of #5/);
    await page.getByLabel("Sizes may be one step up or down").check();
    await red.getByText("plants short").waitFor({ state: "detached" });
    expect(await red.textContent()).toMatch(/#5, 1 size up/);
    await page.getByLabel("Planting begins").fill("2020-04-01");
    await page.getByLabel("Planting begins").press("Enter");
    await group(/Gerwat/)
      .getByText(/Not ready by the planting date/)
      .waitFor();
    await page.getByLabel("Planting begins").fill("");
    await page.getByLabel("Planting begins").press("Enter");
    await group(/Gerwat/)
      .getByText("proposed")
      .waitFor();
  });

  it("take another lot with one press, also with the keyboard, and go back to the proposal", async () => {
    const redbud = group(/Cercis/);
    expect(await redbud.locator(".lot-where").textContent()).toContain("North field, row 3");
    await redbud.locator("summary").focus();
    await page.keyboard.press("Enter");
    await redbud.getByRole("link", { name: /^Take Yard, heel-in bed/i }).focus();
    await page.keyboard.press("Enter");
    await redbud.getByText("chosen", { exact: true }).waitFor();
    expect(await redbud.locator(".lot-where").textContent()).toMatch(/heel-in bed/i);
    await redbud.getByRole("link", { name: /^Back to the proposal/ }).click();
    await redbud.getByText("proposed", { exact: true }).waitFor();
  });

  it("are not reserved when somebody took them meanwhile: the words say which, and the next press goes through", async () => {
    const lot = await database().lot.findFirst({ where: { taxonName: { contains: "Palibin" } } });
    await database().lot.update({ where: { id: lot?.id ?? "" }, data: { quantity: 1 } });
    await page.getByRole("button", { name: /^Reserve Syringa/ }).click();
    await told()
      .getByText(/Palibin.*3 wanted, only 1 free now.*Nothing was reserved/)
      .waitFor();
    await group(/Palibin/)
      .getByText("2 plants short.")
      .waitFor();
    await page.getByRole("button", { name: /^Reserve Syringa/ }).click();
    await told().getByText("1 plant reserved.").waitFor();
    await expectAccessible(page);
  });
});

describe("selling", () => {
  it("reserves all that is proposed in one press and says what is still to be found", async () => {
    await page.getByRole("button", { name: /^Sell and reserve/ }).click();
    await told()
      .getByText(/^Sold\. \d+ plants reserved\. \d+ plants still to be found/)
      .waitFor();
    await page.locator(".stage-line li[aria-current]", { hasText: "Sold" }).waitFor();
    await page.reload();
    await group(/Walker/)
      .getByText("reserved", { exact: true })
      .waitFor();
    await expectAccessible(page);
    await screenshot(page, "stock-sold");
  });

  it("is followed by stages with a warning where plants are missing, and goes back only with a reason", async () => {
    await page.getByRole("button", { name: "Plants reserved" }).click();
    await page.locator(".stage-line li[aria-current]", { hasText: "Reserved" }).waitFor();
    await page.getByText("Go back", { exact: true }).first().click();
    await page.getByRole("button", { name: "Go back" }).click();
    await page.getByText(/^Say why it goes back/).waitFor();
    await page.getByLabel("Why it goes back").fill("client put it off");
    await page.getByRole("button", { name: "Go back" }).click();
    await page.locator(".stage-line li[aria-current]", { hasText: "Sold" }).waitFor();
    await page.getByText(/Went back.*client put it off/).waitFor();
  });

  it("can be released plant by plant", async () => {
    await page.getByRole("button", { name: /^Release Nepeta/ }).click();
    await told().getByText("7 plants released and free again.").waitFor();
    await group(/Walker/)
      .getByText("proposed", { exact: true })
      .waitFor();
  });
});

describe("the purchase list", () => {
  it("takes what is short to a supplier's order and says what misses to the least order", async () => {
    await page.goto(`${jobUrl}/stock/purchase`);
    await page.getByText(/^Nothing to buy yet\./).waitFor();
    await page.getByRole("button", { name: /^Put Salvia/ }).click();
    await told()
      .getByText(/3 plants of Salvia.*put on the order to Invented Growers B/)
      .waitFor();
    const order = page.locator("section.order");
    await order.getByText("2 more than wanted").waitFor();
    await order.getByText(/^\$500\.00 below the least order/).waitFor();
    await expectAccessible(page);
    await screenshot(page, "purchase");
  });

  it("and the plants of the job work on a phone and in the dark", async () => {
    for (const [options, name] of [
      [PHONE, "stock-phone"],
      [{ ...WIDE, colorScheme: "dark" as const }, "stock-dark"],
    ] as const) {
      const other = await openPage(browser, options);
      for (const path of ["/stock", "/stock/purchase"]) {
        await other.goto(`${jobUrl}${path}`);
        await other.getByRole("heading", { level: 1 }).waitFor();
        await expectAccessible(other);
        await screenshot(other, `${name}${path.replaceAll("/", "-")}`);
      }
      await other.context().close();
    }
  });
});
