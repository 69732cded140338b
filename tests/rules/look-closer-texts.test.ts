import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { claimsOf, type Message, type PlantingState, render, sources } from "@pith/rules";
import { describe, expect, test } from "vitest";
import { BED_PATTERNS, PLANT_PARTS, SIGNS, SPEEDS } from "../../packages/rules/src/states/plant.ts";
import { CAUSES } from "../../packages/rules/src/tables/diagnosis.ts";
import { lookCloser } from "../../packages/rules/src/text/en/look-closer.ts";
import { advice, planting } from "./warmthStates.ts";

const folder = join(import.meta.dirname, "../../packages/rules/src/rules/look-closer");
const source = readdirSync(folder)
  .map((file) => readFileSync(join(folder, file), "utf8"))
  .join("\n");
const keysOf = (prefix: string, words: readonly string[]) => words.map((w) => `look-closer.${prefix}.${w}`);
/** Every key that a word of the table or of the state can become. */
const made = [
  ...keysOf(
    "cause",
    CAUSES.map((c) => c.id),
  ),
  ...keysOf("sign", SIGNS),
  ...keysOf("part", PLANT_PARTS),
  ...keysOf("pattern", BED_PATTERNS),
  ...keysOf("speed", SPEEDS),
  ...keysOf(
    "weather",
    CAUSES.flatMap((c) => c.weather?.kind ?? []),
  ),
  ...keysOf(
    "clue",
    CAUSES.flatMap((c) => c.clues ?? []),
  ),
  ...keysOf(
    "history",
    CAUSES.flatMap((c) => c.inSoil ?? []),
  ),
  ...keysOf(
    "safe",
    CAUSES.flatMap((c) => c.steps),
  ),
  ...keysOf(
    "sample",
    CAUSES.map((c) => c.sample).filter((s) => s !== "none"),
  ),
  ...keysOf("item", ["sign", "part", "pattern", "speed", "weather", "clue", "history"]),
  ...keysOf("column", ["cause", "what", "speaks", "points"]),
  ...keysOf("decision", ["leading", "several", "unclear"]),
  ...keysOf("stakes", ["urgent", "living", "else"]),
];
const literal = [...source.matchAll(/"(look-closer\.[a-z.-]+)"/g)].map((m) => m[1] as string);

describe("words", () => {
  test("every word of the table and of the state has a text, and every text is said", () => {
    const said = new Set([...made, ...literal]);
    const evidence = (key: string) =>
      readFileSync(join(folder, "../../evidence/claims/look-closer.ts"), "utf8").includes(
        `"${key.replace("look-closer.", "")}"`,
      );
    expect([...said].filter((key) => lookCloser[key] === undefined && !evidence(key))).toEqual([]);
    expect(Object.keys(lookCloser).filter((key) => !said.has(key))).toEqual([]);
  });
  test("each cause names a source that stands in the register, a step for today, and signs that come often", () => {
    for (const { id, sources: from, steps, signs } of CAUSES) {
      expect([id, from.length > 0, from.filter((s) => !sources.has(s.key))]).toEqual([id, true, []]);
      expect([id, steps.length > 0, Object.values(signs).includes("often")]).toEqual([id, true, true]);
    }
  });
  test("every claim of the rule travels with its advice", () => {
    const a = advice("look-closer", {
      ...planting(),
      signs: [{ on: "2026-05-14", sign: "leaves-curled" }],
    });
    expect([...a.evidence].sort()).toEqual(
      claimsOf("look-closer")
        .map((c) => c.id)
        .sort(),
    );
  });
  test("no step sets a rate or tells anybody to spray", () => {
    const steps = Object.entries(lookCloser).filter(([key]) => /\.(step|safe|sample)\./.test(key));
    for (const [key, text] of steps) {
      expect([key, text]).not.toEqual([
        key,
        expect.stringMatching(
          /\bspray (?:with|it|them)|\bdose|per (?:acre|hectare|litre|gallon)|fungicide|insecticide|copper|sulfur/i,
        ),
      ]);
    }
  });
});

describe("the table and the chart", () => {
  const english = (m: Message) => render(m, { language: "en", units: "metric" });
  const state = (change: Partial<PlantingState>): PlantingState => ({
    ...planting(),
    asOf: "2026-07-20T14:00:00Z",
    signs: [{ on: "2026-07-20", sign: "leaf-edges-brown", part: "old-leaves" }],
    ...change,
  });
  const tableOf = (change: Partial<PlantingState> = {}) => advice("look-closer", state(change)).table?.[0];

  test("a row for each thing weighed, all of it sayable; the points of a cause add up to its bar", () => {
    const a = advice("look-closer", state({}));
    const rows = a.table?.[0]?.rows ?? [];
    const [chart] = a.charts;
    for (const row of rows) {
      for (const cell of row) {
        if (cell && typeof cell === "object") expect(english(cell)).not.toMatch(/undefined|^$/);
      }
    }
    for (const [i, label] of (chart?.x.labels ?? []).entries()) {
      const own = rows.filter(([cause]) => (cause as Message).key === label.key);
      expect(own.reduce((sum, row) => sum + Number(row[3] ?? 0), 0)).toBe(chart?.series[0]?.points[i]?.[1]);
    }
  });
  test("what nobody looked at has no points and says so", () => {
    const open = (tableOf()?.rows ?? []).filter((row) => row[3] === null);
    expect(open.length).toBeGreaterThan(0);
    for (const row of open) expect(english(row[2] as Message)).toBe("not looked at, or not known");
  });
});
