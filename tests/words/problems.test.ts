import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { problemText } from "@pith/rules";
import ts from "typescript";
import { expect, test } from "vitest";
import { spanishProblemOf } from "../../packages/rules/src/text/problem.ts";

/** Why something is refused is said in Spanish too: every text that the service and the rules' doors say it with. */

const ROOT = join(import.meta.dirname, "..", "..");
/** What programs and not people are told: the numbers' own doors, files of the command line, packs of sensors, start-up. */
const FOR_PROGRAMS =
  /quantities\/|worker\/|warmth\/hindcastSeries|sensors\/(senml|plain|appendReadings)|numbers\/|layout\/exact|openMail|imports\/stationDaily|cursor|growth\/stages|food\/schedule|guides\/classify|webhooks\/endpoints/;

const filesBelow = (folder: string): string[] =>
  readdirSync(join(ROOT, folder), { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts") && !name.includes("node_modules"))
    .map((name) => join(folder, name));

/** A text as somebody may meet it: a place is filled with a number. */
function textsOf(node: ts.Node): string[] {
  if (ts.isStringLiteralLike(node)) return [node.text];
  if (ts.isTemplateExpression(node))
    return [node.head.text + node.templateSpans.map((span) => `7${span.literal.text}`).join("")];
  if (ts.isConditionalExpression(node)) return [...textsOf(node.whenTrue), ...textsOf(node.whenFalse)];
  return [];
}

function refusalsIn(file: string): string[] {
  const source = ts.createSourceFile(
    file,
    readFileSync(join(ROOT, file), "utf8"),
    ts.ScriptTarget.Latest,
    true,
  );
  const found: string[] = [];
  const walk = (node: ts.Node) => {
    const says =
      (ts.isNewExpression(node) && node.expression.getText() === "ServiceError") ||
      (ts.isCallExpression(node) && node.expression.getText() === "refuse");
    const ofRow = ts.isNewExpression(node) && node.expression.getText() === "RowRefused";
    const text = ofRow ? node.arguments?.[0] : says ? node.arguments?.[1] : undefined;
    if (text) found.push(...textsOf(text));
    ts.forEachChild(node, walk);
  };
  walk(source);
  return found;
}

const refusals = ["packages/services/src", "packages/rules/src", "apps/api/src"]
  .flatMap(filesBelow)
  .filter((file) => !FOR_PROGRAMS.test(file))
  .flatMap((file) => refusalsIn(file).map((text) => [file, text] as const));

test("each refusal that people can meet has its Spanish", () => {
  expect(refusals.length).toBeGreaterThan(100);
  // Made of nothing but places: their parts are other texts.
  const whole = refusals.filter(
    ([, text]) => !/^(\w+\.)?7:? 7\.?$|^(7|after|farmIds): 7$|^7 7\.$/.test(text),
  );
  const missing = whole.filter(([, text]) => !spanishProblemOf(text));
  expect(missing).toEqual([]);
});

test("why a row of a file is refused is said in Spanish, with what stood there as it stood", () => {
  expect(problemText('"4,2x" is not a number', "es")).toBe("«4,2x» no es un número");
  expect(problemText('There is no bed "Lee" on this farm; its beds are Hut, Gate and 3 more', "es")).toBe(
    "En esta finca no hay cama «Lee»; sus camas son Hut, Gate y 3 más",
  );
});

test("places keep what stood in them, and English and unknown texts stay as they are", () => {
  expect(problemText("must be at most 90", "es")).toBe("debe ser 90 o menos");
  expect(problemText("must be at least 1 characters", "es")).toBe("debe tener al menos 1 letras");
  expect(problemText("must be at most 90", "en")).toBe("must be at most 90");
  expect(problemText("a text that nobody wrote", "es")).toBe("a text that nobody wrote");
});
