// The Nursery page with two thousand lots in a real Chromium: found, filtered, sorted and paged.
import { createClient } from "@libsql/client";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { expectAccessible, openBrowser, openPage } from "../support/browser";
import { startServer, type TestServer } from "../support/server";

const LIMELIGHT = "hydrangea-paniculata-limelight";
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

const soon = <T>(ask: () => T) => expect.poll(ask, { timeout: 10_000 });
const lots = (on: Page) => on.locator("tr.lot");

describe("two thousand lots", () => {
  it("are found, filtered and paged at once", async () => {
    const client = createClient({ url: server.database });
    const taxa = (await client.execute(`SELECT "id", "name" FROM "Taxon" ORDER BY "id" LIMIT 400`)).rows;
    await client.batch(
      Array.from({ length: 2000 }, (_, i) => {
        const taxon = taxa[i % taxa.length];
        const sql = `INSERT INTO "Lot" ("id", "taxonId", "taxonName", "size", "quantity", "reserved", "remarks", "updatedAt") VALUES (?, ?, ?, ?, ?, ?, ?, ?)`;
        return { sql, args: [`many${i}`, taxon?.id ?? "", taxon?.name ?? "", `#${1 + (i % 7)}`, i % 50, i % 2 ? 0 : i % 50, `number ${i}`, new Date().toISOString()] };
      }),
      "write",
    );
    const one = `INSERT INTO "Lot" ("id", "taxonId", "taxonName", "size", "placeId", "quantity", "updatedAt") VALUES (?, ?, ?, ?, ?, ?, ?)`;
    const since = "2026-04-01T00:00:00.000Z";
    await client.batch(
      [
        `INSERT INTO "StockPlace" ("id", "block", "bay", "position") VALUES ('heel', 'heel-in bed', 'A', 0)`,
        { sql: one, args: ["one", LIMELIGHT, "Hydrangea paniculata 'Limelight'", "#5", null, 6, since] },
        { sql: one, args: ["two", LIMELIGHT, "Hydrangea paniculata 'Limelight'", "#7", "heel", 3, since] },
      ],
      "write",
    );
    client.close();
    await page.goto(`${server.url}/nursery`);
    await page.getByText(/^2,002 of 2,002 lots/).waitFor();
    expect(await lots(page).count()).toBe(60);
    await page.getByRole("link", { name: "More lots" }).first().click();
    await page.getByText("Page 2 of 34").first().waitFor();
    await page.getByLabel("Find in the nursery").fill("limelight #5");
    await page.getByText(/^1 of 2,002 lots, 6 plants\.$/).waitFor();
    expect(await lots(page).count()).toBe(1);
    expect(page.url()).toContain("q=limelight");
    await page.getByLabel("Find in the nursery").fill("limelite hydrnga");
    await page.getByText(/^No lot has “limelite hydrnga”\. Names that come near:/).waitFor();
    await page.getByRole("button", { name: "Show all lots" }).click();
    await page.getByLabel("Block").selectOption("heel-in bed");
    await page.getByText(/^1 of 2,002 lots, 3 plants/).waitFor();
    await page.getByLabel("Block").selectOption("all");
    await page.getByLabel("Free plants only").check();
    await page.getByText(/^1,002 of 2,002 lots/).waitFor();
    await page.getByLabel("In order of").selectOption("size");
    await soon(() => page.locator(".lot td[data-label=Size] input").first().inputValue()).toBe("#1");
    await expectAccessible(page);
  });
});
