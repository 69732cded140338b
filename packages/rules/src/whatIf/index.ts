export { chosenText } from "../rules/what-if/chosen.ts";
export { answerSaid } from "../rules/what-if/tables.ts";
export {
  CHOICE_NAMES,
  type ChoiceName,
  COVER_STEPS,
  LEAST_WITHHELD_PCT,
  MOST,
  TOPPED_STEPS,
  type WhatIf,
  WhatIfSchema,
} from "../states/whatIf.ts";
export { differing, type Explored, RULE_OF, type WhatIfDesk, whatIfOf } from "./explore.ts";
export type { Starting } from "./starting.ts";
export { put, type Subjects } from "./subjects.ts";
