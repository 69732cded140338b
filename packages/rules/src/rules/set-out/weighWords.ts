import type { Chart } from "../../core/rule.ts";
import type { SourceRef, Working } from "../../core/working.ts";
import { PROTECTION_COSTS, PROTECTION_COSTS_SOURCE } from "../../tables/protectionCosts.ts";
import { type Message, measure, onDay, say } from "../../text/message.ts";
import type { Assessment } from "./assess.ts";
import type { WayWeighed, Weighed } from "./weigh.ts";

const SINE: SourceRef = { key: "baskerville-emin-1969", locator: "single sine" };
const PRACTICE: SourceRef = { key: "common-practice" };

const wordOfWay = (id: WayWeighed["id"]) => ({ word: `set-out.way.${id}` });
const heatOf = (way: WayWeighed | undefined): number => way?.heatC.at(-1) ?? 0;

/** Waiting against protecting, as a grower would weigh them. */
export function weighSteps(a: Assessment, weighed: Weighed | null): Message[] {
  if (!weighed) return [];
  const { waitDays, opens, harvest, waiting, ways } = weighed;
  const days = measure(waitDays, "days");
  const heat = measure(heatOf(ways[0]), "C-days");
  const until = onDay(a.asItStands.curve[a.wanted + waitDays]?.day ?? a.today);
  return [
    say(opens ? "set-out.step.wait-heat" : "set-out.step.wait-heat-open", { days, heat, until }),
    ...(harvest
      ? [
          say("set-out.step.wait-harvest", {
            lost: measure(harvest.lostDays, "days"),
            days: measure(harvest.days, "days"),
            share: measure(100 * harvest.share, "pct"),
          }),
        ]
      : []),
    ...(waiting === null ? [] : [say("set-out.step.wait-money", { money: Math.round(waiting) })]),
    ...ways.flatMap((way) => (way.cost ? [protectionStep(way, way.cost, weighed)] : [])),
    say("set-out.step.fuel"),
  ];
}

function protectionStep(way: WayWeighed, cost: NonNullable<WayWeighed["cost"]>, weighed: Weighed): Message {
  const params = {
    way: wordOfWay(way.id),
    heat: measure(heatOf(way), "C-days"),
    materials: Math.round(cost.materials),
    hours: measure(cost.hours, "hours"),
  };
  if (!way.within) return say("set-out.step.protect-not-enough", params);
  if (cost.money === null) return say("set-out.step.protect-hours", params);
  const money = { ...params, money: Math.round(cost.money) };
  if (weighed.waiting === null) return say("set-out.step.protect-money", money);
  return say(
    cost.money < weighed.waiting ? "set-out.step.protect-cheaper" : "set-out.step.protect-dearer",
    money,
  );
}

/** What would give waiting and protecting their price. */
export const weighLacks = (weighed: Weighed | null): Message[] =>
  weighed?.missing.map((what) => say(`set-out.change.lacks-${what}`)) ?? [];

/** The calculation behind it. */
export function weighLines(w: Working, weighed: Weighed | null, baseGiven: boolean): void {
  if (!weighed) return;
  const { waitDays, opens, baseC, ways, own, harvest, worth, waiting } = weighed;
  const allOwn = own.hoursPer100M2 !== null && own.hoursPerBedAndDay !== null;
  w.line(
    "wait",
    "days weighed",
    opens ? "earliest - wanted day" : "no date opens: weighed over a stretch",
    waitDays,
    "days",
    opens ? null : PRACTICE,
  );
  w.line("Tb", "base of heat units", baseGiven ? "given" : "usual", baseC, "C", baseGiven ? null : PRACTICE);
  for (const way of ways) {
    w.line(
      `GDD ${way.id}`,
      "heat units at the plants over those days, mean of the years",
      way.id === "go"
        ? "Σ single sine above Tb, nights with site and standing cover"
        : "the same with the protection's nights; its warmer days have no published figure and are left out",
      heatOf(way),
      "C d",
      SINE,
    );
  }
  if (harvest) {
    w.line(
      "H",
      "days of harvest, set out on the wanted day",
      `mean of ${harvest.years} years: first autumn frost - set out - days to maturity, not below 0`,
      harvest.days,
      "days",
    );
    w.line("ΔH", "of these lost by waiting", "H - H after the wait", harvest.lostDays, "days");
  }
  if (worth !== null)
    w.line("V", "worth of the harvest", "yield goal × length × bed spacing × price", worth, "money");
  if (waiting !== null) w.line("C_wait", "money of waiting", "V ΔH / H", waiting, "money");
  for (const way of ways) {
    if (!way.cost || way.id === "go") continue;
    const row = PROTECTION_COSTS[way.id];
    w.line(
      `M ${way.id}`,
      "materials, a season's share",
      `${row.perM2} a m2 × bed`,
      way.cost.materials,
      "money",
      PROTECTION_COSTS_SOURCE,
    );
    w.line(
      `h ${way.id}`,
      "hours to put up, open and close, and take off",
      `${ownOr(own.hoursPer100M2, own.covering, row.hoursPer100M2)} a 100 m2 + ${ownOr(own.hoursPerBedAndDay, own.airing, row.hoursPerBedAndDay)} a day, at least two weeks`,
      way.cost.hours,
      "h",
      allOwn ? null : PROTECTION_COSTS_SOURCE,
    );
    if (way.cost.money !== null) {
      w.line(`C ${way.id}`, "money of protecting", "materials + hours × labour", way.cost.money, "money");
    }
  }
  w.estimate(
    "cost of protecting",
    allOwn ? "materials of common practice" : "materials and hours of common practice",
    PROTECTION_COSTS_SOURCE,
  );
}

/** Hours as the farm's records have them, or as common practice. */
const ownOr = (own: number | null, records: number, practice: number): string =>
  own === null ? `${practice} h` : `${Number(own.toFixed(2))} h (median of ${records} records of this farm)`;

/** Heat units that each way has won over waiting, day by day. */
export const weighChart = (a: Assessment, weighed: Weighed): Chart => ({
  id: "heat-by-waiting",
  title: say("set-out.chart.heat"),
  x: { name: say("set-out.chart.wait-until"), kind: "date" },
  y: { name: say("set-out.chart.heat-units"), unit: "C-days" },
  series: weighed.ways.map((way) => ({
    id: way.id,
    name: say(`set-out.way.${way.id}`),
    style: "line",
    points: way.heatC.flatMap((heat, i): [string, number][] => {
      const date = a.asItStands.curve[a.wanted + i];
      return date ? [[date.day, heat]] : [];
    }),
  })),
});
