import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { claims } from "@pith/rules";
import { describe, expect, test } from "vitest";

/**
 * How good a forecast is may be said only of forecasts that were archived when they were issued. None has been scored
 * yet, so every word about it has to say so, and the skill that set-out blends by has to pass as common practice.
 */
const root = join(import.meta.dirname, "../..");
const QUALITY = /\b(skill|skilful|accura\w+)\b/i;
const HONEST = /archived|not fitted|really forecast/;

const filesUnder = (folder: string, end: string): string[] =>
  readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(end))
    .map((name) => join(folder, name));

const said = [
  "README.md",
  ...filesUnder("docs", ".md"),
  // A working names its symbols; what they are held to be stands in the register, below.
  ...filesUnder("packages/rules/src/text", ".ts").filter((file) => !file.includes("es/working/")),
  ...filesUnder("infra/cli", ".ts"),
];

/** Sentences about the quality of a forecast: a paragraph's lines belong together, rows of a table and code do not. */
const sentencesOn = (text: string, apart = /\n\s*\n|\n(?=\|)/): string[] =>
  text
    .split(apart)
    .flatMap((block) => block.replaceAll(/\s+/g, " ").split(/\. /))
    .filter((sentence) => QUALITY.test(sentence) && /\bforecasts?\b/i.test(sentence));

describe("no skill of a forecast is claimed but from archived ones", () => {
  test.each(["Our forecast's skill is 0.6. Frost is rare.", "The forecast is\naccurate to 1 C."])(
    "such a sentence is found: %j",
    (text) => expect(sentencesOn(text).filter((s) => !HONEST.test(s)).length).toBe(1),
  );
  test("documents and texts", () => {
    expect(said.length).toBeGreaterThan(20);
    const found = said.flatMap((file) =>
      sentencesOn(readFileSync(join(root, file), "utf8"), file.endsWith(".ts") ? /\n/ : undefined).map(
        (sentence) => ({ file, sentence }),
      ),
    );
    expect(found.some(({ file }) => file.endsWith("hindcast.md"))).toBe(true);
    expect(found.filter(({ sentence }) => !HONEST.test(sentence))).toEqual([]);
  });
  test("the register: graded as practice, and its limits say it is not fitted", () => {
    const about = [...claims.values()].filter(
      ({ finding, effect, limits }) => sentencesOn([finding, effect, limits].join(" ")).length > 0,
    );
    expect(about.map(({ id }) => id)).toContain("set-out.blend");
    for (const claim of about) {
      expect(claim.grade, claim.id).toBe("practice");
      expect(claim.limits, claim.id).toMatch(HONEST);
    }
  });
});
