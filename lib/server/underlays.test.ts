import { deflateSync } from "node:zlib";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { databaseCopy } from "../../tests/support/base-database";
import { EMPTY_BED } from "../ground/bed";
import { EMPTY_DRAWING } from "../ground/bed-drawing";
import { imageHead } from "./image-head";

let copy: ReturnType<typeof databaseCopy>;
beforeAll(() => {
  copy = databaseCopy();
  process.env.DATABASE_URL = copy.url;
});
afterAll(() => copy.remove());

const of = (...parts: readonly (string | readonly number[])[]) =>
  new Uint8Array(Buffer.concat(parts.map((part) => (typeof part === "string" ? Buffer.from(part, "latin1") : Buffer.from(part)))));
const uint32 = (value: number) => [value >>> 24, (value >>> 16) & 255, (value >>> 8) & 255, value & 255];
const png = (width: number, height: number) =>
  of([0x89], "PNG\r\n\u001a\n", uint32(13), "IHDR", uint32(width), uint32(height), [8, 2, 0, 0, 0], uint32(0), [...deflateSync(Buffer.alloc(4))]);
/** Start, a comment, then a baseline frame. */
const jpeg = (width: number, height: number) =>
  of([0xff, 0xd8, 0xff, 0xfe, 0, 4, 65, 66, 0xff, 0xc4, 0, 3, 0, 0xff, 0xc0, 0, 17, 8, height >> 8, height & 255, width >> 8, width & 255, 3, 1, 0x22, 0, 2, 0x11, 1, 3, 0x11, 1]);
const webp = (kind: string, body: readonly number[]) => of("RIFF", [40, 0, 0, 0], "WEBP", kind, [20, 0, 0, 0], body, new Array<number>(12).fill(0));

async function bedMade(): Promise<{ jobId: string; bedId: string }> {
  const { jobCreate } = await import("./jobs");
  const { bedCreate } = await import("./beds");
  const jobId = await jobCreate("Pictures");
  return { jobId, bedId: await bedCreate(jobId, EMPTY_BED) };
}

describe("what a picture file is", () => {
  it("is read from its bytes: PNG, JPEG and all three kinds of WebP with their size", () => {
    expect(imageHead(png(640, 480))).toEqual({ mime: "image/png", widthPx: 640, heightPx: 480 });
    expect(imageHead(jpeg(4000, 3000))).toEqual({ mime: "image/jpeg", widthPx: 4000, heightPx: 3000 });
    expect(imageHead(webp("VP8 ", [0, 0, 0, 0x9d, 0x01, 0x2a, 0x80, 0x02, 0xe0, 0x01]))).toEqual({ mime: "image/webp", widthPx: 640, heightPx: 480 });
    const lossless = (640 - 1) | ((480 - 1) << 14);
    expect(imageHead(webp("VP8L", [0x2f, lossless & 255, (lossless >> 8) & 255, (lossless >> 16) & 255, lossless >>> 24]))).toMatchObject({ widthPx: 640, heightPx: 480 });
    expect(imageHead(webp("VP8X", [0, 0, 0, 0, 0x7f, 0x02, 0, 0xdf, 0x01, 0]))).toMatchObject({ widthPx: 640, heightPx: 480 });
  });
  it("is nothing for other files, and for pictures cut off before their size", () => {
    expect(imageHead(of("<svg xmlns='http://www.w3.org/2000/svg'/>"))).toBeNull();
    expect(imageHead(of("GIF89a"))).toBeNull();
    expect(imageHead(png(10, 10).subarray(0, 20))).toBeNull();
    expect(imageHead(jpeg(10, 10).subarray(0, 14))).toBeNull();
    expect(imageHead(png(0, 10))).toBeNull();
    expect(imageHead(new Uint8Array())).toBeNull();
  });
});

describe("a picture under a bed's drawing", () => {
  it("is kept and handed back byte for byte, only for its own bed", async () => {
    const { underlayAdd, underlayFile } = await import("./underlays");
    const { jobId, bedId } = await bedMade();
    const bytes = png(640, 480);
    const answer = await underlayAdd(jobId, bedId, { name: "site.png", bytes, widthPx: 640, heightPx: 480 });
    if (answer.kind !== "kept") throw new Error(answer.message);
    expect(await underlayFile(jobId, bedId, answer.id)).toEqual({ mime: "image/png", bytes });
    expect(await underlayFile(jobId, "another", answer.id)).toBeNull();
    expect(await underlayFile("another", bedId, answer.id)).toBeNull();
  });
  it("is refused with words when it is no picture, too large, of another size than drawn, or for a bed that is gone", async () => {
    const { underlayAdd } = await import("./underlays");
    const { jobId, bedId } = await bedMade();
    const words = async (bytes: Uint8Array<ArrayBuffer>, widthPx = 10, heightPx = 10, bed = bedId) => {
      const answer = await underlayAdd(jobId, bed, { name: "plan.png", bytes, widthPx, heightPx });
      return answer.kind === "fault" ? `${answer.status} ${answer.message}` : "kept";
    };
    expect(await words(of("<svg onload='x'/>"))).toMatch(/^415 “plan.png” is not a PNG, JPEG or WebP/);
    expect(await words(new Uint8Array(15_000_001))).toMatch(/^413 .*15 MB/);
    expect(await words(png(20_000, 10), 20_000, 10)).toMatch(/^413 .*20000 × 10 pixels/);
    expect(await words(png(10, 20), 20, 10)).toMatch(/^400 The picture is damaged/);
    expect(await words(png(10, 10), 10, 10, "gone")).toMatch(/^404 /);
    expect(await words(jpeg(10, 20), 20, 10)).toBe("kept");
  });
  it("stays while it lies under the saved drawing, however many are tried after it", async () => {
    const { underlayAdd, underlayFile } = await import("./underlays");
    const { bedFind, bedSave } = await import("./beds");
    const { database } = await import("./database");
    const { jobId, bedId } = await bedMade();
    const add = async () => {
      const answer = await underlayAdd(jobId, bedId, { name: "a.png", bytes: png(10, 10), widthPx: 10, heightPx: 10 });
      if (answer.kind !== "kept") throw new Error(answer.message);
      return answer.id;
    };
    const first = await add();
    const second = await add();
    const stored = await bedFind(bedId);
    const underlay = { imageId: first, widthPx: 10, heightPx: 10, at: [0, 0], ftPerPx: 0.1, strength: 0.5 } as const;
    await bedSave(bedId, stored?.version ?? 0, { ...stored?.bed, drawing: { ...EMPTY_DRAWING, underlay } });
    for (let i = 0; i < 8; i++) await add();
    expect(await underlayFile(jobId, bedId, first)).not.toBeNull();
    expect(await underlayFile(jobId, bedId, second)).toBeNull();
    expect(await database().underlay.count({ where: { bedId } })).toBeLessThanOrEqual(7);
  });
  it("goes with its bed when that is removed for good", async () => {
    const { underlayAdd } = await import("./underlays");
    const { database } = await import("./database");
    const { jobId, bedId } = await bedMade();
    await underlayAdd(jobId, bedId, { name: "a.png", bytes: png(10, 10), widthPx: 10, heightPx: 10 });
    await database().bed.delete({ where: { id: bedId } });
    expect(await database().underlay.count({ where: { bedId } })).toBe(0);
  });
});
