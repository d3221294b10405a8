// The Nursery screens in a real Chromium: lots added, counted, refused, moved, written off, deleted and brought back; the walk through the places; the count
// on a phone; what is on hand among the plants.
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { database } from "../../lib/server/database";
import { expectAccessible, openBrowser, openPage, PHONE, screenshot, WIDE } from "../support/browser";
import { promised } from "../support/promised";
import { startServer, type TestServer } from "../support/server";

let server: TestServer;
let browser: Browser;
let page: Page;
beforeAll(async () => {
  server = await startServer();
  process.env.DATABASE_URL = server.database;
  browser = await openBrowser();
  page = await openPage(browser);
});
afterAll(async () => {
  await database().$disconnect();
  await browser?.close();
  await server?.stop();
});

/** Asks again until it is so: a machine with other work needs a while. */
const soon = <T>(ask: () => T) => expect.poll(ask, { timeout: 10_000 });
const lots = (on: Page) => on.locator("tr.lot");
const onHand = (on: Page) => on.getByLabel("On hand of Hydrangea paniculata 'Limelight'");

/** Waits until the row has taken a count in: an answer that comes later would be put over what is typed next. */
const free = (on: Page, count: number) => soon(() => on.locator("td[data-label=Free]").first().textContent()).toBe(String(count));

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
    await page.getByRole("link", { name: "Nursery", exact: true }).click();
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
    await soon(() => page.evaluate(() => document.activeElement?.getAttribute("aria-label"))).toContain("Size of Hydrangea");
    expect(await lots(page).textContent()).toContain("not yet");
  });

  it("is edited and counted in place, and is there after a reload", async () => {
    await keep(page, "Size of Hydrangea", "#5");
    await keep(page, "Place of Hydrangea", "yard bay 3");
    await keep(page, "On hand of Hydrangea", "12");
    await keep(page, "Price of Hydrangea", "24.5");
    await soon(() => page.getByLabel("Price of Hydrangea").inputValue()).toBe("$24.50");
    await page.reload();
    expect(await onHand(page).inputValue()).toBe("12");
    expect(await page.getByLabel("Size of Hydrangea").inputValue()).toBe("#5");
    expect(await page.getByLabel("Place of Hydrangea").inputValue()).toBe("Yard, bay 3");
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
    await soon(() => onHand(page).inputValue()).toBe("11");
    await page.reload();
    expect(await onHand(page).inputValue()).toBe("11");
    await keep(page, "On hand of Hydrangea", "12");
    await soon(() => page.getByText(/Changed in another window/).count()).toBe(0);
    await free(page, 12);
  });

  it("keeps a count that did not reach the program in its field, and takes it when it is pressed again", async () => {
    await page.context().setOffline(true);
    await onHand(page).fill("13");
    await onHand(page).press("Enter");
    await page.getByText(/^Not saved: the program does not answer/).waitFor();
    expect(await onHand(page).inputValue()).toBe("13");
    await page.context().setOffline(false);
    await keep(page, "On hand of Hydrangea", "13");
    await soon(() => page.getByText(/^Not saved/).count()).toBe(0);
    await free(page, 13);
    await page.reload();
    expect(await onHand(page).inputValue()).toBe("13");
    await keep(page, "On hand of Hydrangea", "12");
  });

  it("keeps what is being typed when the answer to what was typed before arrives", async () => {
    await free(page, 12);
    await page.route("**/nursery", async (route) => {
      if (route.request().method() === "POST") await new Promise((resolve) => setTimeout(resolve, 700));
      await route.continue();
    });
    const answered = page.waitForResponse((response) => response.request().method() === "POST");
    await onHand(page).fill("14");
    await onHand(page).press("Enter");
    await onHand(page).fill("12");
    await answered;
    await free(page, 14);
    expect(await onHand(page).inputValue()).toBe("12");
    await page.unroute("**/nursery");
    await keep(page, "On hand of Hydrangea", "12");
    await free(page, 12);
  });

  it("prints all lots that were asked for on a sheet of their own", async () => {
    await page.getByRole("link", { name: "Stock sheet" }).click();
    await page.getByRole("heading", { level: 1, name: "Stock sheet" }).waitFor();
    expect(await page.locator(".stock-lines tbody tr").textContent()).toMatch(/Limelight[\s\S]*#5[\s\S]*Yard, bay 3[\s\S]*12/);
    await expectAccessible(page);
    await page.goto(`${server.url}/nursery`);
  });

  it("is deleted and brought back with Undo", async () => {
    await page.getByRole("button", { name: /^Delete Hydrangea/ }).click();
    await page.getByText(/Limelight.*” deleted\./).waitFor();
    await soon(() => lots(page).count()).toBe(0);
    await expectAccessible(page);
    await page.getByRole("button", { name: "Undo" }).click();
    await soon(() => lots(page).count()).toBe(1);
    expect(await onHand(page).inputValue()).toBe("12");
  });

  it("is what the Plants screen shows as on hand, and a new count shows there at once", async () => {
    const found = page.locator(".found tbody tr");
    await page.getByRole("link", { name: "Plants", exact: true }).click();
    await page.getByRole("checkbox", { name: "On hand" }).check();
    await page.waitForURL(/onhand=1/);
    await soon(() => found.count()).toBe(1);
    expect(await found.textContent()).toContain("12 on hand");
    expect(await found.textContent()).toContain("Limelight");
    await expectAccessible(page);
    await page.getByRole("link", { name: "Nursery", exact: true }).click();
    await keep(page, "On hand of Hydrangea", "7");
    await page.getByRole("link", { name: "Plants", exact: true }).click();
    await page.getByRole("checkbox", { name: "On hand" }).check();
    await found.filter({ hasText: "7 on hand" }).waitFor();
    await page.getByRole("button", { name: "Without on hand" }).click();
    await soon(() => found.count()).toBe(60);
  });
});

/** The page of the Limelight lot. */
async function openLot(on: Page): Promise<void> {
  await on.goto(`${server.url}/nursery`);
  await lots(on).filter({ hasText: "‘Limelight’" }).getByRole("link").click();
  await on.getByRole("heading", { name: "History" }).waitFor();
}
const history = (on: Page) => on.locator(".history li");

describe("a lot's own page", () => {
  it("keeps the name of who writes its history", async () => {
    await openLot(page);
    await page.getByLabel("Your name").fill("Ada");
    await page.getByLabel("Your name").press("Enter");
    await page.getByText("Kept on this device.").waitFor();
    expect(await page.evaluate(() => localStorage.getItem("twelvemonth:who"))).toBe("Ada");
    await keep(page, "On hand", "12");
    await history(page)
      .first()
      .filter({ hasText: /, Ada.*Counted: on hand 7 → 12/ })
      .waitFor();
    await keep(page, "Grade", "specimen");
    await keep(page, "Cost each", "9.75");
    await history(page).filter({ hasText: "grade none → “specimen”" }).waitFor();
    expect(await page.getByText("Read as: container, #5.").count()).toBe(1);
    await expectAccessible(page);
  });
  it("moves a part to another place at another size and price, with a line in both histories", async () => {
    const move = page.getByRole("region", { name: "Move" });
    await move.getByLabel("Plants to move").fill("13");
    await move.getByLabel("To", { exact: true }).fill("heel-in bed");
    await move.getByRole("button", { name: "Move the lot" }).click();
    await move.getByText(/Only 12 plants on hand; 13 cannot be moved/).waitFor();
    await move.getByLabel("Plants to move").fill("5");
    await move.getByLabel("Size there").fill("#7");
    await move.getByLabel("Price there").fill("38");
    await move.getByLabel("Why").fill("potted up");
    await move.getByRole("button", { name: "Move this part" }).click();
    await history(page).first().filter({ hasText: "Moved: on hand 12 → 7 (5 plants to Heel-in bed; potted up)" }).waitFor();
    expect(await page.getByLabel("On hand").inputValue()).toBe("7");
    await move.getByRole("link", { name: "5 in Heel-in bed" }).click();
    await history(page).filter({ hasText: "from Yard, bay 3; potted up" }).waitFor();
    expect(await page.getByLabel("Size", { exact: true }).inputValue()).toBe("#7");
    expect(await page.getByLabel("Price each").inputValue()).toBe("$38.00");
    await screenshot(page, "nursery-lot");
  });
  it("writes plants off only for a reason", async () => {
    const form = page.getByRole("region", { name: "Write off" });
    await form.getByLabel("Plants").fill("2");
    await form.getByRole("button", { name: "Write off" }).click();
    await form.getByText("Say why, such as winter kill.").waitFor();
    await form.getByLabel("Reason").fill("deer");
    await form.getByRole("button", { name: "Write off" }).click();
    await history(page).first().filter({ hasText: "Written off 2 plants: on hand 5 → 3 (deer)" }).waitFor();
    await form.getByText("2 written off, 3 left.").waitFor();
    await expectAccessible(page);
  });
  it("names the job when fewer are counted than are promised, and takes the count when it is meant", async () => {
    await promised("Library court", 6);
    await page.goto(`${server.url}/nursery?sort=place`);
    const hand = page.getByLabel("On hand of Hydrangea paniculata 'Limelight', #5");
    await page.getByText("6 promised").waitFor();
    await hand.fill("4");
    await hand.press("Enter");
    await page.getByText("6 plants of this lot promised: 6 to Library court. With only 4 on hand, 2 plants would be missing.").waitFor();
    await expectAccessible(page);
    await page.getByRole("button", { name: "Leave it as it was" }).click();
    await soon(() => hand.inputValue()).toBe("7");
    await hand.fill("4");
    await hand.press("Enter");
    await page.getByRole("button", { name: "Count 4 anyway" }).click();
    await page.getByText("Written. Now short: Library court (2 plants).").waitFor();
    await page.getByText("4 promised").waitFor();
    await page.getByRole("button", { name: /^Delete Hydrangea.*#5/ }).click();
    await page.getByText(/cannot be deleted: 4 to Library court promised/).waitFor();
    await page.getByRole("link", { name: "Changes" }).click();
    await history(page)
      .filter({ hasText: /Ada.*Counted: on hand 7 → 4/ })
      .waitFor();
    await history(page).filter({ hasText: "counted 4: Library court goes short" }).waitFor();
    await expectAccessible(page);
    await page.getByRole("link", { name: "write off" }).click();
    await soon(() => history(page).count()).toBe(1);
  });
});

describe("the places", () => {
  const names = () => page.locator(".walk-name").allTextContents();
  it("are added, renamed, and deleted only when empty", async () => {
    await page.goto(`${server.url}/nursery/places`);
    const add = page.getByRole("region", { name: "Add a place" });
    for (const row of ["1", "2"]) {
      await add.getByLabel("Block, field or yard").fill("North field");
      await add.getByLabel("Row").fill(row);
      await add.getByRole("button", { name: "Add" }).click();
      await page.locator(".walk-name", { hasText: `North field, row ${row}` }).waitFor();
      await soon(() => add.getByLabel("Row").inputValue()).toBe("");
    }
    expect(await names()).toEqual(["Yard, bay 3", "Heel-in bed", "North field, row 1", "North field, row 2"]);
    await page.getByRole("button", { name: "Delete Yard, bay 3" }).click();
    await page.getByText(/Yard, bay 3 is not empty: Hydrangea paniculata 'Limelight' stands there/).waitFor();
    await page.getByRole("button", { name: "Rename Heel-in bed" }).click();
    await page.locator(".walk form").getByLabel("Bay").fill("A");
    await expectAccessible(page);
    await page.locator(".walk").getByRole("button", { name: "Keep" }).click();
    await soon(names).toEqual(["Yard, bay 3", "Heel-in bed, bay A", "North field, row 1", "North field, row 2"]);
    await page.getByRole("button", { name: "Delete North field, row 2" }).click();
    await soon(names).toHaveLength(3);
  });
  it("are put in order by keyboard, by buttons and by dragging, and stay so", async () => {
    const grip = page.getByRole("button", { name: /^Move Yard, bay 3/ });
    await grip.focus();
    await grip.press("ArrowDown");
    await soon(names).toEqual(["Heel-in bed, bay A", "Yard, bay 3", "North field, row 1"]);
    await page.getByRole("button", { name: "North field, row 1 earlier on the walk" }).click();
    await soon(names).toEqual(["Heel-in bed, bay A", "North field, row 1", "Yard, bay 3"]);
    const [from, to] = [await grip.boundingBox(), await page.locator(".walk > li").first().boundingBox()];
    if (!from || !to) throw new Error("no list");
    await page.mouse.move(from.x + 10, from.y + 10);
    await page.mouse.down();
    await page.mouse.move(from.x + 10, to.y + 30, { steps: 4 });
    await page.mouse.move(from.x + 10, to.y + 4, { steps: 4 });
    await page.mouse.up();
    await page.getByText("Yard, bay 3 is now 1 of 3. Kept.").waitFor();
    await soon(names).toEqual(["Yard, bay 3", "Heel-in bed, bay A", "North field, row 1"]);
    await page.reload();
    expect(await names()).toEqual(["Yard, bay 3", "Heel-in bed, bay A", "North field, row 1"]);
    await expectAccessible(page);
    await screenshot(page, "nursery-places");
  });
});

describe("counting on a phone", () => {
  it("goes from lot to lot in walking order; a count without a signal waits and is sent", async () => {
    const phone = await openPage(browser, PHONE);
    await phone.goto(`${server.url}/nursery`);
    await phone.getByRole("link", { name: "Count", exact: true }).click();
    await phone.getByText("Nothing to count here").waitFor();
    await expectAccessible(phone);
    await phone.goto(`${server.url}/nursery/count?since=2100-01-01`);
    await phone.getByText("1 of 2", { exact: true }).waitFor();
    await expectAccessible(phone);
    await screenshot(phone, "nursery-count");
    const box = await phone.getByRole("button", { name: "4 is right" }).boundingBox();
    expect(box?.height).toBeGreaterThan(56);
    expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThan(844);
    await phone.context().setOffline(true);
    await phone.getByRole("button", { name: "One more" }).click();
    await phone.getByRole("button", { name: "Count 5" }).click();
    await phone.getByText("1 count waits here for a signal; nothing is lost").waitFor();
    await phone.getByText("Heel-in bed, bay A").waitFor();
    await phone.context().setOffline(false);
    await phone.getByRole("button", { name: "3 is right" }).click();
    await phone.getByText("2 of 2 lots counted.").waitFor();
    await phone.getByText("All counts are written").waitFor();
    await phone.getByRole("button", { name: "Back" }).click();
    await phone.getByRole("button", { name: "Back" }).click();
    await phone.getByLabel("Plants counted").fill("1");
    await phone.getByRole("button", { name: "Count 1" }).click();
    await phone.getByText(/counted 1: 4 plants of this lot promised: 4 to Library court/).waitFor();
    await expectAccessible(phone);
    await phone.getByRole("button", { name: "Count it again" }).click();
    await phone.getByRole("button", { name: "5 is right" }).click();
    await phone.getByText("All counts are written").waitFor();
    await phone.getByRole("link", { name: "Nursery", exact: true }).last().click();
    await soon(() => phone.getByLabel("On hand of Hydrangea paniculata 'Limelight', #5").inputValue()).toBe("5");
    await phone.context().close();
  });

  it("opens anew without a signal, with what was counted and waits", async () => {
    const phone = await openPage(browser, PHONE);
    const address = `${server.url}/nursery/count?since=2100-01-01`;
    await phone.goto(address);
    const isKept = () => phone.evaluate(async () => (await (await caches.open("twelvemonth-pages-1")).keys()).length);
    await soon(isKept).toBe(1);
    await phone.context().setOffline(true);
    await phone.goto(address);
    await phone.getByRole("button", { name: "One more" }).click();
    await phone.getByRole("button", { name: "Count 6" }).click();
    await phone.reload();
    await phone.getByText("1 count waits here for a signal; nothing is lost").waitFor();
    await phone.getByText("2 of 2", { exact: true }).waitFor();
    await phone.context().setOffline(false);
    await phone.getByText("All counts are written").waitFor();
    await phone.context().close();
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
    await other
      .getByRole("button", { name: /^The count of Hydrangea/ })
      .first()
      .click();
    await onHand(other).first().fill("-1");
    await onHand(other).first().press("Enter");
    await other.getByText("There cannot be fewer than 0 plants on hand.").waitFor();
    await expectAccessible(other);
    await screenshot(other, `nursery-${name}`);
    await lots(other).first().getByRole("link").click();
    await other.getByRole("heading", { name: "History" }).waitFor();
    await expectAccessible(other);
    await other.goto(`${server.url}/nursery/places`);
    await expectAccessible(other);
    await other.goto(`${server.url}/nursery/count?since=2100-01-01`);
    await other.getByText("1 of 2", { exact: true }).waitFor();
    await expectAccessible(other);
    await other.context().close();
  });
});
