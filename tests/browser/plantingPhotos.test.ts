import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { closeBrowser, openPage, type Seen } from "./browser.ts";

/** Photographs of a sign, from a farmer's phone. */

let seen: Seen;
let signUrl: string;

/** Stands in a photograph's own notes where the camera writes where it was taken. */
const PLACE = "46.6001 N 91.2002 W";

beforeAll(async () => {
  seen = await openPage({ role: "farmer", width: 390 });
  const { page } = seen;
  await page.goto("/record");
  await page.getByRole("link", { name: "Write a sign to look closer at" }).click();
  await page.getByLabel("What you saw").selectOption({ label: "Leaf spots with rings" });
  await page.getByLabel("Where in the bed").selectOption({ label: "a patch" });
  await page.getByLabel("How fast it came").selectOption({ label: "within days" });
  await page.getByRole("button", { name: "Write it down" }).click();
  await page.getByText("The sign is written down.").waitFor();
  signUrl = page.url();
});
afterAll(closeBrowser);

/** A large JPEG with an Exif part that names a place. */
async function photograph(page: Page): Promise<Buffer> {
  const base64 = await page.evaluate(() => {
    const canvas = document.createElement("canvas");
    canvas.width = 2400;
    canvas.height = 1200;
    const pen = canvas.getContext("2d") as CanvasRenderingContext2D;
    pen.fillStyle = "green";
    pen.fillRect(0, 0, 2400, 1200);
    return canvas.toDataURL("image/jpeg").split(",")[1] as string;
  });
  const jpeg = Buffer.from(base64, "base64");
  // A TIFF head whose one directory is empty; the words lie behind it.
  const tiff = Buffer.from([0x49, 0x49, 0x2a, 0, 8, 0, 0, 0, 0, 0, 0, 0, 0, 0]);
  const exif = Buffer.concat([Buffer.from("Exif\0\0", "latin1"), tiff, Buffer.from(PLACE, "latin1")]);
  const head = Buffer.from([0xff, 0xe1, 0, exif.length + 2]);
  return Buffer.concat([jpeg.subarray(0, 2), head, exif, jpeg.subarray(2)]);
}

test("a photograph is kept at 1600 px on its longer side, upright, without where it was taken", async () => {
  const { page } = seen;
  await page.goto(signUrl);
  const buffer = await photograph(page);
  expect(buffer.includes(PLACE)).toBe(true);
  await page.getByLabel("Take a photograph").setInputFiles({ name: "p.jpg", mimeType: "image/jpeg", buffer });
  await page.getByText("The photograph is kept.").waitFor();
  const kept = page.getByRole("img", { name: /^Photograph 1 of: Leaf spots with rings/ });
  await kept.waitFor();
  // 2400 by 1200 made smaller by 1600 / 2400 is 1600 by 800.
  await expect
    .poll(() => kept.evaluate((img: HTMLImageElement) => [img.naturalWidth, img.naturalHeight]))
    .toEqual([1600, 800]);
  const answer = await page.request.get((await kept.getAttribute("src")) ?? "");
  expect(answer.headers()["content-type"]).toBe("image/jpeg");
  expect((await answer.body()).includes(PLACE)).toBe(false);
});

test("the photograph stands in the farmer's record under its sign", async () => {
  const { page } = seen;
  await page.goto("/record");
  const line = page
    .locator(".records li")
    .filter({ hasText: "Leaf spots with rings" })
    .filter({ hasText: "a patch, within days" })
    .filter({ has: page.getByRole("img") });
  await line.first().waitFor();
  expect(await line.first().getByRole("img").count()).toBe(1);
});

test("a file that is no picture is refused in words, and nothing is kept of it", async () => {
  const { page } = seen;
  await page.goto(signUrl);
  // The picture that is there already must have come before pictures are counted.
  await page.getByRole("img").first().waitFor();
  const before = await page.getByRole("img").count();
  await page
    .getByLabel("Choose a picture")
    .setInputFiles({ name: "p.png", mimeType: "image/png", buffer: Buffer.from("not a picture") });
  await page.getByRole("alert").filter({ hasText: "This browser cannot read that picture." }).waitFor();
  expect(await page.getByRole("img").count()).toBe(before);
});

test("a photograph that was sent by mistake is gone, from the page and from its address", async () => {
  const { page } = seen;
  await page.goto(signUrl);
  const photo = page.getByRole("img").first();
  const address = (await photo.getAttribute("src")) ?? "";
  await page.locator("summary").filter({ hasText: "Remove" }).first().click();
  await page.getByRole("button", { name: "Yes, remove it" }).click();
  await page.getByText("The photograph is gone.").waitFor();
  await page.getByText("No photograph yet.").waitFor();
  expect((await page.request.get(address, { headers: { "cache-control": "no-cache" } })).status()).toBe(404);
});

test("nobody who is not signed in gets a photograph", async () => {
  const { page } = seen;
  await page.goto("/record");
  const address = await page.locator(".records img").first().getAttribute("src");
  const stranger = await openPage();
  const answer = await stranger.page.request.get(address ?? "", { maxRedirects: 0 });
  expect(answer.headers()["content-type"] ?? "").not.toContain("image");
  expect(answer.status()).not.toBe(200);
  await stranger.context.close();
});
