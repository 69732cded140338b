import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { type MessageFormatElement, parse, TYPE } from "@formatjs/icu-messageformat-parser";
import { cautions, LANGUAGES } from "@pith/rules";
import { describe, expect, test } from "vitest";
import en from "../../apps/dashboard/messages/en.json" with { type: "json" };
import es from "../../apps/dashboard/messages/es.json" with { type: "json" };
import { en as rulesEn } from "../../packages/rules/src/text/en/index.ts";
import { es as rulesEs } from "../../packages/rules/src/text/es/index.ts";

/** Every word for people stands in every language, takes the same values in each, and is used. */

type Tree = { [key: string]: string | Tree };

const flat = (tree: Tree, at: string[] = []): [string, string][] =>
  Object.entries(tree).flatMap(([key, value]) =>
    typeof value === "string" ? [[[...at, key].join("."), value]] : flat(value, [...at, key]),
  );

const desk = { en: new Map(flat(en)), es: new Map(flat(es)) };
const rules = { en: new Map(Object.entries(rulesEn)), es: new Map(Object.entries(rulesEs)) };

/** The values, plurals, choices and tags that a text is filled with. */
function placesOf(text: string): string[] {
  const found = new Set<string>();
  const walk = (elements: MessageFormatElement[]) => {
    for (const element of elements) {
      if (element.type === TYPE.literal || element.type === TYPE.pound) continue;
      const choices = element.type === TYPE.select ? Object.keys(element.options).sort().join("|") : "";
      found.add(`${TYPE[element.type]} ${element.value} ${choices}`);
      if ("options" in element) for (const { value } of Object.values(element.options)) walk(value);
      if ("children" in element) walk(element.children);
    }
  };
  walk(parse(text));
  return [...found].sort();
}

describe.each([
  ["the desk", desk],
  ["the rules", rules],
] as const)("%s", (_, words) => {
  test("each key stands in both languages", () => {
    expect([...words.es.keys()].sort()).toEqual([...words.en.keys()].sort());
  });

  test("each text takes the same values, plurals and choices in both", () => {
    const unlike = [...words.en].flatMap(([key, text]) => {
      const [ours, theirs] = [placesOf(text), placesOf(words.es.get(key) ?? "")];
      return JSON.stringify(ours) === JSON.stringify(theirs) ? [] : [{ key, ours, theirs }];
    });
    expect(unlike).toEqual([]);
  });

  test("no sentence was left in English", () => {
    // Names, units, symbols and words that are the same in both are one or two words long.
    const left = [...words.en].filter(
      ([key, text]) =>
        words.es.get(key) === text &&
        (text.replace(/\{[^}]*\}|<[^>]*>/g, "").match(/[A-Za-z]{2,}/g) ?? []).length > 2,
    );
    // A source is cited as it is printed; an institute goes by its name.
    expect(left.filter(([key]) => !/\.from$|^guides\.units\./.test(key))).toEqual([]);
  });
});

test("each caution says itself in every language", () => {
  for (const { id, text } of cautions.values()) {
    for (const language of LANGUAGES)
      expect(text[language].length, `${id} in ${language}`).toBeGreaterThan(20);
    expect(text.es, id).not.toBe(text.en);
  }
});

/** All code in a folder, to look for its words in. */
function codeBelow(folder: string): string {
  return readdirSync(folder, { withFileTypes: true })
    .filter(({ name }) => !["node_modules", ".next", "messages", "text"].includes(name))
    .map((entry) => {
      const path = join(folder, entry.name);
      if (entry.isDirectory()) return codeBelow(path);
      return /\.tsx?$/.test(entry.name) ? readFileSync(path, "utf8") : "";
    })
    .join("\n");
}

test("each text of the desk is used", () => {
  const code = codeBelow(join(import.meta.dirname, "..", "..", "apps", "dashboard"));
  const written = new Set([...code.matchAll(/["'`]([\w.$/ -]+)["'`]/g)].map((m) => m[1]));
  // Said once more on the page that an action leads to.
  for (const [, name = ""] of code.matchAll(/(?:saved|taken-back)=([\w-]+)/g)) written.add(name);
  // Dotted by hand, as in `words.title` of what an island was given.
  for (const [, name = ""] of code.matchAll(/[.?]\s*(\w+)/g)) written.add(name);
  for (const [, name = ""] of code.matchAll(/[{,]\s*(\w+)\s*[,}:]/g)) written.add(name);
  const begun = [...code.matchAll(/`([\w.-]*\.)\$\{/g)].map((m) => m[1] ?? "");
  const whole = new Set([...code.matchAll(/\.raw\(\s*["'`]([\w.-]+)["'`]/g)].map((m) => m[1]));
  const used = (key: string) => {
    const parts = key.split(".");
    for (let from = 0; from < parts.length; from++) {
      const rest = parts.slice(from).join(".");
      if (written.has(rest)) return true;
      if (begun.some((start) => rest.startsWith(start))) return true;
      for (let to = from + 1; to < parts.length; to++) {
        if (whole.has(parts.slice(from, to).join("."))) return true;
        // A whole branch handed on: its leaves are the wire's words.
        if (to > from && written.has(parts.slice(0, to).join(".")) && to === parts.length - 1) return true;
      }
    }
    return false;
  };
  // Named by the contract's fields and words, which their forms are made from; by what the rules could not judge.
  const byContract = /^(fields|words|bedPlan\.unknowns)\./;
  expect([...desk.en.keys()].filter((key) => !byContract.test(key) && !used(key))).toEqual([]);
});

test("each text of the rules is used", () => {
  // Those of readings and of decisions are looked up by what they are of.
  const packages = join(import.meta.dirname, "..", "..", "packages");
  const code = ["rules", "services"].map((name) => codeBelow(join(packages, name, "src"))).join("\n");
  const written = new Set([...code.matchAll(/["'`]([\w.:-]+)["'`]/g)].map((m) => m[1] ?? ""));
  const begun = new Set(
    [...code.matchAll(/`([\w.-]+)\$\{/g)].map((m) => m[1] ?? "").filter((start) => start.includes(".")),
  );
  const ended = [...code.matchAll(/\}([.-][\w.-]+)`/g)].map((m) => m[1] ?? "");
  const used = (key: string) =>
    written.has(key) ||
    [...begun].some((start) => key.startsWith(start)) ||
    // The rule's name comes first, by a helper of its own.
    written.has(key.slice(key.indexOf(".") + 1)) ||
    [...begun].some((start) => key.slice(key.indexOf(".") + 1).startsWith(start)) ||
    ended.some((end) => key.endsWith(end));
  expect([...rules.en.keys()].filter((key) => !/^reading\.|\.code\./.test(key) && !used(key))).toEqual([]);
});
