import { cautionsFor } from "../../cautions/register.ts";
import { instantAt, localDay } from "../../core/days.ts";
import type { AdviceBody, AnswerBody, Rule, Stakes, Step } from "../../core/rule.ts";
import { Working } from "../../core/working.ts";
import {
  bindingRest,
  type Rest,
  type RestReading,
  restReading,
  restsOf,
  restVerdict,
} from "../../layout/rest.ts";
import type { SoilDisease } from "../../states/bedPlan.ts";
import type { BedState } from "../../states/states.ts";
import { WITHOUT_INTERVAL } from "../../tables/rotationIntervals.ts";
import { type Message, say, wordOf } from "../../text/message.ts";
import { restTable } from "./table.ts";

/** May peppers stand in this bed this season, by what stood there before? */
export const rotationRule: Rule<"bed"> = {
  id: "rotation",
  version: 1,
  question: "Has this bed rested long enough for peppers, and when may they come back?",
  subject: "bed",
  needs: [
    "what stood in the bed in each of the last five seasons",
    "diseases of the ground that were found in it",
    "the season in which peppers are meant for it",
  ],
  run,
};

/** What a season in tired ground may cost: more than a quarter of a crop where the disease was found and the year is wet (SN-1104); else common practice. */
const HARM = { found: 0.25, suspected: 0.1, none: 0 } as const;
const LAST_HOUR = 7;

/** A bed and its past, judged for one season. */
interface Judged {
  season: number;
  rests: Rest[];
  reading: RestReading;
  /** Peppers stand there already: nothing of this season can be undone. */
  standing: boolean;
  verdict: "clear" | "too-soon";
  /** First season in which all rests are over. */
  from: number;
  /** Longest rest that now begins, because peppers stand here this season. */
  restAfter: number;
}

function run(state: BedState): AnswerBody {
  const today = localDay(state.asOf, state.site.timeZone);
  const season = state.pepperSeason ?? (state.setOutOn ? Number(state.setOutOn.slice(0, 4)) : undefined);
  if (state.bed.kind === "containers")
    return { kind: "does-not-apply", reason: say("rotation.not.containers") };
  if (season === undefined) return { kind: "does-not-apply", reason: say("rotation.not.no-peppers") };
  const history = state.history ?? [];
  const reading = restReading(state.settings);
  const rests = restsOf(history, season, reading);
  const w = workingOf(rests, season, reading);
  const verdict = restVerdict(rests);
  if (verdict === "unknown") return needsHistory(rests, season, w);
  const restAfter = Math.max(...rests.map((r) => r.neededYears));
  const judged: Judged = {
    season,
    rests,
    reading,
    standing:
      state.setOutOn !== undefined &&
      state.setOutOn <= today &&
      Number(state.setOutOn.slice(0, 4)) === season,
    verdict,
    from: Math.max(...rests.map((r) => (r.verdict === "too-soon" ? r.from : season))),
    restAfter,
  };
  const openEnded = [...new Set(history.flatMap((h) => h.disease ?? []))].filter((d) =>
    WITHOUT_INTERVAL.includes(d),
  );
  return adviceFrom(state, judged, openEnded, w);
}

function needsHistory(rests: readonly Rest[], season: number, w: Working): AnswerBody {
  const open = rests.filter((r) => r.verdict === "unknown");
  const years = Math.max(...open.map((r) => r.neededYears));
  return {
    kind: "needs-more",
    missing: [
      {
        field: "history",
        measure: say("rotation.missing.history", { from: String(season - years), to: String(season - 1) }),
        couldMove: say("rotation.missing.history-moves"),
      },
    ],
    working: w.lines,
    estimated: w.estimated,
  };
}

function adviceFrom(state: BedState, j: Judged, openEnded: SoilDisease[], w: Working): AdviceBody {
  const code = j.verdict === "clear" ? "clear" : j.standing ? "too-soon-standing" : "too-soon";
  const binding = bindingRest(j.rests);
  const params = {
    season: String(j.season),
    from: String(j.from),
    crop: wordOf(`rotation.crop.${binding?.last?.crop ?? "other"}`),
    last: String(binding?.last?.season ?? ""),
  };
  return {
    kind: "advice",
    decision: { code, text: say(`rotation.decision.${code}`, params) },
    steps: stepsOf(code, j),
    window: { from: `${j.season}-01-01`, to: `${j.season}-12-31`, endsBy: say("rotation.ends") },
    stakes: stakesOf(state, j, binding),
    working: w.lines,
    estimated: w.estimated,
    evidence: EVIDENCE,
    grade: "weak",
    limits: limitsOf(j, openEnded),
    cautions: cautionsFor(),
    wouldChange: [say("rotation.change.clinic"), say("rotation.change.choice")],
    cases: [],
    expected: null,
    amounts: { fromSeason: j.from, restAfter: j.restAfter },
    charts: [],
    table: [restTable(j.rests)],
  };
}

const EVIDENCE = [
  "rotation.chile",
  "rotation.phytophthora",
  "rotation.phytophthora-beans",
  "rotation.phytophthora-beans-no",
  "rotation.phytophthora-loss",
  "rotation.verticillium-uc",
  "rotation.verticillium-uconn",
  "rotation.leaf-spot",
  "rotation.sclerotinia",
  "rotation.without-interval",
  "rotation.exudates",
];

function stepsOf(code: string, j: Judged): Step[] {
  const after = { back: String(j.season + j.restAfter + 1), years: j.restAfter };
  const steps: Record<string, Message[]> = {
    clear: [say("rotation.step.plant", { season: String(j.season) }), say("rotation.step.rest-after", after)],
    "too-soon": [
      say("rotation.step.elsewhere"),
      say("rotation.step.instead"),
      say("rotation.step.if-anyway"),
    ],
    "too-soon-standing": [
      say("rotation.step.watch"),
      say("rotation.step.drain"),
      say("rotation.step.rest-after", after),
    ],
  };
  // With a rest of r seasons peppers use a bed one season in r + 1.
  const share = say("rotation.step.grouping", { years: j.restAfter, of: j.restAfter + 1 });
  return [...(steps[code] ?? []), share, say("rotation.step.write-down")].map((text) => ({ text }));
}

function stakesOf(state: BedState, j: Judged, binding: Rest | undefined): Stakes {
  const presses = j.verdict === "too-soon" && !j.standing;
  const found = j.rests.some((r) => r.verdict === "too-soon" && r.found);
  const harm = !presses ? HARM.none : found ? HARM.found : HARM.suspected;
  const reason = say(`rotation.stakes.${!presses ? "none" : found ? "found" : "suspected"}`, {
    years: binding?.neededYears ?? 0,
  });
  const plants = presses && state.setOutOn !== undefined;
  return {
    harm,
    reason,
    actBy: plants ? instantAt(state.setOutOn as string, LAST_HOUR, state.site.timeZone) : null,
  };
}

function limitsOf(j: Judged, openEnded: SoilDisease[]): Message[] {
  return [
    say("rotation.limit.grouping"),
    say(`rotation.limit.reading-${j.reading}`),
    say("rotation.limit.beans"),
    say("rotation.limit.lasting"),
    ...openEnded.map((d) =>
      say("rotation.limit.without-interval", { disease: wordOf(`rotation.disease.${d}`) }),
    ),
  ];
}

function workingOf(rests: readonly Rest[], season: number, reading: RestReading): Working {
  const w = new Working();
  w.line("S", "season of the peppers", "the season planned, else that of setting out", season, "year");
  w.line("reading", "which published rest holds", "chosen by the office, else the shortest", reading, "", {
    key: "common-practice",
  });
  for (const r of rests) {
    const of = r.disease ?? "peppers after peppers";
    const expression =
      r.last && r.verdict !== "unknown"
        ? `S - ${r.last.season} - 1; last host ${r.last.crop}`
        : "seasons on record without a host";
    w.line("n", `seasons without a host: ${of}`, expression, r.restedYears, "seasons");
    const why = r.found ? "the longest, because it was found here" : `the ${reading}`;
    w.line("N", `seasons asked for: ${of}`, why, r.neededYears, "seasons", r.source);
    w.line("S0", `first season again: ${of}`, r.last ? `${r.last.season} + N + 1` : "S", r.from, "year");
  }
  return w;
}
