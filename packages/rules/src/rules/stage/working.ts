import { type SourceRef, Working } from "../../core/working.ts";
import { growingCOf, USUAL_GROWING_C } from "../../growth/dayHeat.ts";
import { USUAL_MEDIUM_C } from "../../growth/emergence.ts";
import { stageHeatAbove } from "../../growth/prior.ts";
import type { Growth } from "../../growth/stages.ts";
import { temperatureAhead } from "../../growth/temperatureAhead.ts";
import type { PlantingState } from "../../states/states.ts";
import { HEAT_UNITS, PLASTOCHRON, STAGE_HEAT, STAGE_SPREAD, TABLE_SPREAD } from "../../tables/stageHeat.ts";

const PRACTICE: SourceRef = { key: "common-practice" };
const UPDATE: SourceRef = { key: "gelman-bda", locator: "conjugate normal mean" };

/** The calculation as a reader would check it with a pencil. */
export function workingOf(state: PlantingState, g: Growth): Working {
  const w = new Working();
  dayLines(w, state, g);
  heatLines(w, state, g);
  paceLines(w, g);
  for (const s of g.stages) {
    if (s.notedOn !== null || s.stage === "emerged") continue;
    const { source, basis } = STAGE_HEAT[s.stage];
    const asked = stageHeatAbove(s.stage, g.base.baseC);
    w.line(
      `H_${s.stage}`,
      `heat the table asks from showing to ${s.stage} (${basis})`,
      "table, at this base",
      asked,
      "C day",
      source,
    );
    w.line(
      `Q_${s.stage}`,
      "heat this planting is to take, from its last note",
      "Qa + m (H - Ha)",
      s.need.mean,
      "C day",
      UPDATE,
    );
    w.line(`sd_${s.stage}`, "spread of that", "√(sda² + (H - Ha)² (s² + c²))", s.need.sd, "C day", UPDATE);
    w.line(
      `t_${s.stage}`,
      `day that half of the courses reach it; eight in ten between ${s.dates.low ?? "no day"} and ${s.dates.high ?? "no day"}`,
      "past years with the forecast, each with the spread",
      s.dates.likely,
      "date",
    );
  }
  return w;
}

function dayLines(w: Working, state: PlantingState, { emergence, course }: Growth): void {
  w.line(
    "t_0",
    "day the seedlings show",
    emergence.noted ? "noted" : `by the table of emergence at ${emergence.mediumC} C`,
    emergence.day,
    "date",
    emergence.noted ? null : { key: "harrington-minges-1954", locator: "pepper" },
  );
  if (!emergence.noted && !emergence.mediumKnown) {
    w.estimate("planting.propagation.mediumC", `${USUAL_MEDIUM_C} C, the cool end of a nursery's 20-24 C`, {
      key: "fao-pepper-card",
      locator: "nursery soil 20-24 C",
    });
  }
  const how = { "set-out": "set out", planned: "planned", usual: "seven weeks from showing" }[
    course.outdoors.how
  ];
  w.line("t_out", "day from which they stand outside", how, course.outdoors.from, "date");
  if (course.outdoors.how === "usual") {
    w.estimate("planting.plannedSetOutOn", "seven weeks from showing, the middle of 6 to 8", {
      key: "transplanting-guides",
    });
  }
  if (state.planting.propagation?.growingC === undefined) {
    w.estimate("planting.propagation.growingC", `${USUAL_GROWING_C} C, 24 by day and 18 by night`, {
      key: "usu-transplants",
    });
  }
  if (course.filledDays > 0) {
    w.estimate("weather", `a usual year's heat for ${course.filledDays} days without extremes`);
  }
}

const WEEK_DAYS = 7;

function heatLines(w: Working, state: PlantingState, { base, course, today }: Growth): void {
  const why =
    base.how === "variety"
      ? `of the variety${base.from === null ? "" : `, ${base.from}`}`
      : base.how === "office"
        ? "as the office chose"
        : "default where the variety's is not known";
  w.line("L", "base above which heat is counted", why, base.baseC, "C", base.source);
  w.line("U", "above this a day's warmth brings no more", "horizontal cutoff", HEAT_UNITS.upperC, "C", {
    key: "silvertooth-2010",
    locator: "86 F",
  });
  w.line("T_in", "mean temperature indoors", "given or usual", growingCOf(state), "C");
  const week = course.outdoors.from <= today ? temperatureAhead(state, today, WEEK_DAYS) : null;
  if (week && week.length > 0) {
    const mean = (end: "low" | "likely" | "high") => week.reduce((sum, d) => sum + d[end], 0) / week.length;
    w.line(
      "T_7",
      `mean temperature of the coming week in the open; days go from ${mean("low").toFixed(1)} in cool years to ${mean("high").toFixed(1)} in warm ones`,
      "mean of the days' middles, past years with the forecast",
      mean("likely"),
      "C",
    );
  }
  w.line("Q", "heat from showing to yesterday", "Σ single sine, L to U", course.past.at(-1) ?? 0, "C day", {
    key: "baskerville-emin-1969",
  });
  w.line(
    "P",
    "heat of a leaf as published, above its own base",
    `base ${PLASTOCHRON.baseC} C`,
    PLASTOCHRON.perNodeCDays,
    "C day",
    PLASTOCHRON.source,
  );
  w.line("n_y", "years that the coming days may be like", "station", course.years.length, "years");
}

function paceLines(w: Working, { prior, looks, pace }: Growth): void {
  w.line(
    "s_0",
    "spread of varieties about the table",
    "254 of 954 at first bloom",
    TABLE_SPREAD,
    "fraction",
    {
      key: "soto-ortiz-model",
    },
  );
  w.line(
    "c",
    "spread of a stage about its planting's pace",
    "215 of 2393 at maturity",
    STAGE_SPREAD,
    "fraction",
    {
      key: "soto-ortiz-model",
    },
  );
  if (prior.list && prior.list.share !== null) {
    const counted =
      prior.from === "list" ? "counted, ± 0.12 (cp)" : "shown; the farm's own first picks outrank it";
    w.line(
      "y_list",
      "the seed list's days as a share of the table's heat",
      counted,
      prior.list.share,
      "fraction",
      PRACTICE,
    );
  }
  for (const season of prior.own) {
    const weather = season.ownWeather ? "that season's weather" : "a usual year's weather";
    w.line(
      "y_own",
      `own first pick of ${season.firstPickOn}, ${season.days} days from setting out`,
      `${weather}, ± 0.08 (cp)`,
      season.share,
      "fraction",
      PRACTICE,
    );
  }
  w.line("m_0", "pace before this planting's notes", prior.from, prior.pace.mean, "fraction", UPDATE);
  w.line("s", "its spread", "1 / √Σ 1 / s²", prior.pace.sd, "fraction", UPDATE);
  for (const look of looks) {
    const to = look.leaves === null ? look.to : `${look.leaves} true leaves`;
    w.line(
      "y",
      `from ${look.from} to ${to}: heat taken of heat asked`,
      `${look.took.toFixed(0)} / ${look.asked.toFixed(0)}, ± ${look.sd.toFixed(2)}`,
      look.share,
      "fraction",
    );
    w.line("m", "pace after it", "s'² (m / s² + y / sy²)", look.after.mean, "fraction", UPDATE);
  }
  w.line("s'", "spread of the pace now", "1 / √Σ 1 / s²", pace.sd, "fraction", UPDATE);
}
