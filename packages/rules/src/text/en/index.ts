import { coldRecord } from "./cold-record.ts";
import { common } from "./common.ts";
import { feeding } from "./feeding.ts";
import { irrigate } from "./irrigate.ts";
import { said } from "./said.ts";
import { salt } from "./salt.ts";
import { setOut } from "./set-out.ts";
import { settingDepth } from "./setting-depth.ts";
import { soilReading } from "./soil-reading.ts";

/** All English text of the rules, by key. */
export const en: Record<string, string> = {
  ...common,
  ...said,
  ...setOut,
  ...coldRecord,
  ...settingDepth,
  ...irrigate,
  ...salt,
  ...soilReading,
  ...feeding,
};
