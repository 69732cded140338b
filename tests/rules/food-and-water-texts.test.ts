import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { cautions, claims, claimsOf, sources } from "@pith/rules";
import { describe, expect, test } from "vitest";
import { MATERIAL_KINDS } from "../../packages/rules/src/states/food.ts";
import { containers } from "../../packages/rules/src/text/en/containers.ts";
import { feeding } from "../../packages/rules/src/text/en/feeding.ts";
import { irrigate } from "../../packages/rules/src/text/en/irrigate.ts";
import { manureTiming } from "../../packages/rules/src/text/en/manure-timing.ts";
import { material } from "../../packages/rules/src/text/en/material.ts";
import { soilReading } from "../../packages/rules/src/text/en/soil-reading.ts";

/** Fields of the planting's state that look like keys of the rule's text. */
const STATE_FIELDS = ["feeding.materialId", "feeding.method"];

const rulesFolder = join(import.meta.dirname, "../../packages/rules/src/rules");
const sourceOf = (rule: string): string =>
  readdirSync(join(rulesFolder, rule))
    .map((file) => readFileSync(join(rulesFolder, rule, file), "utf8"))
    .join("\n");

describe.each([
  ["irrigate", irrigate],
  ["soil-reading", soilReading],
  ["feeding", feeding],
  ["manure-timing", manureTiming],
  ["containers", containers],
])("texts and evidence of %s", (rule, texts) => {
  const source = sourceOf(rule);
  const named = [...source.matchAll(new RegExp(`"(${rule}\\.[A-Za-z0-9.:-]+)"`, "g"))]
    .map((m) => m[1] ?? "")
    .filter((key) => !STATE_FIELDS.includes(key));
  const prefixes = [...source.matchAll(new RegExp(`\`(${rule}\\.[a-z0-9.-]+)\\$\\{`, "g"))].map(
    (m) => m[1] ?? "",
  );

  test("every key the rule names is a text or a claim", () => {
    expect(named.filter((key) => texts[key] === undefined && !claims.has(key))).toEqual([]);
    expect(prefixes.filter((prefix) => !Object.keys(texts).some((key) => key.startsWith(prefix)))).toEqual(
      [],
    );
  });
  test("every text is named by the rule", () => {
    const used = (key: string) => named.includes(key) || prefixes.some((prefix) => key.startsWith(prefix));
    expect(Object.keys(texts).filter((key) => !used(key))).toEqual([]);
  });
  test("every claim is cited by the rule, its sources are registered, and conflicts name each other", () => {
    const own = claimsOf(rule);
    expect(own.map((c) => c.id).filter((id) => !named.includes(id))).toEqual([]);
    for (const claim of own) {
      for (const s of claim.sources) expect([...sources.keys()]).toContain(s.key);
      for (const other of claim.conflicts) expect(claims.get(other)?.conflicts).toContain(claim.id);
    }
  });
});

test("every kind of material has a name", () => {
  const unnamed = MATERIAL_KINDS.filter((kind) => material[`material.${kind}`] === undefined);
  expect(unnamed).toEqual([]);
});

test("a caution has text and a version", () => {
  for (const id of ["water-pump", "water-too-much", "oxidiser", "manure-raw", "ash-caustic", "backflow"]) {
    expect(cautions.get(id)?.version).toBe(1);
    expect(cautions.get(id)?.text.en.length).toBeGreaterThan(40);
  }
});
