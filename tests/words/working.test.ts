import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { advise, workingText } from "@pith/rules";
import { describe, expect, test } from "vitest";
import { guides } from "../../packages/rules/src/guides/register.ts";
import { LIME_TARGET } from "../../packages/rules/src/soil-acidity/target.ts";
import { PUNGENCY_STUDIES } from "../../packages/rules/src/tables/pungencyStudies.ts";
import { ASH_CAPS, ASH_PH_CEILINGS } from "../../packages/rules/src/tables/woodAsh.ts";
import { workingBooks } from "../../packages/rules/src/text/es/working.ts";
import { spanishOf } from "../../packages/rules/src/text/working.ts";
import { UNKNOWN, writtenTexts } from "./workingTexts.ts";

/** A working is kept in English and shown in the reader's language: each text it can hold has its Spanish, and each Spanish its text. */

const root = join(import.meta.dirname, "..", "..");

/** Read as a formula reads them in both languages: functions, symbols, units. */
const FORMULA = new Set(
  "max min sin cos tan exp arccos sqrt few conf cmax sda rad mol mmol mmolc cmol meq lambda alpha ppm adj residual".split(
    " ",
  ),
);
/** A symbol that is a word; others stand for themselves. */
const WORD = /^[a-z]{3,}'?$/;
/** A field as the wire names it. */
const FIELD = /^[\w-]+(\.[\w-]+)+$/;

const hasWords = (text: string): boolean =>
  !FIELD.test(text) &&
  text
    .replace(/\w+,(?=\S)\w+/g, "")
    .split(/[^\p{L}\p{N}_°]+/u)
    .some((word) => /^[a-z]{3,}$/.test(word) && !FORMULA.has(word));

const NAME = "Poblano";
/** Cultivars keep their names. */
const CULTIVARS: ReadonlySet<string> = new Set(PUNGENCY_STUDIES.map(({ names }) => names));

/** The text with a number, or a name, in each place that the sources do not say. */
function fillings(text: string): string[] {
  const [first = "", ...rest] = text.split(UNKNOWN);
  return rest.reduce<string[]>(
    (begun, part) => begun.flatMap((start) => [`${start}7${part}`, `${start}${NAME}${part}`]),
    [first],
  );
}

const used = new Set<string>();

/** True where a reader of Spanish gets all of it; notes which entries said it. */
function isSaid(text: string, names: ReadonlySet<string> = new Set()): boolean {
  const said = fillings(text)
    .map(spanishOf)
    .find((found) => found?.left.every((left) => !hasWords(left) || names.has(left)));
  for (const key of said?.used ?? []) used.add(key);
  return said !== undefined || !hasWords(text);
}

describe("a working in Spanish", () => {
  test("has all that the sources write", () => {
    const written = writtenTexts(join(root, "packages", "rules", "src"));
    expect(written.length).toBeGreaterThan(1500);
    const left = written
      .filter(({ text, symbol }) => !isSaid(text, CULTIVARS) && (!symbol || WORD.test(text)))
      .map(({ text, where }) => `${where}: ${text}`);
    expect(left).toEqual([]);
  }, 300_000);

  test("has all that the answers of the examples hold", () => {
    const folder = join(root, "docs", "examples");
    const left = readdirSync(folder).flatMap((file) => {
      const state = JSON.parse(readFileSync(join(folder, file), "utf8"));
      const names = namesIn(state);
      return textsIn(advise(state))
        .filter((text) => !isSaid(text, names) && !isSaid(withoutNames(text, names), names))
        .map((text) => `${file}: ${text}`);
    });
    expect([...new Set(left)]).toEqual([]);
  });

  test("has what a source says where that stands for a formula", () => {
    const cited = [...PUNGENCY_STUDIES, ...ASH_CAPS, ...ASH_PH_CEILINGS].map(({ source }) => source);
    const said = [...cited, ...LIME_TARGET.beside].flatMap(({ locator }) => locator ?? []);
    expect(said.filter((text) => !isSaid(text))).toEqual([]);
  });

  test("says nothing that no rule writes", () => {
    const all = Object.values(workingBooks).flatMap((book) => Object.keys(book));
    expect(all.filter((key, i) => all.indexOf(key) !== i)).toEqual([]);
    expect(all.filter((key) => !used.has(key))).toEqual([]);
  });

  test("keeps every number and name that stood in the English", () => {
    const places = (text: string) => [...new Set(text.match(/\{(\d+|[a-z]+)\}/g))].sort();
    const unlike = Object.values(workingBooks).flatMap((book) =>
      Object.entries(book).filter(([en, es]) => String(places(en)) !== String(places(es))),
    );
    expect(unlike).toEqual([]);
  });
});

test("what nobody translated is shown as it was kept", () => {
  expect(workingText("hours below the floor", "en")).toBe("hours below the floor");
  expect(workingText("hours below the floor", "es")).toBe("horas por debajo del piso");
  expect(workingText("a text of an older version", "es")).toBe("a text of an older version");
});

test("a place keeps its number and says its word", () => {
  expect(workingText("potassium-nitrate in tank B", "es")).toBe("nitrato de potasio en el tanque B");
  expect(workingText("risk of frost when set out on 2026-05-20", "es")).toBe(
    "riesgo de helada con trasplante el 2026-05-20",
  );
  expect(workingText("sign leaves-dropping +1, weather hot -2", "es")).toMatch(
    /^señal .+ \+1, tiempo .+ -2$/,
  );
});

interface Shown {
  working?: {
    meaning: string;
    expression: string;
    value: unknown;
    unit: string;
    source?: { locator?: string } | null;
  }[];
  estimated?: { input: string; how: string }[];
}

/** All that one reads of the workings in an answer, wherever in it they stand. */
function textsIn(answer: unknown): string[] {
  if (answer === null || typeof answer !== "object") return [];
  const { working = [], estimated = [] } = answer as Shown;
  return [
    ...(Array.isArray(working) ? working : []).flatMap((line) => [
      line.meaning,
      line.expression,
      ...(typeof line.value === "string" ? [line.value] : []),
      line.unit,
    ]),
    ...(Array.isArray(estimated) ? estimated : []).flatMap(({ input, how }) => [input, how]),
    ...Object.values(answer).flatMap(textsIn),
  ];
}

/** Ids of the examples are words; those of an office are not. */
function namesIn(state: unknown): Set<string> {
  const names = new Set<string>(CULTIVARS);
  const walk = (thing: unknown, key = ""): void => {
    if (typeof thing === "string" && /^id$|Ids?$/.test(key)) names.add(thing);
    if (Array.isArray(thing)) for (const one of thing) walk(one, key);
    else if (thing !== null && typeof thing === "object")
      for (const [inner, value] of Object.entries(thing)) walk(value, inner);
  };
  walk(state);
  for (const guide of guides.values()) names.add(guide.title);
  return names;
}

const withoutNames = (text: string, names: ReadonlySet<string>): string =>
  [...names]
    .toSorted((a, b) => b.length - a.length)
    .reduce((now, name) => now.replace(new RegExp(`(?<=^|[ :(])${name}(?=$|[ :),.])`, "g"), NAME), text);
