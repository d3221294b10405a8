// The papers of the demo job in a real Chromium: schedule, pull list, dig list, tags and loads, on screen, on the phone and as files.
import { readFileSync } from "node:fs";
import jsQR from "jsqr";
import type { Browser, Page } from "playwright-core";
import { readSheet } from "read-excel-file/node";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { expectAccessible, openBrowser, openPage, PHONE, screenshot } from "../support/browser";
import { pdfPages, plainText } from "../support/pdf-read";
import { startServer, type TestServer } from "../support/server";

let server: TestServer;
let browser: Browser;
let page: Page;
let job = "";
beforeAll(async () => {
  server = await startServer({ demo: true });
  browser = await openBrowser();
  page = await openPage(browser);
  await page.goto(server.url);
  await page.getByRole("link", { name: "Clinic entrance garden", exact: true }).click();
  await page.waitForURL(/jobs\/\w+$/);
  job = page.url();
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
});

async function downloaded(name: string): Promise<Buffer> {
  const [download] = await Promise.all([page.waitForEvent("download"), page.getByRole("link", { name, exact: true }).click()]);
  return readFileSync(await download.path());
}

describe("papers", () => {
  it("show the planting schedule with its columns, for the job and for a bed", async () => {
    await page.goto(`${job}/schedule`);
    for (const head of ["Key", "Qty", "Botanical and common name", "Size", "Root", "Spacing", "Remarks"])
      await page.getByRole("columnheader", { name: head, exact: true }).waitFor();
    await expectAccessible(page);
    await screenshot(page, "schedule");
    const rows = await page.locator(".pull-line").count();
    await page.getByRole("navigation", { name: "Beds" }).getByRole("link").nth(1).click();
    await expect.poll(() => page.locator(".pull-line").count()).toBeLessThan(rows);
  });

  it("come as XLSX with numbers, and as PDF on Letter and A4", async () => {
    await page.goto(`${job}/schedule`);
    const rows = await readSheet(await downloaded("XLSX"));
    const head = rows.find((row) => row.includes("Botanical name")) ?? [];
    expect(typeof rows[rows.indexOf(head) + 1]?.[head.indexOf("Qty")]).toBe("number");
    for (const [name, width] of [
      ["PDF, Letter", 792],
      ["PDF, A4", 842],
    ] as const) {
      const pages = pdfPages(await downloaded(name));
      expect(Math.round(pages[0]?.width ?? 0)).toBe(width);
      for (const { text } of pages) expect(plainText(text)).toMatch(/page \d+ of \d+/);
    }
  });

  it("say on the pull list by place what is not reserved yet, and what is to be dug", async () => {
    await page.goto(`${job}/pull?view=place`);
    await page.getByRole("rowheader", { name: "Not reserved" }).waitFor();
    await expectAccessible(page);
    await page.getByRole("link", { name: "To dig" }).click();
    await page.getByRole("heading", { name: "Dig list" }).waitFor();
    await page.getByText(/^Nothing to dig/).waitFor();
    await expectAccessible(page);
    await page.getByRole("link", { name: "To buy" }).click();
    await page.getByText(/^Nothing to buy/).waitFor();
    await expectAccessible(page);
  });

  it("print tags whose code is read from the screen", async () => {
    await page.goto(`${job}/tags?each=plant`);
    await page.locator(".tag").first().waitFor();
    await expectAccessible(page);
    await screenshot(page, "tags");
    const pixels = await page.evaluate(async () => {
      const drawn = document.querySelector(".tag-code");
      if (!drawn) return null;
      const copy = drawn.cloneNode(true) as Element;
      copy.setAttribute("xmlns", "http://www.w3.org/2000/svg");
      copy.setAttribute("width", "300");
      copy.setAttribute("height", "300");
      const image = new Image();
      image.src = `data:image/svg+xml;utf8,${encodeURIComponent(copy.outerHTML)}`;
      await image.decode();
      const canvas = document.createElement("canvas");
      canvas.width = 300;
      canvas.height = 300;
      const context = canvas.getContext("2d");
      context?.drawImage(image, 0, 0, 300, 300);
      return [...(context?.getImageData(0, 0, 300, 300).data ?? [])];
    });
    expect(jsQR(Uint8ClampedArray.from(pixels ?? []), 300, 300)?.data).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/jobs\/\w+\/pull\/field#/);
    const pages = pdfPages(await downloaded("PDF, Letter"));
    expect(plainText(pages[0]?.text ?? "")).toContain("1 of 1");
  });

  it("plan loads once a truck is named, with the order of beds at hand", async () => {
    await page.goto(`${job}/loads`);
    await page.getByText(/No truck is named yet/).waitFor();
    await page.getByRole("link", { name: "Add the trucks of the firm" }).click();
    await page.getByText(/^No trucks yet/).waitFor();
    await expectAccessible(page);
    await page.getByRole("button", { name: /one-ton stake body/ }).click();
    const payload = page.getByLabel("Payload of One-ton stake body in pounds");
    await payload.waitFor();
    await payload.fill("none");
    await payload.press("Enter");
    await page.getByText(/^Pounds the truck may carry/).waitFor();
    const answered = page.waitForResponse((response) => response.request().method() === "POST");
    await payload.fill("1,200");
    await payload.press("Enter");
    await answered;
    await expectAccessible(page);
    await page.goto(`${job}/loads`);
    await page.locator(".deck-plan").first().waitFor();
    expect(await page.locator(".deck-plan").count()).toBeGreaterThan(1);
    await expectAccessible(page);
    await screenshot(page, "loads");
    const first = page.locator(".bed-order-name").first();
    const name = await first.textContent();
    await page.getByRole("link", { name: `${name} later` }).click();
    await expect.poll(() => first.textContent()).not.toBe(name);
  });

  it("fit a phone, in the dark too", async () => {
    const phone = await openPage(browser, { ...PHONE, colorScheme: "dark" });
    for (const path of ["schedule", "pull?view=place", "loads", "tags"]) {
      await phone.goto(`${job}/${path}`);
      await phone.getByRole("heading", { level: 1 }).waitFor();
      await expectAccessible(phone);
      await screenshot(phone, `phone-${path.replace(/\W.*/, "")}`);
    }
    await phone.goto(`${server.url}/nursery/trucks`);
    await expectAccessible(phone);
  });
});
