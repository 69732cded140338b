import type { ClaimWords } from "../../../evidence/types.ts";
import { coldRecord } from "./cold-record.ts";
import { coldTonight } from "./cold-tonight.ts";
import { company } from "./company.ts";
import { containers } from "./containers.ts";
import { feeding } from "./feeding.ts";
import { hardening } from "./hardening.ts";
import { hotter } from "./hotter.ts";
import { irrigate } from "./irrigate.ts";
import { lime } from "./lime.ts";
import { lookCloser } from "./look-closer.ts";
import { manureTiming } from "./manure-timing.ts";
import { missing } from "./missing.ts";
import { nightHeat } from "./night-heat.ts";
import { ripe } from "./ripe.ts";
import { rotation } from "./rotation.ts";
import { salt } from "./salt.ts";
import { setOut } from "./set-out.ts";
import { settingDepth } from "./setting-depth.ts";
import { shed } from "./shed.ts";
import { soilReading } from "./soil-reading.ts";
import { sowBy } from "./sow-by.ts";
import { stage } from "./stage.ts";
import { tooHot } from "./too-hot.ts";
import { topping } from "./topping.ts";
import { trial } from "./trial.ts";
import { woodAsh } from "./wood-ash.ts";

export { choiceWords } from "./choices.ts";
export { citeWords } from "./cites.ts";
export { ruleWords } from "./rules.ts";

/** What the evidence register says, in Spanish, by claim. Sources are cited as they are printed. */
export const claimWords: Record<string, ClaimWords> = {
  ...setOut,
  ...coldRecord,
  ...coldTonight,
  ...nightHeat,
  ...hardening,
  ...sowBy,
  ...stage,
  ...ripe,
  ...settingDepth,
  ...topping,
  ...lookCloser,
  ...irrigate,
  ...hotter,
  ...salt,
  ...tooHot,
  ...soilReading,
  ...lime,
  ...woodAsh,
  ...feeding,
  ...shed,
  ...manureTiming,
  ...missing,
  ...containers,
  ...company,
  ...rotation,
  ...trial,
};
