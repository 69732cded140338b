import { allotFor } from "../../food/blend/solveShed.ts";
import { demandFrom } from "../../food/demand.ts";
import { type InjectorAnswer, injectorWeek, type WeeklyWater, weeklyWater } from "../../food/fertigation.ts";
import type { GivenNutrients } from "../../food/given.ts";
import { contentPct } from "../../food/mayUse.ts";
import { type FeedingPlan, planFor } from "../../food/plan.ts";
import { type RainAhead, rainAhead } from "../../food/rainAhead.ts";
import {
  type Dose,
  doseOf,
  firstDose,
  firstWeek,
  isSlow,
  MOST_WEEKS_AT_ONCE,
  type Schedule,
  scheduleOf,
} from "../../food/schedule.ts";
import { type SecondaryNeed, secondaryNeeds } from "../../food/secondaryNeeds.ts";
import type { Demand, Fertigation, Material } from "../../states/food.ts";
import type { PlantingState } from "../../states/states.ts";
import { croppedAreaM2 } from "../../water/ground.ts";

/** What the question is asked with. */
export interface Frame {
  goal: number;
  start: string;
  today: string;
  /** The one material somebody chose. */
  chosen: Material | undefined;
  /** The rule cold-record has feed held back from this planting today. */
  holdBack: boolean;
}

export type FeedingCode =
  | "none-needed"
  | "enough-given"
  | "choose-material"
  | "buy"
  | "not-yet"
  | "after-rain"
  | "hold-back"
  | "feed-this-week"
  | "paused"
  | "none-this-week";

/** One reading: the plan, what the shed gives for it, what is due, and the decision. */
export interface FeedingReading {
  plan: FeedingPlan;
  demand: Demand;
  /** Calcium, magnesium and boron that a guide asks for. */
  secondary: SecondaryNeed[];
  schedule: Schedule;
  /** Due now, or next. */
  dose: Dose | undefined;
  dueNow: boolean;
  /** The same given at once for three weeks, where that is another amount and it may be done dry. */
  dry: Dose | undefined;
  /** Rain that the dose waits for, or is split for. */
  rain: RainAhead | undefined;
  /** The dose's feed through the injector, where there is one. */
  tanks: InjectorAnswer | undefined;
  /** Unknown where neither the season's water nor two weeks of waterings are put down. */
  water: WeeklyWater | undefined;
  /** Still to be bought for the rest of the season on this bed [kg]: beyond the shed, and beyond what can be bought. */
  toBuyKg: number;
  shortfallKg: number;
  code: FeedingCode;
}

/** Reads the state with what is only thought to have been given; `share` is what the whole farm's shed gives it. */
export function readingOf(
  state: PlantingState,
  frame: Frame,
  unconfirmed: GivenNutrients[],
  share: PlantingState["feeding"]["allotted"],
): FeedingReading {
  const plan = planFor(state, frame.goal, frame.start, frame.today, unconfirmed);
  const demand = demandFrom(state, plan, frame.goal, frame.today);
  const schedule = scheduleOf(state, plan, share ?? allotFor(demand, state.shed));
  const first = firstDose(state, plan, schedule);
  const dueNow = first !== undefined && firstWeek(plan, schedule) === 0;
  const rain = dueNow && first.parts.some(canWashOut) ? rainAhead(state, first.on) : undefined;
  const dose = first && rain ? movedFor(first, rain) : first;
  const fertigation = injectorOf(state);
  const water = fertigation && weeklyWater(state, frame.start, frame.today);
  const toBuyKg = schedule.materials.reduce(
    (sum, m) => sum + (m.material.stockKg === undefined ? 0 : m.kg - m.fromStockKg),
    0,
  );
  const reading = {
    plan,
    demand,
    secondary: secondaryNeeds(state, frame.today),
    schedule,
    dose,
    dueNow,
    dry: first && dryOf(state, plan, schedule, first),
    rain,
    tanks: fertigation && water && dose ? injectorWeek(fertigation, dose.parts, water) : undefined,
    water,
    toBuyKg,
    shortfallKg: toBuyKg + missingOf(state, frame.chosen, schedule),
  };
  return { ...reading, code: codeOf(reading, frame) };
}

/** Where something falls due, or would if the shed had it, and the cold holds it back. */
export const isHeldBack = ({ code }: Pick<FeedingReading, "code">, { holdBack }: Frame): boolean =>
  holdBack && (code === "hold-back" || code === "choose-material" || code === "buy");

/** Only a drip line has its feed injected. */
export const injectorOf = ({ feeding }: PlantingState): Fertigation | undefined =>
  feeding.method === "drip" ? feeding.fertigation : undefined;

/** Nitrogen that comes free at once; what rots first does not wait for rain. */
const canWashOut = ({ material }: { material: Material }) => material.nPct > 0 && !isSlow(material.kind);

/** After the rain; half now where the forecast sees no end of it. */
function movedFor(dose: Dose, rain: RainAhead): Dose {
  if (rain.giveOn !== undefined) return { ...dose, on: rain.giveOn };
  return {
    ...dose,
    parts: dose.parts.map((p) => ({ ...p, kg: p.kg / 2 })),
    nKgPerHa: dose.nKgPerHa / 2,
    k2oKgPerHa: dose.k2oKgPerHa / 2,
  };
}

function dryOf(state: PlantingState, plan: FeedingPlan, schedule: Schedule, dose: Dose): Dose | undefined {
  const { method } = state.feeding;
  if (dose.weeks > 1 || (method !== "broadcast" && method !== "banded")) return undefined;
  const dry = doseOf(state, plan, schedule, MOST_WEEKS_AT_ONCE);
  const kg = (d: Dose) => d.parts.reduce((sum, p) => sum + p.kg, 0);
  return dry && dry.weeks > 1 && kg(dry) > kg(dose) * (1 + 1e-9) ? dry : undefined;
}

/** What the chosen material would still have to bring of what it holds and is short [kg on this bed]. */
function missingOf(state: PlantingState, chosen: Material | undefined, schedule: Schedule): number {
  if (!chosen) return 0;
  const missing = schedule.short.find((s) => contentPct(chosen, s.nutrient) > 0);
  if (!missing) return 0;
  const hectares = croppedAreaM2(state.bed) / 10_000;
  return (missing.kgPerHa / (contentPct(chosen, missing.nutrient) / 100)) * hectares;
}

function codeOf(r: Omit<FeedingReading, "code">, { start, today, holdBack }: Frame): FeedingCode {
  const { plan, schedule } = r;
  const asked = r.demand.needs.some((n) => n.leastKgPerHa > 0);
  if (!asked && plan.nitrate?.pausesUntil !== undefined && plan.seasonN > 0) return "paused";
  if (!asked) return plan.seasonN === 0 ? "none-needed" : "enough-given";
  if (schedule.materials.length === 0) return r.demand.allowed.length === 0 ? "choose-material" : "buy";
  if (today < start) return "not-yet";
  const onHand = schedule.materials.some((m) => m.fromStockKg > 0 || m.material.stockKg === undefined);
  if (!onHand) return "buy";
  if (r.dueNow && holdBack) return "hold-back";
  if (r.dueNow && r.rain?.giveOn !== undefined) return "after-rain";
  if (r.dueNow) return "feed-this-week";
  return plan.nitrate?.pausesUntil === undefined ? "none-this-week" : "paused";
}
