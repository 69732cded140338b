import { type SourceRef, Working } from "../../core/working.ts";
import type { InForce } from "../../evidence/choices.ts";
import type { DateRange } from "../../growth/dates.ts";
import { PLASTOCHRON, STAGE_HEAT } from "../../tables/stageHeat.ts";
import type { Fitness } from "./fit.ts";
import type { LeafWindow } from "./leaves.ts";
import type { Season } from "./season.ts";
import { ACCEPTED_RISK, DELAY_DAYS, LEAVES } from "./thresholds.ts";

const PRACTICE: SourceRef = { key: "common-practice" };
const DELAY: SourceRef = { key: "acta-hort-1060-249", locator: "abstract" };

/** Every number behind the answer. */
export function workingOf(reading: InForce, fitness: Fitness, window: LeafWindow, season: Season): Working {
  const w = new Working();
  w.line(
    "reading",
    "reading in force, where practice and publications differ",
    reading.by === "office" ? "chosen by the office" : "default: nobody chose",
    reading.option,
    "",
    PRACTICE,
  );
  leafLines(w, window);
  fitLines(w, fitness);
  seasonLines(w, window, season);
  return w;
}

const between = ({ low, high }: DateRange): string =>
  `eight in ten between ${low ?? "no day known"} and ${high ?? "no day known"}`;

function leafLines(w: Working, { forecast }: LeafWindow): void {
  const { counted, now, growth } = forecast;
  const { base, pace, emergence } = growth;
  w.line(
    "n",
    "true leaves at the last count",
    counted ? `note of ${counted.on}` : "nobody counted",
    counted?.count ?? null,
    "",
  );
  w.line("Tb", "heat is counted above", base.how, base.baseC, "C", base.source);
  w.line("m", "this planting's heat as a share of the table's", "from its notes and variety", pace.mean, "");
  w.line(
    "n_now",
    "true leaves today",
    `eight in ten between ${now.low} and ${now.high}`,
    now.likely,
    "",
    PLASTOCHRON.source,
  );
  w.line(
    "t_6",
    `day of ${LEAVES.from} true leaves`,
    between(forecast.on(LEAVES.from)),
    forecast.on(LEAVES.from).likely,
    "date",
    PRACTICE,
  );
  const after = forecast.on(LEAVES.to + 1);
  w.line(
    "t_9",
    `day of ${LEAVES.to + 1} true leaves: the window has closed`,
    between(after),
    after.likely,
    "date",
    PRACTICE,
  );
  if (!emergence.noted) {
    w.estimate("day the seedlings showed", `from a medium at ${emergence.mediumC} C`, {
      key: "harrington-minges-1954",
    });
  }
  if (counted === null) {
    w.estimate(
      "true leaves",
      "from the heat since they showed, at a published heat per leaf of another species",
      PLASTOCHRON.source,
    );
  }
}

function fitLines(w: Working, { cold, floorC, allowedDegreeHours, rainMm }: Fitness): void {
  w.line(
    "Σcold",
    `cold below ${floorC} C in the last fortnight, in the bed; up to ${allowedDegreeHours} C h is allowed`,
    `Σ max(0, ${floorC} - T(h))`,
    cold.knownDays === 0 ? null : cold.degreeHours,
    "C h",
    PRACTICE,
  );
  w.line("P_today", "rain today, recorded or forecast", "the larger", rainMm, "mm");
}

function seasonLines(w: Working, { forecast }: LeafWindow, s: Season): void {
  const { base, prior } = forecast.growth;
  const days = DELAY_DAYS.counted;
  w.line(
    "d",
    `days that fruit came later on cut plants; ${DELAY_DAYS.other} in another genotype`,
    "the longer",
    days,
    "days",
    DELAY,
  );
  w.line(
    "Q_d",
    "heat it is taken for",
    `${days} × (24 - ${base.baseC.toFixed(1)})`,
    s.delayHeat,
    "C d",
    DELAY,
  );
  const source = STAGE_HEAT[s.ripe].source;
  w.line(
    "t_ripe",
    `first fruit ${s.ripe === "colour" ? "in colour" : "mature green"}, tip left`,
    between(s.left),
    s.left.likely,
    "date",
    source,
  );
  w.line("t_ripe'", "the same, tip taken", between(s.taken), s.taken.likely, "date", DELAY);
  w.line("t_frost", "first autumn frost at the plants", `middle of ${s.years} years`, s.frost, "date");
  w.line(
    "P",
    "chance of ripe fruit before frost, tip left",
    "share of years and of the sum's spread",
    s.chanceLeft,
    "fraction",
  );
  w.line("P'", "the same, tip taken", "share of years and of the sum's spread", s.chanceTaken, "fraction");
  w.line("p", "accepted chance that frost comes first", "default", ACCEPTED_RISK, "fraction", PRACTICE);
  if (prior.from === "table") {
    w.estimate(
      "days to ripe fruit",
      "no seed list and no earlier season of this farm: from published heat sums of chile",
      source,
    );
  }
}
