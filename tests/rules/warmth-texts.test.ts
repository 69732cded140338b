import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { CHOICE_IDS } from "@pith/rules";
import { describe, expect, test } from "vitest";
import { coldRecord } from "../../packages/rules/src/text/en/cold-record.ts";
import { coldTonight } from "../../packages/rules/src/text/en/cold-tonight.ts";
import { hardening } from "../../packages/rules/src/text/en/hardening.ts";
import { nightHeat } from "../../packages/rules/src/text/en/night-heat.ts";
import { ripe } from "../../packages/rules/src/text/en/ripe.ts";
import { setOut } from "../../packages/rules/src/text/en/set-out.ts";
import { settingDepth } from "../../packages/rules/src/text/en/setting-depth.ts";
import { sowBy } from "../../packages/rules/src/text/en/sow-by.ts";
import { stage } from "../../packages/rules/src/text/en/stage.ts";
import { tooHot } from "../../packages/rules/src/text/en/too-hot.ts";
import { topping } from "../../packages/rules/src/text/en/topping.ts";

const rulesFolder = join(import.meta.dirname, "../../packages/rules/src/rules");
const sourceOf = (rule: string): string =>
  readdirSync(join(rulesFolder, rule))
    .map((file) => readFileSync(join(rulesFolder, rule, file), "utf8"))
    .join("\n");

describe.each([
  ["set-out", setOut],
  ["cold-record", coldRecord],
  ["cold-tonight", coldTonight],
  ["night-heat", nightHeat],
  ["hardening", hardening],
  ["sow-by", sowBy],
  ["too-hot", tooHot],
  ["setting-depth", settingDepth],
  ["topping", topping],
  ["stage", stage],
  ["ripe", ripe],
])("texts of %s", (rule, texts) => {
  const source = sourceOf(rule);
  const literal = new Set(
    [...source.matchAll(new RegExp(`"(${rule}\\.[a-z0-9.-]+)"`, "g"))].map((m) => m[1] as string),
  );
  const prefixes = [...source.matchAll(new RegExp(`\`(${rule}\\.[a-z0-9.-]+)\\$\\{`, "g"))].map(
    (m) => m[1] as string,
  );
  const isChoice = (key: string) => CHOICE_IDS.some((id) => id === key);
  const evidence = (key: string) =>
    readFileSync(join(rulesFolder, "../evidence/claims", `${rule}.ts`), "utf8").includes(`id: "${key}"`);

  test("every key the rule names has a text", () => {
    expect(
      [...literal].filter((key) => texts[key] === undefined && !isChoice(key) && !evidence(key)),
    ).toEqual([]);
    expect(prefixes.filter((prefix) => !Object.keys(texts).some((key) => key.startsWith(prefix)))).toEqual(
      [],
    );
  });
  test("every text is named by the rule", () => {
    const used = (key: string) => literal.has(key) || prefixes.some((prefix) => key.startsWith(prefix));
    expect(Object.keys(texts).filter((key) => !used(key))).toEqual([]);
  });
});
