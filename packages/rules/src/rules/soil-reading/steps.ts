import { daysBetween } from "../../core/days.ts";
import type { Step } from "../../core/rule.ts";
import type { Soil } from "../../states/parts.ts";
import { usualCec } from "../../tables/exchangeCapacity.ts";
import { type Message, measure, onDay, say, wordOf } from "../../text/message.ts";
import { PH_RANGE, PH_TARGET, phBand } from "./acidity.ts";
import { saturationOf } from "./cations.ts";
import { ratesSaid } from "./rates.ts";
import type { SoilReading } from "./reading.ts";
import { VEGETABLE_COMFORT } from "./salts.ts";
import type { Trend, Trends } from "./trend.ts";
import type { ReadValue, RefusedValue } from "./values.ts";

const nutrientWord = (nutrient: string) => wordOf(`soil-reading.nutrient.${nutrient}`);
const extractantWord = (extractant: string | undefined) =>
  extractant === undefined ? "" : wordOf(`soil-reading.extractant.${extractant}`);
const classWord = (name: string) => wordOf(`soil-reading.class.${name}`);

/** What the test says, the most telling first: acidity, then what is short, then the rest, then what was not read. */
export function stepsOf(reading: SoilReading, trends: Trends, today: string, soil: Soil): Step[] {
  const order = { responds: 0, "may-respond": 1, unlikely: 2 } as const;
  const values = reading.read.toSorted((a, b) => order[a.read.response] - order[b.read.response]);
  const said: Message[] = [
    sampleSaid(reading, today),
    ...phOf(reading, trends),
    ...values.flatMap((v) => valueSaid(v, trends)),
    ...antagonismSaid(reading),
    ...(trends.leftOut > 0 ? [say("soil-reading.trend-left-out", { values: trends.leftOut })] : []),
    ...ratesSaid(reading),
    ...saltsSaid(reading),
    ...cationsSaid(reading, soil),
    ...organicMatterSaid(reading),
    ...reading.kept.map((v) =>
      say("soil-reading.kept", {
        nutrient: nutrientWord(v.nutrient),
        content: measure(v.mgPerKg, "mg/kg"),
        sodium: v.nutrient === "Na" ? "yes" : "no",
      }),
    ),
    ...reading.refused.map(refusedSaid),
  ];
  return said.map((text) => ({ text }));
}

const sampleSaid = ({ test }: SoilReading, today: string): Message =>
  say("soil-reading.sample", {
    day: onDay(test.sampledOn),
    year: test.sampledOn.slice(0, 4),
    depth: measure(test.depthCm, "cm"),
    days: daysBetween(test.sampledOn, today),
  });

function phOf({ test }: SoilReading, { ph }: Trends): Message[] {
  const said: Message[] = [];
  if (test.waterPh !== undefined && test.medium === "mineral-soil") {
    said.push(
      say(`soil-reading.ph.${phBand(test.waterPh)}`, {
        ph: test.waterPh.toFixed(1),
        low: String(PH_TARGET.low),
        high: String(PH_TARGET.high),
        least: String(PH_RANGE.low),
        most: PH_RANGE.high.toFixed(1),
      }),
    );
  } else if (test.waterPh !== undefined) {
    said.push(say("soil-reading.ph-other-medium", { ph: test.waterPh.toFixed(1) }));
  }
  const [first] = ph;
  if (first && test.waterPh !== undefined) {
    said.push(
      say("soil-reading.ph-trend", {
        first: first.waterPh.toFixed(1),
        day: onDay(first.on),
        year: first.on.slice(0, 4),
        now: test.waterPh.toFixed(1),
        tests: ph.length,
      }),
    );
  }
  if (test.bufferPh) {
    said.push(
      say("soil-reading.buffer", { ph: test.bufferPh.value.toFixed(2), method: test.bufferPh.method }),
    );
  }
  return said;
}

function valueSaid({ value, read, beside }: ReadValue, trends: Trends): Message[] {
  const nutrient = nutrientWord(value.nutrient);
  const said = [
    say("soil-reading.value", {
      nutrient,
      content: measure(value.mgPerKg, "mg/kg"),
      printed: value.reported ? "yes" : "no",
      reported: value.reported?.value ?? 0,
      reportedUnit: value.reported?.unit ?? "",
      extractant: extractantWord(value.extractant),
      class: classWord(read.class),
      response: wordOf(`soil-reading.response.${read.response}`),
      guide: read.guide.title,
      // The class by the guide's own numbers, not by ones that rounding has moved.
      compared: read.compared,
      unit: read.printed.unit,
      low: read.printed.low,
      high: read.printed.high ?? "",
      open: read.printed.high === null ? "yes" : "no",
    }),
  ];
  if (read.guide.status !== "seen") {
    said.push(say(`soil-reading.standing.${read.guide.status}`, { guide: read.guide.title }));
  }
  const above = read.classes[read.at + 1];
  if (read.onSharedBound && above) {
    said.push(
      say("soil-reading.shared-bound", {
        nutrient,
        guide: read.guide.title,
        class: classWord(read.class),
        above: classWord(above.class),
      }),
    );
  }
  const telling = beside.filter((b) => b.response !== read.response || b.guide.status === "office");
  for (const other of telling) {
    said.push(
      say("soil-reading.value-beside", {
        nutrient,
        guide: other.guide.title,
        own: other.guide.status === "office" ? "yes" : "no",
        class: classWord(other.class),
        response: wordOf(`soil-reading.response.${other.response}`),
      }),
    );
  }
  const trend = trends.nutrients.find((t) => t.value === value);
  if (trend) said.push(...trendSaid(trend));
  return said;
}

function trendSaid({ value, points }: Trend): Message[] {
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last) return [];
  return [
    say("soil-reading.trend", {
      nutrient: nutrientWord(value.nutrient),
      extractant: extractantWord(value.extractant),
      tests: points.length,
      first: measure(first.mgPerKg, "mg/kg"),
      day: onDay(first.on),
      year: first.on.slice(0, 4),
      classed: first.class === null ? "no" : "yes",
      class: first.class === null ? "" : classWord(first.class),
      now: measure(last.mgPerKg, "mg/kg"),
      nowClass: last.class === null ? "" : classWord(last.class),
    }),
  ];
}

/** Much potassium beside little magnesium or calcium (SN-407, SN-408). */
function antagonismSaid({ read }: SoilReading): Message[] {
  const by = (nutrient: string) => read.find((r) => r.value.nutrient === nutrient)?.read;
  const k = by("K");
  const rich = k && (k.optimum === "above" || k.class === "very-high");
  const hindered = (["Mg", "Ca"] as const).filter((n) => by(n)?.response === "responds");
  return rich
    ? hindered.map((n) => say("soil-reading.potassium-hinders", { nutrient: nutrientWord(n) }))
    : [];
}

function saltsSaid({ test, salts }: SoilReading): Message[] {
  if (!test.ec || !salts) return [];
  const ec = measure(test.ec.dSPerM, "dS/m");
  if (salts.kind === "no-extraction") return [say("soil-reading.salts.no-extraction", { ec })];
  if (salts.kind === "no-bound")
    return [say("soil-reading.salts.no-bound", { ec, extraction: salts.extraction })];
  const said = [
    say(salts.fine ? "soil-reading.salts.fine" : "soil-reading.salts.high", {
      ec,
      extraction: wordOf(`soil-reading.extraction.${salts.extraction}`),
      limit: measure(salts.limitDsPerM, "dS/m"),
    }),
  ];
  if (salts.extraction === "saturated-paste") {
    said.push(say("soil-reading.salts.comfort", { limit: measure(VEGETABLE_COMFORT.dSPerM, "dS/m") }));
  }
  return said;
}

function cationsSaid({ test, cations }: SoilReading, soil: Soil): Message[] {
  const said: Message[] = [];
  if (cations) {
    const shares = {
      cec: cations.cecCmolPerKg.toFixed(1),
      ca: measure(cations.caPct, "pct"),
      mg: measure(cations.mgPct, "pct"),
      k: measure(cations.kPct, "pct"),
    };
    said.push(say(cations.cecIsMinimum ? "soil-reading.cec.minimum" : "soil-reading.cec.sum", shares));
    const sides = saturationOf(cations);
    if (sides) said.push(say("soil-reading.saturation", sides));
  }
  const cec = test.cecCmolPerKg ?? (cations?.cecIsMinimum ? undefined : cations?.cecCmolPerKg);
  if (cec === undefined) return said;
  if (test.cecCmolPerKg !== undefined) {
    said.push(say("soil-reading.cec.reported", { cec: test.cecCmolPerKg.toFixed(1) }));
  }
  const usual = usualCec(soil.texture);
  if (usual && (cec < usual.lowCmolPerKg || cec > usual.highCmolPerKg)) {
    said.push(
      say("soil-reading.cec.unusual", {
        cec: cec.toFixed(1),
        low: usual.lowCmolPerKg,
        high: usual.highCmolPerKg,
        side: cec < usual.lowCmolPerKg ? "below" : "above",
      }),
    );
  }
  return said;
}

function organicMatterSaid({ test }: SoilReading): Message[] {
  if (test.organicMatterPct === undefined) return [];
  return [say("soil-reading.organic-matter", { share: measure(test.organicMatterPct, "pct") })];
}

const refusedSaid = ({ value, why, problem, fitting }: RefusedValue): Message =>
  say(`soil-reading.refused.${why}`, {
    nutrient: nutrientWord(value.nutrient),
    content: measure(value.mgPerKg, "mg/kg"),
    extractant: extractantWord(value.extractant),
    problem: problem.message,
    fits: fitting.length,
    guides: fitting.map((g) => g.title).join("; "),
  });
