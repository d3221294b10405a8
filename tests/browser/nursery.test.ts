// The Nursery screen in a real Chromium: lots added, counted, refused, deleted and brought back; what is on hand among the plants.
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

const lots = (on: Page) => on.locator("tr.lot");
const onHand = (on: Page) => on.getByLabel("On hand of Hydrangea paniculata 'Limelight'");

/** Types into a field, keeps it with Enter, and waits until the server has answered. */
async function keep(on: Page, label: string, text: string): Promise<void> {
  const answered = on.waitForResponse((response) => response.request().method() === "POST");
  await on.getByLabel(label).fill(text);
  await on.getByLabel(label).press("Enter");
  expect((await answered).ok()).toBe(true);
}

describe("the firm's stock", () => {
  it("is reached from any page and says the first step while it is empty", async () => {
    await page.goto(server.url);
    await page.getByRole("link", { name: "Nursery" }).click();
    await page.getByRole("heading", { level: 1, name: "Nursery" }).waitFor();
    await page.getByText(/^No lots yet\./).waitFor();
    await expectAccessible(page);
  });

  it("takes a lot by a misspelt name, with its size asked for next", async () => {
    const search = page.getByRole("combobox", { name: /Add a lot/ });
    await search.fill("limelite hydranga");
    await page.getByRole("option").filter({ hasText: "‘Limelight’" }).first().waitFor();
    await expectAccessible(page);
    await search.press("Enter");
    await lots(page).filter({ hasText: "‘Limelight’" }).waitFor();
    await expect.poll(() => page.evaluate(() => document.activeElement?.getAttribute("aria-label"))).toContain("Size of Hydrangea");
    expect(await lots(page).textContent()).toContain("not yet");
  });

  it("is edited and counted in place, and is there after a reload", async () => {
    await keep(page, "Size of Hydrangea", "#5");
    await keep(page, "Place of Hydrangea", "yard bay 3");
    await keep(page, "On hand of Hydrangea", "12");
    await keep(page, "Price of Hydrangea", "24.5");
    await expect.poll(() => page.getByLabel("Price of Hydrangea").inputValue()).toBe("$24.50");
    await page.reload();
    expect(await onHand(page).inputValue()).toBe("12");
    expect(await page.getByLabel("Size of Hydrangea").inputValue()).toBe("#5");
    expect(await page.getByLabel("Place of Hydrangea").inputValue()).toBe("yard bay 3");
    expect(await page.getByLabel("Price of Hydrangea").inputValue()).toBe("$24.50");
    expect(await lots(page).textContent()).toMatch(/20\d\d/);
    await expectAccessible(page);
    await screenshot(page, "nursery");
  });

  it("refuses a negative count with the reason and keeps the old one", async () => {
    await onHand(page).fill("-3");
    await onHand(page).press("Enter");
    await page.getByText("There cannot be fewer than 0 plants on hand.").waitFor();
    await expectAccessible(page);
    await onHand(page).press("Escape");
    expect(await onHand(page).inputValue()).toBe("12");
    await page.reload();
    expect(await onHand(page).inputValue()).toBe("12");
  });

  it("does not write a count over one made in another window", async () => {
    const other = await openPage(browser, PHONE);
    await other.goto(`${server.url}/nursery`);
    await other.getByRole("heading", { level: 1, name: "Nursery" }).waitFor();
    await keep(other, "On hand of Hydrangea", "11");
    await other.context().close();
    await onHand(page).fill("40");
    await onHand(page).press("Enter");
    // Leaving the field asks once more; that must not pass as a second, knowing count.
    await onHand(page).press("Tab");
    await page.getByText(/Changed in another window meanwhile \(11 on hand there\)/).waitFor();
    expect(await onHand(page).inputValue()).toBe("11");
    await page.reload();
    expect(await onHand(page).inputValue()).toBe("11");
    await keep(page, "On hand of Hydrangea", "12");
    await expect.poll(() => page.getByText(/Changed in another window/).count()).toBe(0);
  });

  it("keeps a count that did not reach the program in its field, and takes it when it is pressed again", async () => {
    await page.context().setOffline(true);
    await onHand(page).fill("13");
    await onHand(page).press("Enter");
    await page.getByText(/^Not saved: the program does not answer/).waitFor();
    expect(await onHand(page).inputValue()).toBe("13");
    await page.context().setOffline(false);
    await keep(page, "On hand of Hydrangea", "13");
    await expect.poll(() => page.getByText(/^Not saved/).count()).toBe(0);
    await page.reload();
    expect(await onHand(page).inputValue()).toBe("13");
    await keep(page, "On hand of Hydrangea", "12");
  });

  it("is deleted and brought back with Undo", async () => {
    await page.getByRole("button", { name: /^Delete Hydrangea/ }).click();
    await page.getByText(/Limelight.*” deleted\./).waitFor();
    await expect.poll(() => lots(page).count()).toBe(0);
    await expectAccessible(page);
    await page.getByRole("button", { name: "Undo" }).click();
    await expect.poll(() => lots(page).count()).toBe(1);
    expect(await onHand(page).inputValue()).toBe("12");
  });

  it("is what the Plants screen shows as on hand, and a new count shows there at once", async () => {
    const found = page.locator(".found tbody tr");
    await page.getByRole("link", { name: "Plants", exact: true }).click();
    await page.getByRole("checkbox", { name: "On hand" }).check();
    await page.waitForURL(/onhand=1/);
    await expect.poll(() => found.count()).toBe(1);
    expect(await found.textContent()).toContain("12 on hand");
    expect(await found.textContent()).toContain("Limelight");
    await expectAccessible(page);
    await page.getByRole("link", { name: "Nursery" }).click();
    await keep(page, "On hand of Hydrangea", "7");
    await page.getByRole("link", { name: "Plants", exact: true }).click();
    await page.getByRole("checkbox", { name: "On hand" }).check();
    await found.filter({ hasText: "7 on hand" }).waitFor();
    await page.getByRole("button", { name: "Without on hand" }).click();
    await expect.poll(() => found.count()).toBe(60);
  });
});

describe("on a phone, and in the dark", () => {
  it.each([
    ["phone", PHONE],
    ["dark", { ...WIDE, colorScheme: "dark" as const }],
  ])("%s: no violation, nothing wider than the window", async (name, options) => {
    const other = await openPage(browser, options);
    await other.goto(`${server.url}/nursery`);
    await lots(other).first().waitFor();
    await other.getByRole("button", { name: /^The count of Hydrangea/ }).click();
    await onHand(other).fill("-1");
    await onHand(other).press("Enter");
    await other.getByText("There cannot be fewer than 0 plants on hand.").waitFor();
    await expectAccessible(other);
    await screenshot(other, `nursery-${name}`);
    await other.context().close();
  });
});
