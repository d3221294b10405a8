import { mkdirSync } from "node:fs";
import path from "node:path";
import AxeBuilder from "@axe-core/playwright";
import { type Browser, type BrowserContextOptions, chromium, type Page } from "playwright-core";
import { expect } from "vitest";

const SHOTS = path.resolve(import.meta.dirname, "../../test-results/screens");

export const WIDE: BrowserContextOptions = { viewport: { width: 1280, height: 900 } };
export const PHONE: BrowserContextOptions = { viewport: { width: 390, height: 844 }, deviceScaleFactor: 2, hasTouch: true, isMobile: true };

/** The Chromium that npm test found (CHROMIUM_PATH). */
export function openBrowser(): Promise<Browser> {
  return chromium.launch({
    executablePath: process.env.CHROMIUM_PATH ?? "/usr/bin/chromium",
    args: ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
  });
}

/** A page that fails the test on a script error or a request to anywhere but the server. */
export async function openPage(browser: Browser, options: BrowserContextOptions = WIDE): Promise<Page> {
  const context = await browser.newContext({ ...options, locale: "en-US", timezoneId: "America/New_York" });
  context.setDefaultTimeout(15_000);
  const page = await context.newPage();
  page.on("pageerror", (error) => {
    throw error;
  });
  page.on("request", (request) => {
    const { hostname, protocol } = new URL(request.url());
    if (protocol.startsWith("http") && hostname !== "127.0.0.1") throw new Error(`The page asked ${request.url()}: nothing may leave this machine.`);
  });
  return page;
}

export async function screenshot(page: Page, name: string): Promise<void> {
  mkdirSync(SHOTS, { recursive: true });
  await page.screenshot({ path: path.join(SHOTS, `${name}.png`), fullPage: true });
}

/** No axe violation of any kind, and nothing wider than the window. */
export async function expectAccessible(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map((v) => `${v.id}: ${v.nodes.map((n) => n.html.slice(0, 160)).join(" | ")}`)).toEqual([]);
  const overflow = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  expect(overflow, "the page is wider than the window").toBeLessThanOrEqual(0);
}

/** Waits until the bed says that it is saved. */
export async function saved(page: Page): Promise<void> {
  await page.waitForFunction(() => !localStorage.getItem(`twelvemonth:bed:${location.pathname.split("/").pop()}`));
  await page.getByText(/^Saved \d/).waitFor();
}
