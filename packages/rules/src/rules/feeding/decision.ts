import { addDays, instantAt } from "../../core/days.ts";
import type { Expected, Stakes } from "../../core/rule.ts";
import { missedN } from "../../food/plan.ts";
import type { PlantingState } from "../../states/states.ts";
import { type Message, measure, onDay, say, wordOf } from "../../text/message.ts";
import { croppedAreaM2 } from "../../water/ground.ts";
import { amount } from "./amount.ts";
import { type FeedingCode, type FeedingReading, type Frame, isHeldBack } from "./reading.ts";

/** Hour of the week's last day until which giving it still helps. */
const LAST_HOUR = 20;
/** Mulched Cubanelle in Puerto Rico: 20.8 t/ha without nitrogen, 51.2 at best (SN-307). */
const LOSS_WITHOUT_NITROGEN = 1 - 20.8 / 51.2;

export function decisionText(r: FeedingReading, frame: Frame): Message {
  const { dose, dueNow, plan, schedule } = r;
  const [first] = dose?.parts ?? [];
  const [short] = schedule.short;
  const named = first?.material ?? schedule.materials[0]?.material ?? frame.chosen;
  return say(`feeding.decision.${r.code}${r.code === "buy" && !named ? "-any" : ""}`, {
    n: measure(dueNow && dose ? dose.nKgPerHa : (plan.weeksN[0]?.kgPerHa ?? 0), "kg/ha"),
    due: (plan.weeksN[0]?.kgPerHa ?? 0) > 0 && !frame.holdBack ? "some" : "none",
    season: measure(plan.leftN, "kg/ha"),
    material: named ? wordOf(`material.${named.kind}`) : "",
    more: Math.max(0, (dose?.parts.length ?? 1) - 1),
    kg: amount(first?.kg ?? 0),
    weeks: dose?.weeks ?? 1,
    day: onDay(dose?.on ?? plan.from),
    rain: measure(r.rain?.rainMm ?? 0, "mm"),
    until: onDay(plan.nitrate?.pausesUntil ?? plan.from),
    short: short ? "some" : "none",
    missing: measure(short?.kgPerHa ?? 0, "kg/ha"),
    nutrient: wordOf(`feeding.nutrient.${(short?.nutrient ?? "N").toLowerCase()}`),
  });
}

/** Where a mineral alone is due: no response figure for one week's phosphate or potash was found (common practice). */
const HARM_OF_A_MINERAL_WEEK = 0.001;
const PRESSES: ReadonlySet<FeedingCode> = new Set<FeedingCode>(["feed-this-week", "choose-material", "buy"]);

/** A dose this many times what falls due is said beside it (cp). */
const MORE_THAN_DUE = 1.05;

/**
 * Only what falls due this week is at stake now: what comes later can still be given later.
 *
 *   harm = L ((m + s)² - m²)     L loss without nitrogen, s share of the season's need due now, m share missed so far
 *
 * A response that flattens towards its best, as the rate trials found (SN-228), taken as a parabola (common practice):
 * one week missed costs little, each further one more, all of them together L.
 */
export function stakesOf(state: PlantingState, r: FeedingReading, frame: Frame): Stakes {
  const { plan, dose } = r;
  const dueN = plan.weeksN[0]?.kgPerHa ?? 0;
  const dueK2o = plan.weeksK2o[0]?.kgPerHa ?? 0;
  const mineral = dueK2o > 0 || (plan.leftP2o5 ?? 0) > 0;
  if (isHeldBack(r, frame)) {
    return { harm: 0, reason: say("feeding.stakes.cold"), actBy: null };
  }
  if (!PRESSES.has(r.code) || (dueN === 0 && !mineral)) {
    return {
      harm: 0,
      reason: say(`feeding.stakes.${r.code === "after-rain" ? "rain" : "none"}`),
      actBy: null,
    };
  }
  const actBy = instantAt(addDays(plan.from, 6), LAST_HOUR, state.site.timeZone);
  if (dueN === 0) return { harm: HARM_OF_A_MINERAL_WEEK, reason: say("feeding.stakes.mineral"), actBy };
  const share = dueN / plan.seasonN;
  const missed = missedN(plan) / plan.seasonN;
  // What works slowly, or is given for weeks at once, brings more than falls due: the dose is not what is at stake.
  const dosed = r.code === "feed-this-week" && dose ? dose.nKgPerHa / plan.seasonN : 0;
  const more = dosed > share * MORE_THAN_DUE;
  return {
    harm: Math.min(1, LOSS_WITHOUT_NITROGEN * ((missed + share) ** 2 - missed ** 2)),
    reason: say("feeding.stakes", {
      share: measure(100 * share, "pct"),
      more: more ? "some" : "none",
      dosed: measure(more ? 100 * dosed : 0, "pct"),
      loss: measure(100 * LOSS_WITHOUT_NITROGEN, "pct"),
    }),
    actBy,
  };
}

/** The dose's first material and what goes with it. The nitrogen is that of the whole dose. */
export function expectedOf(state: PlantingState, r: FeedingReading): Expected | null {
  const [first, ...others] = r.dose?.parts ?? [];
  if (!r.dose || !first || r.code === "buy" || r.code === "hold-back") return null;
  return {
    kind: "application",
    date: r.dose.on,
    materialId: first.material.id,
    amountKg: first.kg,
    areaM2: croppedAreaM2(state.bed),
    nKgPerHa: r.dose.nKgPerHa,
    ...(others.length > 0 && {
      alongside: others.map(({ material, kg }) => ({ materialId: material.id, amountKg: kg })),
    }),
  };
}
