// The pull list on a phone in a real Chromium: with and without a signal, two phones on one line, and what comes back to the office.
import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { expectAccessible, openBrowser, openPage, PHONE, screenshot, WIDE } from "../support/browser";
import { startServer, type TestServer } from "../support/server";

let server: TestServer;
let browser: Browser;
let phone: Page;
let office: Page;
let jobPath = "";
beforeAll(async () => {
  server = await startServer({ demo: true });
  browser = await openBrowser();
  office = await openPage(browser);
  await office.goto(server.url);
  await office.getByRole("link", { name: "Clinic entrance garden" }).first().click();
  await office.waitForURL(/\/jobs\/\w+$/);
  jobPath = new URL(office.url()).pathname;
  phone = await openPage(browser, PHONE);
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
});

const field = () => `${server.url}${jobPath}/pull/field`;
const signal = (on: Page) => on.locator(".field-signal");
const line = (on: Page, name: RegExp) => on.locator(".field-line").filter({ hasText: name });
const cut = (page: Page, off: boolean) => (page.context() as BrowserContext).setOffline(off);

describe("the pull list on a phone", () => {
  it("shows the plants by where they stand, in large targets, and says that all is with the office", async () => {
    await phone.goto(field());
    await line(phone, /Palibin/).waitFor();
    await signal(phone).filter({ hasText: "All is with the office" }).waitFor();
    await expectAccessible(phone);
    const box = await line(phone, /Palibin/)
      .getByRole("button")
      .boundingBox();
    expect(box?.height ?? 0).toBeGreaterThan(60);
    await screenshot(phone, "field-phone");
  });

  it("records a whole line with two taps, and a correction", async () => {
    await line(phone, /Palibin/)
      .getByRole("button")
      .click();
    await expectAccessible(phone);
    await phone.getByRole("button", { name: "Pulled 3" }).click();
    await line(phone, /Palibin/)
      .filter({ hasText: "3 pulled" })
      .waitFor();
    await line(phone, /Palibin/)
      .getByRole("button")
      .click();
    await phone.getByRole("button", { name: /Take back 1 pulled/ }).click();
    await phone.getByRole("button", { name: "Close" }).click();
    await line(phone, /Palibin/)
      .filter({ hasText: "2 pulled" })
      .waitFor();
    await signal(phone).filter({ hasText: "All is with the office" }).waitFor();
  });

  it("opens anew and works with no signal, and sends everything when it is back", async () => {
    await phone.evaluate(async () => {
      await navigator.serviceWorker.ready;
      for (let i = 0; i < 100 && !(await caches.match(location.pathname)); i++) await new Promise((resolve) => setTimeout(resolve, 100));
    });
    await cut(phone, true);
    await phone.reload();
    await line(phone, /Rozanne/).waitFor();
    await signal(phone).filter({ hasText: "No signal" }).waitFor();
    await line(phone, /Rozanne/)
      .getByRole("button")
      .click();
    await phone.getByRole("button", { name: "One fewer" }).click();
    await phone.getByRole("button", { name: "Pulled 8" }).click();
    await phone.getByRole("button", { name: /^Short 1/ }).click();
    await signal(phone).filter({ hasText: "2 changes kept on this phone" }).waitFor();
    await phone.reload();
    await line(phone, /Rozanne/)
      .filter({ hasText: "8 pulled, 1 short" })
      .waitFor();
    await screenshot(phone, "field-no-signal");
    await cut(phone, false);
    await signal(phone).filter({ hasText: "All is with the office" }).waitFor({ timeout: 30_000 });
  });

  it("keeps the work of two phones on one line and shows the conflict to both and to the office", async () => {
    const other = await openPage(browser, PHONE);
    await other.goto(field());
    await line(other, /Caradonna/).waitFor();
    await cut(phone, true);
    await line(phone, /Caradonna/)
      .getByRole("button")
      .click();
    for (let i = 0; i < 6; i++) await phone.getByRole("button", { name: "One fewer" }).click();
    await phone.getByRole("button", { name: "Pulled 5" }).click();
    await phone.getByRole("button", { name: "Close" }).click();
    await line(other, /Caradonna/)
      .getByRole("button")
      .click();
    await other.getByRole("button", { name: "Pulled 11" }).click();
    await line(other, /Caradonna/)
      .filter({ hasText: "11 pulled" })
      .waitFor();
    await cut(phone, false);
    await line(phone, /Caradonna/)
      .filter({ hasText: "16 pulled" })
      .filter({ hasText: /Two people worked/ })
      .waitFor({ timeout: 30_000 });
    await office.goto(`${server.url}${jobPath}/shorts`);
    await office.getByRole("heading", { name: "Two people on one line" }).waitFor();
    await office.getByRole("button", { name: "It is right" }).click();
    await office.getByRole("heading", { name: "Two people on one line" }).waitFor({ state: "detached" });
    await other.context().close();
  });
});

describe("what is short, in the office", () => {
  it("names what the bed loses, and ranks what could stand there instead", async () => {
    await office.goto(`${server.url}${jobPath}/shorts`);
    const card = office.locator(".short-card").filter({ hasText: "Rozanne" });
    await card.getByText(/year score falls from \d+ to \d+/).waitFor();
    expect(await card.locator("li").count()).toBeGreaterThan(2);
    await expectAccessible(office);
    await screenshot(office, "shorts");
  });
  it("puts an accepted substitute into the bed, whose year is that of its new plants", async () => {
    const card = office.locator(".short-card").filter({ hasText: "Rozanne" });
    await card.getByRole("button", { name: "Put 1 in" }).first().click();
    await office.getByText(/^Nothing is short/).waitFor();
    await office.goto(`${server.url}${jobPath}`);
    await office
      .getByRole("link", { name: /Entrance bed/ })
      .first()
      .click();
    await office
      .locator("tr")
      .filter({ hasText: /Rozanne/ })
      .first()
      .waitFor();
    await office
      .getByText(/instead of Geranium/)
      .first()
      .waitFor({ state: "attached" });
  });
  it("reads on a phone", async () => {
    const small = await openPage(browser, PHONE);
    await small.goto(`${server.url}${jobPath}/shorts`);
    await expectAccessible(small);
    await small.context().close();
    await office.setViewportSize(WIDE.viewport ?? { width: 1280, height: 900 });
  });
});

describe("a job that is sold", () => {
  it("is pulled by place in walking order, and what is pulled leaves the stock", async () => {
    await office.goto(`${server.url}${jobPath}/stock`);
    await office.getByRole("button", { name: /^Sell and reserve/ }).click();
    await office
      .locator(".stock-answer")
      .getByText(/^Sold\./)
      .waitFor();
    await phone.goto(field());
    await phone.getByRole("heading", { level: 2 }).filter({ hasText: "North field" }).first().waitFor();
    const places = await phone.getByRole("heading", { level: 2 }).allTextContents();
    expect(places.findIndex((place) => place.startsWith("Not reserved"))).toBe(places.length - 1);
    const redbud = line(phone, /Cercis/);
    expect(await redbud.textContent()).toMatch(/in ball/);
    await redbud.getByRole("button").click();
    await expectAccessible(phone);
    await phone.getByRole("button", { name: "Pulled 1" }).click();
    await redbud.filter({ hasText: "1 pulled" }).waitFor();
    await signal(phone).filter({ hasText: "All is with the office" }).waitFor();
    await screenshot(phone, "field-sold");
    // A tag's code opens its line.
    const id = await office.evaluate(async (path) => {
      const list = (await (await fetch(path)).json()) as { stops: { lines: { lineId: string; taxon: { botanical: string } }[] }[] };
      return list.stops.flatMap((stop) => stop.lines).find((one) => one.taxon.botanical.startsWith("Syringa"))?.lineId ?? "";
    }, `${jobPath}/pull/field/data`);
    await phone.goto("about:blank");
    await phone.goto(`${field()}#${encodeURIComponent(id)}`);
    await phone.getByRole("dialog").filter({ hasText: "Palibin" }).waitFor();
    await office.goto(`${server.url}/nursery/changes`);
    await office
      .getByText(/Cercis canadensis/)
      .first()
      .waitFor();
  });
});
