// The outline of a bed drawn to scale in a real Chromium: by mouse, by keyboard, by numbers, from files and over a picture.
import type { Browser, Locator, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { expectAccessible, openBrowser, openPage, PHONE, screenshot, WIDE } from "../support/browser";
import { startServer, type TestServer } from "../support/server";

let server: TestServer;
let browser: Browser;
let page: Page;
let drawing: string;
beforeAll(async () => {
  server = await startServer({ demo: true });
  browser = await openBrowser();
  page = await openPage(browser);
  await page.goto(server.url);
  await page.getByRole("link", { name: "Clinic entrance garden" }).click();
  await page
    .getByRole("link", { name: /North court/ })
    .first()
    .click();
  await page.waitForURL(/beds\/\w+$/);
  drawing = `${page.url()}/drawing`;
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
});

async function open(on: Page) {
  await on.goto(drawing);
  await on.getByRole("button", { name: "Outline", exact: true }).click();
  await on.locator(".outline-panel").waitFor();
}
/** Nothing is left in the browser for want of a save. */
async function kept(on: Page) {
  await on.waitForFunction(() => Object.keys(localStorage).every((key) => !key.startsWith("twelvemonth:bed:")));
  await on.getByText(/^Saved \d/).waitFor();
}
const size = (on: Page) => on.locator(".outline-size").textContent();
const corner = (on: Page, number: number) => on.getByRole("button", { name: new RegExp(`^Corner ${number} at `) });
async function type(on: Page, label: string, text: string) {
  await on.getByLabel(label, { exact: true }).fill(text);
  await on.getByLabel(label, { exact: true }).press("Enter");
}
async function drag(on: Page, handle: Locator, dx: number, dy: number) {
  await handle.scrollIntoViewIfNeeded();
  const box = await handle.boundingBox();
  if (!box) throw new Error("the handle is not shown");
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await on.mouse.move(x, y);
  await on.mouse.down();
  await on.mouse.move(x + dx / 2, y + dy / 2, { steps: 3 });
  await on.mouse.move(x + dx, y + dy, { steps: 3 });
  await on.mouse.up();
}

describe("an outline drawn", () => {
  it("starts over from a shape of a length and a width", async () => {
    await open(page);
    await page.getByText("Start over from a shape").click();
    await page.getByLabel("Shape of the new outline").selectOption("kidney");
    await type(page, "Length of the new outline", "30'");
    await type(page, "Width of the new outline", "12 ft");
    await page.getByRole("button", { name: "Start over", exact: true }).click();
    await expect.poll(() => page.locator(".edge-label").count()).toBe(4);
    await expectAccessible(page);
    await screenshot(page, "outline-kidney");
    await page.getByLabel("Shape of the new outline").selectOption("rectangle");
    await page.getByRole("button", { name: "Start over", exact: true }).click();
    await expect.poll(() => size(page)).toContain("360 sq ft, edge 84 ft");
  });

  it("is drawn corner by corner, by sides as taped, and undo brings the old one back", async () => {
    await page.getByRole("button", { name: "Draw it corner by corner" }).click();
    for (const [side, way] of [
      ["20'", "to the right"],
      ["6 ft 6 in", "up"],
      ["20", "to the left"],
    ] as const) {
      await page.getByLabel("Next side").fill(side);
      await page.getByRole("combobox", { name: /^runs/ }).selectOption({ label: way });
      await page.getByRole("button", { name: "Add the side" }).click();
    }
    await expectAccessible(page);
    await page.getByRole("button", { name: "Close the outline" }).click();
    await expect.poll(() => size(page)).toContain("130 sq ft, edge 53 ft");
    await page.getByRole("button", { name: "Undo" }).click();
    await expect.poll(() => size(page)).toContain("360 sq ft, edge 84 ft");
  });

  it("bends an edge to an arc by mouse, and the area is true", async () => {
    await page.getByRole("button", { name: /^Edge 1–2: 30 ft, straight/ }).click();
    await drag(page, page.getByRole("button", { name: /^Middle of edge 1–2, straight/ }), 0, 40);
    await page.getByRole("button", { name: /^Middle of edge 1–2, .* outward/ }).waitFor();
    await type(page, "Middle ordinate of edge 1–2", "3 ft");
    // A segment 3 ft high over a 30 ft chord: radius 39 ft, 60.46 sq ft.
    await expect.poll(() => page.getByLabel("Radius of edge 1–2").inputValue()).toBe("39 ft");
    await expect.poll(() => size(page)).toContain("420 sq ft");
    await page.getByLabel("Radius of edge 1–2").fill("10 ft");
    await page.getByLabel("Radius of edge 1–2").press("Enter");
    await page.getByText("Its corners are 30 ft apart, so the radius is at least 15 ft.").waitFor();
    await page.getByLabel("Radius of edge 1–2").press("Escape");
  });

  it("bends, moves, adds and takes out by keyboard alone", async () => {
    const before = await size(page);
    await page.getByRole("button", { name: /^Edge 3–4: / }).focus();
    await page.keyboard.press("ArrowUp");
    await page.keyboard.press("ArrowUp");
    await page.getByRole("button", { name: /^Edge 3–4: .*, arc, / }).waitFor();
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("ArrowDown");
    await page.getByRole("button", { name: /^Edge 3–4: 30 ft, straight/ }).waitFor();
    await page.keyboard.press("+");
    await expect.poll(() => page.locator(".edge-label").count()).toBe(5);
    await corner(page, 4).focus();
    await page.keyboard.press("ArrowUp");
    await page.keyboard.press("ArrowUp");
    await page.getByRole("button", { name: "Corner 4 at 15 ft, 13 ft." }).waitFor();
    await page.keyboard.press("Delete");
    await expect.poll(() => page.locator(".edge-label").count()).toBe(4);
    expect(await size(page)).toBe(before);
  });

  it("shapes a free curve by its two handles", async () => {
    await page.getByLabel("Shape of edge 2–3").selectOption("cubic");
    const before = await size(page);
    await page.getByRole("button", { name: /^Handle 1 of edge 2–3/ }).focus();
    await page.keyboard.press("ArrowRight");
    await expect.poll(() => size(page)).not.toBe(before);
    await page.getByLabel("Shape of edge 2–3").selectOption("straight");
  });

  it("makes an edge exactly as long as typed, and says what it cannot read", async () => {
    await type(page, "Length of edge 2–3", `13' 6"`);
    await expect.poll(() => page.getByLabel("Length of edge 2–3", { exact: true }).inputValue()).toBe("13 ft 6 in");
    await corner(page, 3)
      .and(page.getByRole("button", { name: "at 30 ft, 13.5 ft" }))
      .waitFor();
    await type(page, "Length of edge 2–3", "long");
    await page.getByText("“long” is not a length.").waitFor();
    await page.getByLabel("Length of edge 2–3", { exact: true }).press("Escape");
  });

  it("keeps what edges border: a wall with its window, a retaining wall with its caution, a street corner", async () => {
    await page.getByLabel("Edge 3–4 borders").selectOption("house wall");
    await page.getByRole("button", { name: "Add a window" }).click();
    await type(page, "Window 1 of edge 3–4 begins", "6 ft");
    await type(page, "Window 1 of edge 3–4 ends", "40 ft");
    await page.getByText(/After its beginning, and at most 30 ft/).waitFor();
    await type(page, "Window 1 of edge 3–4 ends", "11 ft");
    await page.getByLabel("Edge 1–2 borders").selectOption("retaining wall");
    await type(page, "Height of the wall along edge 1–2", "5 ft");
    await page.getByText(/usually needs an engineer and a permit\. The local code decides/).waitFor();
    await page.getByLabel("The bed below the wall").fill("Lower terrace");
    await page.getByRole("button", { name: "Write it in the bed’s notes" }).click();
    await expectAccessible(page);
    await page.getByLabel("Edge 4–1 borders").selectOption("street corner");
    await page.getByText(/The local ordinance goes before/).waitFor();
    await kept(page);
    await open(page);
    await page.getByRole("button", { name: "Edge 3–4", exact: true }).click();
    expect(await page.getByLabel("Window 1 of edge 3–4 begins").inputValue()).toBe("6 ft");
    expect(await page.getByLabel("Window 1 of edge 3–4 ends").inputValue()).toBe("11 ft");
    await page.getByRole("button", { name: /^Edge 4–1: .*borders street corner/ }).waitFor();
  });

  it("shows where an outline crosses itself, and the last sound one stays the bed's", async () => {
    const sound = await size(page);
    const box = await page.locator(".outline-layer").boundingBox();
    await drag(page, corner(page, 3), -(box?.width ?? 0) * 0.9, 30);
    await page.getByRole("alert").filter({ hasText: "The outline crosses or touches itself at" }).waitFor();
    expect(await page.locator(".fault-mark").count()).toBe(1);
    await expectAccessible(page);
    await screenshot(page, "outline-crossing");
    await page.keyboard.press("Control+z");
    await expect.poll(() => page.locator(".fault-mark").count()).toBe(0);
    expect(await size(page)).toBe(sound);
    await open(page);
    expect(await size(page)).toBe(sound);
  });
});

describe("things to keep clear of", () => {
  beforeAll(() => open(page));
  it("are clicked on the drawing or set by numbers, and lines come with the call before digging", async () => {
    expect(await page.getByText("Before digging call 811").count()).toBe(0);
    await page.getByRole("button", { name: "Click its place" }).click();
    await page.locator(".tool-surface").click({ position: { x: 300, y: 260 } });
    await page.getByRole("button", { name: /^Existing tree 1, 16 in wide at/ }).waitFor();
    await page.getByLabel("Put down").selectOption("buried line");
    await page.getByText("Before digging call 811").waitFor();
    await page.getByRole("button", { name: "Click its place" }).click();
    for (const x of [150, 330, 520]) await page.locator(".tool-surface").click({ position: { x, y: 300 } });
    await page.keyboard.press("Enter");
    await page.getByRole("button", { name: /^Buried line 2, point 3 at/ }).waitFor();
    await page.getByLabel("Put down").selectOption("overhead line");
    await page.getByRole("button", { name: "By numbers" }).click();
    await type(page, "Height of the lowest wire of Overhead line 3", "22 ft");
    await expectAccessible(page);
    await page.getByRole("button", { name: "Take Overhead line 3 off the drawing" }).click();
    await kept(page);
  });
});

const DXF = ["0", "SECTION", "2", "HEADER", "9", "$INSUNITS", "70", "2", "0", "ENDSEC", "0", "SECTION", "2", "ENTITIES", "0", "LWPOLYLINE", "8", "BED", "90", "4", "70", "1"]
  .concat(["10", "100", "20", "50", "10", "120", "20", "50", "42", "0.5", "10", "120", "20", "60", "10", "100", "20", "60", "0", "ENDSEC", "0", "EOF"])
  .join("\n");

describe("outlines from files", () => {
  beforeAll(() => open(page));
  const dialog = () => page.getByRole("dialog", { name: "Bring in an outline" });
  it("take a DXF with its arc and its unit, and undo brings the old one back", async () => {
    const before = await size(page);
    await page.getByRole("button", { name: "Bring in an outline" }).click();
    await dialog()
      .locator("input[type=file]")
      .setInputFiles({ name: "site.dxf", mimeType: "application/octet-stream", buffer: Buffer.from(DXF) });
    // 20 × 10 ft and a segment of ordinate 2.5 ft over 10 ft.
    await dialog().getByText("217 sq ft, 22 ft 6 in × 10 ft, 4 edges").waitFor();
    await expectAccessible(page);
    await screenshot(page, "outline-import");
    await dialog().getByRole("button", { name: "Take this outline" }).click();
    await expect.poll(() => size(page)).toContain("217 sq ft");
    await page.getByRole("button", { name: "Undo" }).click();
    await expect.poll(() => size(page)).toBe(before);
  });
  it("take one of several shapes of an SVG in the unit that was chosen, and name line and field of what is wrong", async () => {
    await page.getByRole("button", { name: "Bring in an outline" }).click();
    const text = dialog().getByLabel("or paste its text");
    await text.fill("M 0 0 H 240 V 96 H 0 Z M 300 0 h 60 v 60 h -60 z");
    await dialog().getByLabel("One unit of the file is").selectOption("in");
    await dialog().getByText("2 outlines, largest first", { exact: false }).waitFor();
    await dialog().getByText("160 sq ft, 20 ft × 8 ft, 4 edges").waitFor();
    await text.fill('{"type":"Polygon",\n"coordinates":[[[0,0],[1,');
    await dialog()
      .getByRole("alert")
      .filter({ hasText: /^Line 2, / })
      .waitFor();
    await text.fill("neither fish nor fowl");
    await dialog().getByText("This does not look like SVG, DXF or GeoJSON.").waitFor();
    await text.fill("M 0 0 H 240 V 96 H 0 Z");
    await dialog().getByRole("button", { name: "Take this outline" }).click();
    await expect.poll(() => size(page)).toContain("160 sq ft");
    await kept(page);
  });
});

describe("a picture beneath", () => {
  beforeAll(() => open(page));
  const coveredFt = async () => Number(/covers (\d+) ft/.exec((await page.getByText(/^It covers/).textContent()) ?? "")?.[1]);
  it("is refused with words when it is no picture", async () => {
    await page
      .getByLabel(/picture/i)
      .and(page.locator("input[type=file]"))
      .setInputFiles({ name: "plan.png", mimeType: "image/png", buffer: Buffer.from("no picture") });
    await page.getByText("“plan.png” cannot be drawn").waitFor();
    await page
      .getByLabel(/picture/i)
      .and(page.locator("input[type=file]"))
      .setInputFiles({ name: "plan.pdf", mimeType: "application/pdf", buffer: Buffer.from("%PDF") });
    await page.getByText("“plan.pdf” is not a PNG, JPEG or WebP picture").waitFor();
  });
  it("is laid under the drawing, scaled by two places and a length, moved, and taken away", async () => {
    const picture = await page.screenshot({ clip: { x: 0, y: 0, width: 400, height: 200 } });
    await page
      .getByLabel(/picture/i)
      .and(page.locator("input[type=file]"))
      .setInputFiles({ name: "site.png", mimeType: "image/png", buffer: picture });
    await page.locator("img.underlay-image").waitFor();
    const before = await coveredFt();
    await page.getByRole("button", { name: "Scale it by a known length" }).click();
    await page.locator(".tool-surface").click({ position: { x: 200, y: 250 } });
    await page.locator(".tool-surface").click({ position: { x: 400, y: 250 } });
    const shown = await page.getByLabel("Length between the two places").inputValue();
    const [feet = 0, inches = 0] = shown.split(" ft").map((part) => Number.parseFloat(part) || 0);
    await type(page, "Length between the two places", `${2 * feet} ft`);
    const times = (2 * feet) / (feet + inches / 12);
    await expect.poll(coveredFt).toBeGreaterThan(before * times - 2);
    expect(await coveredFt()).toBeLessThan(before * times + 2);
    await page.getByRole("button", { name: /^Move the picture right by/ }).click();
    await kept(page);
    const src = await page.locator("img.underlay-image").getAttribute("src");
    const answer = await page.request.get(`${server.url}${src}`);
    expect(answer.headers()).toMatchObject({ "content-type": "image/png", "x-content-type-options": "nosniff", "cache-control": "private, max-age=31536000, immutable" });
    expect(Buffer.compare(await answer.body(), picture)).toBe(0);
    await open(page);
    await page.locator("img.underlay-image").waitFor();
    await expectAccessible(page);
    await screenshot(page, "outline-picture");
    await page.getByRole("button", { name: "Take it away" }).click();
    await expect.poll(() => page.locator("img.underlay-image").count()).toBe(0);
    await kept(page);
  });
});

describe("on a phone, and in the dark", () => {
  it.each([
    ["phone", PHONE],
    ["dark", { ...WIDE, colorScheme: "dark" as const }],
  ])("%s: no violation, nothing wider than the window", async (name, options) => {
    const other = await openPage(browser, options);
    await open(other);
    await other.getByLabel("Edge 3–4 borders").selectOption("house wall");
    await other.getByRole("button", { name: "Add a window" }).click();
    await expectAccessible(other);
    await screenshot(other, `outline-${name}`);
    await other.context().close();
  });
});
