import type { lowerBound } from "../../layout/bound.ts";
import type { PlanCheck } from "../../layout/checkPlan.ts";
import type { Model } from "../../layout/model.ts";
import type { Stand } from "../../layout/stand.ts";
import type { Hint } from "./hint.ts";

/** A plan looked over. */
export interface Looked {
  m: Model;
  stands: (Stand | undefined)[];
  check: PlanCheck;
  bound: ReturnType<typeof lowerBound>;
  hint: Hint | undefined;
}
