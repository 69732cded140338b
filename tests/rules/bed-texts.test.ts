import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { CHOICE_IDS, claims } from "@pith/rules";
import { expect, test } from "vitest";
import { company } from "../../packages/rules/src/text/en/company.ts";
import { rotation } from "../../packages/rules/src/text/en/rotation.ts";

/** The words of both rules of the bed are named where plans are judged as well as in the rules themselves. */
const src = join(import.meta.dirname, "../../packages/rules/src");
const source = ["layout", "rules/company", "rules/rotation"]
  .flatMap((folder) =>
    readdirSync(join(src, folder)).map((file) => readFileSync(join(src, folder, file), "utf8")),
  )
  .join("\n");
const texts = { ...company, ...rotation };
const literal = new Set(
  [...source.matchAll(/"((?:company|rotation)\.[a-z0-9.-]+)"/g)].map((m) => m[1] as string),
);
const prefixes = [...source.matchAll(/`((?:company|rotation)\.[a-z0-9.-]+)\$\{/g)].map((m) => m[1] as string);

test("every key that is named has a text", () => {
  const known = (key: string) => key in texts || claims.has(key) || CHOICE_IDS.some((id) => id === key);
  expect([...literal].filter((key) => !known(key))).toEqual([]);
  expect(prefixes.filter((p) => !Object.keys(texts).some((key) => key.startsWith(p)))).toEqual([]);
});
test("every text is named", () => {
  const used = (key: string) => literal.has(key) || prefixes.some((p) => key.startsWith(p));
  expect(Object.keys(texts).filter((key) => !used(key))).toEqual([]);
});
