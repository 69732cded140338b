import { addDays, daysBetween, localDay } from "../core/days.ts";
import type { Answer } from "../core/rule.ts";
import { HORIZON_DAYS as WATER_DAYS } from "../rules/irrigate/setting.ts";
import { HORIZON_DAYS as SET_OUT_DAYS } from "../rules/set-out/line.ts";
import type { State } from "../states/states.ts";
import type { LimeKind } from "../tables/limeMaterials.ts";
import type { MeasureUnit } from "../text/message.ts";

/** One key amount of an answer as a number to reckon with; a day as days from today. */
export interface AmountOf {
  id: string;
  unit: "day" | MeasureUnit;
  /** A day this far ahead stands for any later one. */
  beyond?: number;
  /** NaN where the answer has none. */
  value(answer: Answer): number;
}

const dayParam = (answer: Answer, name: string): string | undefined => {
  const param = answer.kind === "advice" ? answer.decision.text.params[name] : undefined;
  return typeof param === "object" && "day" in param ? param.day : undefined;
};

/** Day from which plants may stand there without anything put up. */
export function setOutAmounts(state: State & { kind: "planting" }): AmountOf[] {
  const today = localDay(state.asOf, state.site.timeZone);
  const beyond = SET_OUT_DAYS + 1;
  const value = (answer: Answer) => {
    if (answer.kind !== "advice") return Number.NaN;
    const day = dayParam(answer, answer.decision.code === "protect" ? "open" : "day");
    const none = answer.decision.text.key.endsWith("protect-only");
    return day === undefined || none ? beyond : daysBetween(today, day);
  };
  return [{ id: "set-out-day", unit: "day", beyond, value }];
}

/** What is due today: minutes and depth; where nothing is, the day of the next watering. */
export function irrigateAmounts(state: State & { kind: "valve" }, now: Answer): AmountOf[] {
  const today = localDay(state.asOf, state.site.timeZone);
  const amount = (name: string) => (answer: Answer) =>
    answer.kind === "advice" ? (answer.amounts[name] ?? Number.NaN) : Number.NaN;
  if (now.kind === "advice" && now.decision.code === "water-now") {
    return [
      { id: "minutes", unit: "minutes", value: amount("minutes") },
      { id: "net-mm", unit: "mm", value: amount("netMm") },
    ];
  }
  const beyond = WATER_DAYS + 1;
  const value = (answer: Answer) => {
    if (answer.kind !== "advice") return Number.NaN;
    return answer.window.to === null ? beyond : Math.min(beyond, daysBetween(today, answer.window.to));
  };
  return [{ id: "next-watering", unit: "day", beyond, value }];
}

/** What is left to feed over the season. Potash only where its need can be read at all. */
export function feedingAmounts(potashRead: boolean): AmountOf[] {
  const amount = (name: string) => (answer: Answer) =>
    answer.kind === "advice" ? (answer.amounts[name] ?? Number.NaN) : Number.NaN;
  return [
    { id: "season-n", unit: "kg/ha", value: amount("seasonNKgPerHa") },
    ...(potashRead ? [{ id: "season-k2o", unit: "kg/ha", value: amount("seasonK2oKgPerHa") } as const] : []),
  ];
}

/** The likely day of the stage that comes next today; one already past by a draw has its day too. */
export function stageAmounts(state: State & { kind: "planting" }, now: Answer): AmountOf[] {
  const today = localDay(state.asOf, state.site.timeZone);
  const next = now.kind === "advice" ? now.decision.text.params.next : undefined;
  if (typeof next !== "object" || !("word" in next)) return [];
  const value = (answer: Answer) => {
    const rows = answer.kind === "advice" ? (answer.table?.find((t) => t.id === "stages")?.rows ?? []) : [];
    const row = rows.find(([name]) => isMessage(name) && name.key === next.word);
    if (!row) return Number.NaN;
    const likely = row[LIKELY];
    return typeof likely === "string" ? daysBetween(today, likely) : STAGE_DAYS;
  };
  return [{ id: "next-stage", unit: "day", beyond: STAGE_DAYS, value }];
}

/** Column of the likely day in the rule's table of stages, and a day no season reaches. */
const LIKELY = 3;
const STAGE_DAYS = 250;

const isMessage = (cell: unknown): cell is { key: string } =>
  typeof cell === "object" && cell !== null && "key" in cell;

/** Lime to give; none where the pH needs none. */
export function limeAmounts(): AmountOf[] {
  const value = (answer: Answer) => {
    if (answer.kind === "refused" || answer.kind === "needs-more") return Number.NaN;
    return answer.kind === "advice" ? (answer.amounts.limeKgPerHa ?? 0) : 0;
  };
  return [{ id: "lime", unit: "kg/ha", value }];
}

/** The kind of lime an answer advises. */
export function limeKindOf(answer: Answer): LimeKind | undefined {
  if (answer.kind !== "advice" || answer.amounts.limeKgPerHa === undefined) return undefined;
  const { material } = answer.decision.text.params;
  return typeof material === "object" && "word" in material
    ? (material.word.replace(/^material\./, "") as LimeKind)
    : undefined;
}

/** What people are shown of a number reckoned with; null for a day later than the rule looks, and where there is none. */
export function shown(amount: AmountOf, value: number, today: string): number | string | null {
  if (Number.isNaN(value)) return null;
  if (amount.unit !== "day") return value;
  const days = Math.round(value);
  return amount.beyond !== undefined && days >= amount.beyond ? null : addDays(today, days);
}
