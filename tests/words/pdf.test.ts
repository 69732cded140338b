import { PDFDocument } from "pdf-lib";
import { expect, test } from "vitest";
import { newLeaf } from "../../apps/dashboard/features/pdf/leaf.ts";
import { tableOn } from "../../apps/dashboard/features/pdf/table.ts";
import { textIn, timesIn } from "./pdfText.ts";

test("text stays text, in both languages, over as many pages as it takes, with the ledger's hash on each", async () => {
  const hash = "9c".repeat(32);
  const leaf = await newLeaf("a4", { title: "Riegue hoy", foot: `Asiento 7 · ${hash}` });
  leaf.text("Riegue hoy: abra la válvula 40 min (½ más a 30 °C).", { size: 18 });
  for (let i = 0; i < 120; i++) {
    leaf.text(`Paso ${i}: ¿está el punto de crecimiento verde y firme, o café y blando? Anótelo.`, {
      size: 11,
    });
  }
  leaf.text("P₂O₅ − 2 kg → 3", { size: 11 });
  const bytes = await leaf.bytes();
  const pages = (await PDFDocument.load(bytes)).getPageCount();
  expect(pages).toBeGreaterThan(2);
  const text = textIn(bytes);
  expect(text).toContain("Riegue hoy: abra la válvula 40 min (½ más a 30 °C).");
  for (let i = 0; i < 120; i++) expect(text).toContain(`Paso ${i}: ¿está`);
  // What the fonts' encoding lacks is said in signs that it has.
  expect(text).toContain("P2O5 - 2 kg -> 3");
  expect(timesIn(text, hash)).toBe(pages);
});

test("a line is broken between words and stays inside the margins", async () => {
  const leaf = await newLeaf("letter", { title: "x", foot: "" });
  leaf.text("word ".repeat(200).trim(), { size: 12 });
  const lines = textIn(await leaf.bytes())
    .split("\n")
    .filter((line) => line.startsWith("word"));
  expect(lines.length).toBeGreaterThan(8);
  expect(lines.flatMap((line) => line.split(" ")).filter((one) => one !== "word")).toEqual([]);
  // Letter less two margins of 54 points is 504; a word and its space are about 27 points in 12-point Times.
  for (const line of lines) expect(line.split(" ").length).toBeLessThan(22);
});

test("a table of 300 rows goes on over pages, its head again on each, its rows each once", async () => {
  const leaf = await newLeaf("a4", { title: "x", foot: "" });
  tableOn(leaf, {
    title: "Rows",
    goesOn: "continued",
    heads: ["Head of the first", "Amount"],
    rows: Array.from({ length: 300 }, (_, i) => [[`row ${i};`], [`${i} kg`]]),
    figures: [false, true],
  });
  const bytes = await leaf.bytes();
  const pages = (await PDFDocument.load(bytes)).getPageCount();
  const text = textIn(bytes);
  expect(pages).toBeGreaterThan(5);
  expect(timesIn(text, "Head of the first")).toBe(pages);
  expect(timesIn(text, "Rows, continued")).toBe(pages - 1);
  for (let i = 0; i < 300; i++) expect(timesIn(text, `row ${i};`)).toBe(1);
});

test("a cell too long for its line is wrapped, one too tall for a page goes on, and a word too long is broken", async () => {
  const leaf = await newLeaf("letter", { title: "x", foot: "" });
  const long = Array.from({ length: 900 }, (_, i) => `w${i}`).join(" ");
  tableOn(leaf, {
    title: null,
    goesOn: "continued",
    heads: Array.from({ length: 14 }, (_, i) => `Column${i}`),
    rows: [Array.from({ length: 14 }, (_, i) => [i === 3 ? long : i === 5 ? "x".repeat(200) : "short"])],
  });
  const bytes = await leaf.bytes();
  const lines = textIn(bytes).split("\n");
  const words = lines.flatMap((line) => line.split(" "));
  for (let i = 0; i < 900; i++) expect(words).toContain(`w${i}`);
  expect(lines.filter((line) => /^x+$/.test(line)).join("")).toBe("x".repeat(200));
  expect((await PDFDocument.load(bytes)).getPageCount()).toBeGreaterThan(1);
});
