import { cautionsFor } from "../../cautions/register.ts";
import { addDays, instantAt, localDay } from "../../core/days.ts";
import type { AdviceBody, AnswerBody, NeedsMoreBody, Rule, Stakes } from "../../core/rule.ts";
import { Working } from "../../core/working.ts";
import type { PlantingState } from "../../states/states.ts";
import { MATERIAL_FACTS } from "../../tables/materials.ts";
import { type Message, measure, onDay, say } from "../../text/message.ts";
import { isUnderPlastic } from "../../water/rainReaches.ts";
import { chartsOf } from "./chart.ts";
import { demandAhead } from "./demand.ts";
import { type Potted, pottedOf, refuseUnreadable } from "./door.ts";
import { drainSteps } from "./drainSteps.ts";
import { feedSteps } from "./feedSteps.ts";
import { mediumOf } from "./filling.ts";
import { ALKALINITY_DESIRABLE, type PotReading, readPots } from "./judge.ts";
import { missingTexture, missingWeather } from "./missing.ts";
import { howOften, volume } from "./say.ts";
import { sizeMessage } from "./slowFeed.ts";
import { waterSteps } from "./waterSteps.ts";

/** Salt that gathers burns roots; a wrong pH starves leaves slowly; the rest is kept as it is (common practice). */
const HARM = { flush: 0.1, "correct-ph": 0.05, steady: 0.02 } as const;

/** How much water and feed do these containers want, how often, and when must they be flushed? */
export const containersRule: Rule<"planting"> = {
  id: "containers",
  version: 1,
  question: "How much water and feed do these containers want?",
  subject: "planting",
  needs: [
    "how many containers, how large, and what fills them",
    "the forecast, or the last days of weather",
    "the drain: its conductivity, its pH and how much of a watering runs out",
    "a water test: conductivity, alkalinity, nitrate",
    "a feed that dissolves, and the injector if there is one",
  ],
  run,
};

const no = (reason: Message): AnswerBody => ({ kind: "does-not-apply", reason });

function run(state: PlantingState): AnswerBody {
  const today = localDay(state.asOf, state.site.timeZone);
  const potted = pottedOf(state, today);
  if (potted === "ground") return no(say("containers.not.ground"));
  if (potted === "ended") return no(say("containers.not.ended"));
  if (potted === "not-out") return no(say("containers.not.not-out"));
  refuseUnreadable(state, today);
  const demand = demandAhead(potted);
  const available = mediumOf(state.bed, potted.pots, "bed");
  const missing: NeedsMoreBody["missing"] = [
    ...(demand ? [] : [missingWeather(potted)]),
    ...(available ? [] : [missingTexture(potted)]),
  ];
  if (!demand || !available) return { kind: "needs-more", missing, working: [], estimated: [] };
  const w = new Working();
  return adviceFrom(readPots(potted, demand, available, w), w);
}

function adviceFrom(r: PotReading, w: Working): AdviceBody {
  const { today } = r.potted;
  writeEstimates(r, w);
  const steps = [
    ...drainSteps(r),
    ...waterSteps(r),
    ...feedSteps(r),
    ...testSteps(r.potted),
    sizeMessage(r.potted.pots.volumeL / r.potted.plantsPerPot),
  ];
  return {
    kind: "advice",
    decision: { code: r.code, text: decisionText(r) },
    steps: steps.map((text) => ({ text })),
    window: { from: today, to: r.demand.days.at(-1)?.day ?? null, endsBy: say("containers.ends") },
    stakes: stakesOf(r),
    working: w.lines,
    estimated: w.estimated,
    evidence: [
      "containers.bounded-root-zone",
      "containers.nitrogen-120",
      "containers.nitrogen-staged",
      "containers.feed-meter",
      "containers.leaching",
      "containers.flush-threshold",
      "containers.drain-ph-vegetables",
      "containers.drain-ph-general",
      "containers.alkalinity",
      "containers.slow-feed",
      "containers.size",
      "containers.hot-pots",
      "containers.potting-tests",
    ],
    grade: "weak",
    limits: limitsOf(r),
    cautions: cautionsOf(r),
    wouldChange: wouldChangeOf(r),
    cases: [],
    expected: r.code === "steady" ? null : { kind: "look", date: today },
    amounts: {
      mlPerPlantPerWatering: (1000 * r.usual.grossL) / r.potted.plantsPerPot,
      timesADay: r.usual.timesADay / r.usual.everyDays,
      ppmN: r.feed.ppmN,
    },
    charts: chartsOf(r),
  };
}

function decisionText(r: PotReading): Message {
  if (r.code === "flush") {
    return say("containers.decision.flush", { litres: volume(r.potted.pots.volumeL) });
  }
  const { ph } = r.drain;
  if (r.code === "correct-ph" && ph) {
    return say("containers.decision.correct-ph", { ph: ph.value, day: onDay(ph.on) });
  }
  const { often, count } = howOften(r.usual);
  return say(`containers.decision.steady-${often}`, {
    ...count,
    plant: volume(r.usual.grossL / r.potted.plantsPerPot),
    ppm: measure(r.feed.ppmN, "mg/L"),
  });
}

function stakesOf({ code, potted }: PotReading): Stakes {
  const tomorrow = addDays(potted.today, 1);
  return {
    harm: HARM[code],
    reason: say(`containers.stakes.${code}`),
    actBy: code === "flush" ? instantAt(tomorrow, 20, potted.state.site.timeZone) : null,
  };
}

/** Tests of the soil that lie with this bed and are not read for pots. */
function testSteps({ state, today, pots }: Potted): Message[] {
  const [newest] = state.soilTests
    .filter((t) => t.sampledOn <= today)
    .toSorted((a, b) => (a.sampledOn < b.sampledOn ? 1 : -1));
  if (!newest) return [];
  const day = onDay(newest.sampledOn);
  if (newest.medium === "potting-medium") return [say("containers.step.potting-test", { day })];
  return pots.medium === "mineral-soil" ? [] : [say("containers.step.soil-test", { day })];
}

function writeEstimates({ available, potted, demand, water }: PotReading, w: Working): void {
  if (available.how === "medium") {
    w.estimate(
      "fieldCapacity, wiltingPoint",
      `of the potting mix: ${available.m3PerM3} m3/m3 taken, mixes run from ${available.low} to ${available.high}`,
      { key: "common-practice" },
    );
  }
  if (potted.pots.medium === undefined) {
    w.estimate("medium", "not stated: taken as a potting mix", { key: "common-practice" });
  }
  if (demand.how === "recent") {
    w.estimate("forecast", "none: the latest measured days stand for the next ones");
  }
  if (!demand.coverSeen) w.estimate("ground cover", "by stage; nobody looked");
  if (water.nitrateNMgPerL === undefined) {
    w.estimate("nitrateNMgPerL", "not tested: none taken off the feed");
  }
}

function limitsOf({ potted, available, demand }: PotReading): Message[] {
  return [
    say("containers.limit.ground"),
    ...(available.how === "medium" ? [say("containers.limit.mix")] : []),
    ...(potted.pots.medium === "mineral-soil" ? [say("containers.limit.mineral-soil")] : []),
    ...(demand.how === "recent" ? [say("containers.limit.recent")] : []),
    ...(demand.coverSeen ? [say("containers.limit.cover-seen")] : []),
    ...(isUnderPlastic(potted.state.bed, potted.today) ? [say("containers.limit.under-plastic")] : []),
    say("containers.limit.rockwool"),
    say("containers.limit.thresholds"),
    say("containers.limit.nitrogen-only"),
  ];
}

function cautionsOf({ feed, lime, drain, code }: PotReading) {
  const { product } = feed;
  const own = product ? (MATERIAL_FACTS[product.material.kind]?.cautions ?? []) : [];
  const acid =
    (lime?.alkalinity ?? 0) > ALKALINITY_DESIRABLE || (code === "correct-ph" && drain.ph !== undefined);
  return cautionsFor(
    "hot-pots",
    "fertiliser-handling",
    "drain-water",
    "nitrate-leaching",
    "water-too-much",
    "nutrient-law",
    ...own,
    ...(product?.injector ? ["backflow"] : []),
    ...(acid ? ["acid-handling"] : []),
  );
}

function wouldChangeOf({ drain, water, demand, available }: PotReading): Message[] {
  const untested = water.ecDsPerM === undefined || water.alkalinityMgCaCO3PerL === undefined;
  return [
    ...(drain.ec && drain.ph && drain.drainedPct ? [] : [say("containers.change.drain")]),
    ...(untested || water.nitrateNMgPerL === undefined ? [say("containers.change.water")] : []),
    ...(available.how === "measured" ? [] : [say("containers.change.weigh")]),
    ...(demand.coverSeen ? [] : [say("containers.change.cover")]),
    ...(demand.how === "recent" ? [say("containers.change.forecast")] : []),
    say("containers.change.label"),
  ];
}
