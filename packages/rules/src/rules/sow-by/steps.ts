import type { Step } from "../../core/rule.ts";
import type { PlantingState } from "../../states/states.ts";
import { type Message, measure, onDay, say } from "../../text/message.ts";
import { FASTEST_C, type SowPlan } from "./plan.ts";

/** Above this fewer seedlings come up normal: 98 of 100 at 25 C, 95 at 30 C, 70 at 35 C. */
const TOO_WARM_C = 30;

/** What to do, in the order in which a grower would do it. */
export function stepsOf(state: PlantingState, p: SowPlan): Step[] {
  const { raising, seeds, dates } = p;
  const late = p.code === "too-late";
  const steps: (Message | null)[] = [
    say("sow-by.step.seeds", {
      seeds: seeds.seeds,
      plants: state.planting.plants,
      germination: measure(seeds.germinationPct, "pct"),
      loss: measure(seeds.lossPct, "pct"),
      chance: measure(100 * seeds.chance, "pct"),
    }),
    say("sow-by.step.emerge", {
      c: measure(raising.mediumC, "C"),
      days: measure(raising.germinationDays, "days"),
    }),
    raising.savedByWarmthDays > 0
      ? say("sow-by.step.warmer", {
          c: measure(FASTEST_C, "C"),
          days: measure(raising.savedByWarmthDays, "days"),
        })
      : null,
    raising.mediumC > TOO_WARM_C
      ? say("sow-by.step.cooler", { c: measure(FASTEST_C, "C"), pct: measure(raising.normalPct, "pct") })
      : null,
    ...(late
      ? [say("sow-by.step.late", { soonest: onDay(p.soonest) })]
      : [
          say("sow-by.step.pot-on", { from: onDay(dates.potOnFrom), to: onDay(dates.potOnTo) }),
          say("sow-by.step.harden", { day: onDay(dates.hardenFrom) }),
          say("sow-by.step.out", { day: onDay(dates.setOut) }),
        ]),
    say("sow-by.step.leaves"),
  ];
  return steps.flatMap((text) => (text ? [{ text }] : []));
}
