// Suppliers and their lists in a real Chromium: a CSV and a workbook read, a column corrected, a name confirmed, accepted; a second list shows what changed.
import ExcelJS from "exceljs";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { expectAccessible, openBrowser, openPage, PHONE, screenshot, WIDE } from "../support/browser";
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

const FIRST = `Plant,Size,A,B
Quercus bicolor,"2"" BB",180,12
Ilex glabra 'Shamrock',#3,16,40
Ilex glabra 'Shamrock',#5,29,18
Bewildering holly thing,#3,11,7
`;

/** Chooses a list file on the import screen and waits until it is read. */
async function give(name: string, buffer: Buffer): Promise<void> {
  await page.getByLabel(/Drop the availability list/).setInputFiles({ name, mimeType: "application/octet-stream", buffer });
  await page.getByRole("heading", { name: "Names", exact: true }).waitFor();
  await page.locator(".name-row").first().waitFor();
}
const openImport = async (): Promise<void> => {
  await page
    .getByRole("link", { name: /^Read a list/ })
    .first()
    .click();
  await page.getByLabel(/Drop the availability list/).waitFor();
};

describe("suppliers", () => {
  it("are reached from the nursery, say the first step, and are added with their terms", async () => {
    await page.goto(`${server.url}/nursery`);
    await page.getByRole("link", { name: "Suppliers" }).click();
    await page.getByText(/^No suppliers yet\./).waitFor();
    await expectAccessible(page);
    await page.getByLabel("Name", { exact: true }).fill("Invented growers A");
    await page.getByLabel("Least order $").fill("lots");
    await page.getByRole("button", { name: "Add the supplier" }).click();
    await page.getByText("An amount such as 500.").waitFor();
    await page.getByLabel("Least order $").fill("500");
    await page.getByRole("button", { name: "Add the supplier" }).click();
    await page.getByRole("heading", { level: 1, name: "Invented growers A" }).waitFor();
    await page.getByText(/^Nothing on offer yet\./).waitFor();
    await expectAccessible(page);
  });

  it("have a CSV list read: a column corrected, a name set, nothing written before it is accepted", async () => {
    await openImport();
    await give("first.csv", Buffer.from(FIRST));
    await expectAccessible(page);
    await page.getByLabel("B", { exact: true }).selectOption({ label: "quantity" });
    await page.getByLabel("A", { exact: true }).selectOption({ label: "price" });
    expect(await page.getByRole("button", { name: "Accept the list" }).isDisabled()).toBe(true);
    await page.getByText(/^Columns were changed: read the list again/).waitFor();
    await page.getByRole("button", { name: "Read again with these columns" }).click();
    await page.getByRole("button", { name: "Read again with these columns" }).waitFor({ state: "detached" });
    await page.getByText(/4 lines, of these 3 with a sure name/).waitFor();
    await page.getByRole("button", { name: "Another plant for Bewildering holly thing" }).click();
    await page.getByRole("combobox", { name: /What is/ }).fill("blue princess holly");
    await page.locator(".hits .hit").first().waitFor();
    await page.getByRole("combobox", { name: /What is/ }).press("Enter");
    await page.locator(".name-row.settled").waitFor();
    await expectAccessible(page);
    await screenshot(page, "suppliers-import");
    await page.getByText("The first list of this supplier: 4 lots.").waitFor();
    await page.getByRole("button", { name: "Accept the list" }).click();
    await page.getByText(/4 lots added/).waitFor();
    await expectAccessible(page);
    await page.getByRole("button", { name: "See the lots" }).click();
    await page.getByText("4 of 4 lots").waitFor();
    expect(await page.locator(".supplier-lots").textContent()).toContain("$180.00");
    await expectAccessible(page);
  });

  it("show what a second list, a workbook, changes, and know the name that was learned", async () => {
    const book = new ExcelJS.Workbook();
    const sheet = book.addWorksheet("Winter");
    sheet.addRows([
      ["Winter list"],
      ["Plant", "#3", "#5", "Notes"],
      ["Ilex glabra 'Shamrock'", 25, 18, ""],
      ["BEWILDERING HOLLY THING", 9, null, ""],
      ["Hydr pan Limelt", null, 30, "new"],
      ["Zzyzx gibberish", 4, null, ""],
    ]);
    book.addWorksheet("Old", { state: "hidden" }).addRow(["Acer rubrum"]);
    await openImport();
    await give("second.xlsx", Buffer.from(await book.xlsx.writeBuffer()));
    await page.getByText(/hidden sheet “Old” was left out/).waitFor();
    await page.getByText(/gone 1, fewer 1, more 1,/).waitFor();
    await page.getByText("Fewer: 1").click();
    await page.getByText("40 → 25").waitFor();
    await expectAccessible(page);
    await page.getByRole("button", { name: "Accept the list" }).click();
    await page.getByText(/1 gone/).waitFor();
    await page.getByRole("button", { name: "See the lots" }).click();
    await page.getByRole("heading", { name: "Lines without a plant" }).waitFor();
    await page.getByRole("button", { name: "Zzyzx gibberish is …" }).click();
    await page.getByRole("combobox", { name: /What is/ }).fill("red maple");
    await page.locator(".hits .hit").first().waitFor();
    await page.getByRole("combobox", { name: /What is/ }).press("Enter");
    await page.getByText(/1 lot added, and the name is known/).waitFor();
    await expectAccessible(page);
  });

  it("leave nothing of a cancelled list, and say what is wrong with a file", async () => {
    await openImport();
    await page
      .getByLabel(/Drop the availability list/)
      .setInputFiles({ name: "old.xls", mimeType: "application/octet-stream", buffer: Buffer.from([0xd0, 0xcf, 0x11, 0xe0, 1, 2]) });
    await page.getByText(/old \.xls workbook/).waitFor();
    await give("third.csv", Buffer.from(FIRST.replace("40", "39").replace("Bewildering", "Dubious")));
    await page.getByRole("button", { name: "Cancel" }).click();
    await page.getByLabel(/Drop the availability list/).waitFor();
    await page.getByRole("link", { name: /^Back to/ }).click();
    await page.getByText("6 of 6 lots").waitFor();
  });

  it.each([
    ["phone", PHONE],
    ["dark", { ...WIDE, colorScheme: "dark" as const }],
  ])("%s: no violation on any of the screens", async (name, options) => {
    const other = await openPage(browser, options);
    await other.goto(`${server.url}/nursery/suppliers`);
    await expectAccessible(other);
    await other.getByRole("link", { name: "Invented growers A", exact: true }).click();
    await other.getByRole("heading", { name: "On offer" }).waitFor();
    await expectAccessible(other);
    await screenshot(other, `suppliers-${name}`);
    await other.getByRole("link", { name: "Read a list" }).click();
    await other.getByLabel(/Drop the availability list/).setInputFiles({ name: "first.csv", mimeType: "text/csv", buffer: Buffer.from(FIRST.replace("Bewildering", "Dubious")) });
    await other.locator(".name-row").first().waitFor();
    await expectAccessible(other);
    await other.context().close();
  });

  it("are deleted, and brought back with their lots", async () => {
    await page.getByRole("button", { name: "Delete Invented growers A" }).click();
    await page.getByText("Invented growers A deleted, with its lots.").waitFor();
    await page.getByRole("button", { name: "Undo" }).click();
    await page.getByRole("link", { name: "Invented growers A", exact: true }).waitFor();
  });
});
