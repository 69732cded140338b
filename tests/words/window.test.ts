import { readFileSync } from "node:fs";
import { type Answer, advise } from "@pith/rules";
import { sayAnswer } from "@pith/services";
import { expect, test } from "vitest";

/** The days within which an advice holds, as a reader reads them. */

const windowOf = (example: string, rule: string, language: "en" | "es") => {
  const path = new URL(`../../docs/examples/${example}.json`, import.meta.url);
  const answers: Answer[] = advise(JSON.parse(readFileSync(path, "utf8")));
  const answer = answers.find((one) => one.rule.id === rule);
  if (answer?.kind !== "advice") throw new Error(`${example} gives no advice of ${rule}`);
  return { window: answer.window, said: sayAnswer(answer, { language, units: "metric" }).window ?? "" };
};

test("a window of years names them, so that it does not seem to end before it begins", () => {
  const { window, said } = windowOf("bed-mehlich-3", "soil-reading", "en");
  const [from, to] = [window.from?.slice(0, 4), window.to?.slice(0, 4)];
  expect(Number(to)).toBeGreaterThan(Number(from));
  expect(said).toMatch(new RegExp(`^From \\w+ \\d+, ${from} to \\w+ \\d+, ${to}\\. `));
  expect(windowOf("bed-mehlich-3", "soil-reading", "es").said).toMatch(
    new RegExp(`^Del \\d+ de \\w+ de ${from} al \\d+ de \\w+ de ${to}\\. `),
  );
});

test("a window of days names none", () => {
  expect(windowOf("planting-feeding", "feeding", "en").said).toMatch(/^From \w+ \d+ to \w+ \d+\. /);
});
