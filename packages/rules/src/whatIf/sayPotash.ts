import type { Chart } from "../core/rule.ts";
import { Working } from "../core/working.ts";
import { contentsOf } from "../food/blend/contents.ts";
import { MOST_K2O_KG_PER_HA } from "../food/mineralNeed.ts";
import { type FeedingPlan, planFor } from "../food/plan.ts";
import { treatedShare } from "../food/strip.ts";
import { givenIfDone, openFeedings } from "../food/unanswered.ts";
import type { PlantingState } from "../states/states.ts";
import { MOST } from "../states/whatIf.ts";
import { type Message, measure, say, wordOf } from "../text/message.ts";
import { potashCarrier } from "./potashCarrier.ts";
import { type Saying, saying } from "./saying.ts";
import { todayOf } from "./subjects.ts";

const kgPerHa = (value: number) => measure(value, "kg/ha");

/** The season's potash with a dose in it: need, what would be given in all, and the salt that the dose puts on the strip. */
export function sayPotash(state: PlantingState, doseKgPerHa: number): Saying {
  const { planting } = state;
  const start = planting.setOutOn ?? planting.plannedSetOutOn;
  const goal = planting.yieldGoalTPerHa;
  if (start === undefined || goal === undefined) return saying();
  const today = todayOf(state);
  const plan = planFor(state, goal, start, today, givenIfDone(openFeedings(state, today), state));
  const w = new Working();
  w.line(
    "K2O need",
    "potash for the season, on cropped land",
    plan.k2o.response,
    plan.k2o.kgPerHa,
    "kg/ha",
    plan.k2o.sources[0] ?? null,
  );
  w.line(
    "K2O given",
    "potash given this season with what is tried",
    "records + dose",
    plan.givenK2o,
    "kg/ha",
  );
  w.line("K2O most", "most potash a year for most vegetables", "published", MOST_K2O_KG_PER_HA, "kg/ha", {
    key: "midwest-vegetable-guide-2022",
    locator: "p. 16 (SN-212)",
  });
  const said = [balanceSaid(plan)];
  if (doseKgPerHa > 0) said.push(...doseSaid(state, doseKgPerHa, w));
  return saying(said, { working: w, charts: [potashChart(plan, doseKgPerHa)] });
}

function balanceSaid({ k2o, givenK2o }: FeedingPlan): Message {
  const given = kgPerHa(givenK2o);
  if (givenK2o > MOST_K2O_KG_PER_HA)
    return say("what-if.potash.above-most", { given, most: kgPerHa(MOST_K2O_KG_PER_HA) });
  if (k2o.kgPerHa === null) return say("what-if.potash.unread", { given });
  const need = kgPerHa(k2o.kgPerHa);
  return givenK2o > k2o.kgPerHa
    ? say("what-if.potash.over", { given, need, over: kgPerHa(givenK2o - k2o.kgPerHa) })
    : say("what-if.potash.left", { given, need, left: kgPerHa(k2o.kgPerHa - givenK2o) });
}

/** Which material, and its salt where plants root: a strip along each row is salted more than the field. */
function doseSaid(state: PlantingState, doseKgPerHa: number, w: Working): Message[] {
  const { material, kg, held } = potashCarrier(state, doseKgPerHa);
  w.line("m", `the dose as ${material.kind}`, `dose x cropped land / ${material.k2oPct} % K2O`, kg, "kg");
  const name = wordOf(`material.${material.kind}`);
  const said = [
    say(held ? "what-if.potash.as-held" : "what-if.potash.as-usual", {
      kg: kg < 1 ? measure(1000 * kg, "g") : measure(kg, "kg"),
      material: name,
    }),
  ];
  const contents = contentsOf(material);
  for (const e of contents.estimated) w.estimate(e.input, e.how, e.source);
  if (contents.salt === undefined) return said;
  const share = treatedShare(state);
  const perHa = (doseKgPerHa * 100) / material.k2oPct;
  const salt = w.line(
    "salt",
    "salt of the dose on the treated strip, as sodium nitrate",
    `${perHa.toFixed(0)} kg/ha x salt index ${(100 * contents.salt).toFixed(1)} / 100 / ${share.toFixed(2)} of the land`,
    (perHa * contents.salt) / share,
    "kg/ha",
  );
  const most = state.settings.feedingSaltMostKgPerHa;
  said.push(
    most === undefined
      ? say("what-if.potash.salt", { salt: kgPerHa(salt) })
      : say(salt > most ? "what-if.potash.salt-over" : "what-if.potash.salt-within", {
          salt: kgPerHa(salt),
          most: kgPerHa(most),
        }),
  );
  return said;
}

/** What the season would have had of potash after each dose, against its need and the published most. */
function potashChart({ k2o, givenK2o }: FeedingPlan, doseKgPerHa: number): Chart {
  // Never below nothing by the last digit of a difference.
  const before = Math.max(0, givenK2o - doseKgPerHa);
  const doses = Array.from({ length: 9 }, (_, i) => (MOST.k2oKgPerHa * i) / 8);
  const flat = (value: number) => doses.map((d): [number, number] => [d, value]);
  const need = k2o.kgPerHa;
  return {
    id: "potash-by-dose",
    title: say("what-if.chart.potash"),
    x: { name: say("what-if.chart.dose"), kind: "number", unit: "kg/ha" },
    y: { name: say("what-if.chart.given"), unit: "kg/ha" },
    series: [
      {
        id: "given",
        name: say("what-if.chart.given"),
        style: "line",
        points: doses.map((d) => [d, before + d]),
      },
      ...(need === null
        ? []
        : [{ id: "need", name: say("what-if.chart.need"), style: "limit" as const, points: flat(need) }]),
      { id: "most", name: say("what-if.chart.most"), style: "limit", points: flat(MOST_K2O_KG_PER_HA) },
      { id: "tried", name: say("what-if.chart.tried"), style: "points", points: [[doseKgPerHa, givenK2o]] },
    ],
  };
}
