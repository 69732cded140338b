import { bedPlan } from "./working/bedPlan.ts";
import { borrowed } from "./working/borrowed.ts";
import { cited } from "./working/cited.ts";
import { climate } from "./working/climate.ts";
import { food } from "./working/food.ts";
import { growth } from "./working/growth.ts";
import { inputs } from "./working/inputs.ts";
import { soil } from "./working/soil.ts";
import { statistics } from "./working/statistics.ts";
import { symbols } from "./working/symbols.ts";
import { units } from "./working/units.ts";
import { warmth } from "./working/warmth.ts";
import { water } from "./working/water.ts";
import { words } from "./working/words.ts";

/** What is said for a working alone, by theme. */
export const workingBooks = {
  climate,
  soil,
  water,
  statistics,
  warmth,
  growth,
  food,
  bedPlan,
  words,
  cited,
  units,
  symbols,
  inputs,
};

/** All Spanish of a working, by its English. `{1}` stands for a number or a day, `{name}` for words. */
export const working: Record<string, string> = {
  ...borrowed,
  ...climate,
  ...soil,
  ...water,
  ...statistics,
  ...warmth,
  ...growth,
  ...food,
  ...bedPlan,
  ...words,
  ...cited,
  ...units,
  ...symbols,
  ...inputs,
};
