import type { Step } from "../../core/rule.ts";
import type { Classification } from "../../guides/classify.ts";
import { type Message, measure, type Param, say, wordOf } from "../../text/message.ts";
import { PH_RANGE, PH_TARGET, phBand } from "./acidity.ts";
import type { SoilReading } from "./reading.ts";
import { VEGETABLE_COMFORT } from "./salts.ts";
import type { ReadValue, RefusedValue } from "./values.ts";

const nutrientWord = (nutrient: string) => wordOf(`soil-reading.nutrient.${nutrient}`);

/** What the test says, the most telling first: acidity, then what is short, then the rest, then what was not read. */
export function stepsOf(reading: SoilReading): Step[] {
  const order = { responds: 0, "may-respond": 1, unlikely: 2 } as const;
  const values = reading.read.toSorted((a, b) => order[a.read.response] - order[b.read.response]);
  const said: Message[] = [
    ...phOf(reading),
    ...values.flatMap(valueSaid),
    ...saltsSaid(reading),
    ...cationsSaid(reading),
    ...organicMatterSaid(reading),
    ...reading.refused.map(refusedSaid),
  ];
  return said.map((text) => ({ text }));
}

function phOf({ test }: SoilReading): Message[] {
  const said: Message[] = [];
  if (test.waterPh !== undefined) {
    said.push(
      say(`soil-reading.ph.${phBand(test.waterPh)}`, {
        ph: test.waterPh.toFixed(1),
        low: String(PH_TARGET.low),
        high: String(PH_TARGET.high),
        least: String(PH_RANGE.low),
        most: PH_RANGE.high.toFixed(1),
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

function bounds(c: Classification): Record<string, Param> {
  return {
    low: measure(c.lowMgPerKg, "mg/kg"),
    high: c.highMgPerKg === null ? "" : measure(c.highMgPerKg, "mg/kg"),
    open: c.highMgPerKg === null ? "yes" : "no",
  };
}

function valueSaid({ value, read, beside }: ReadValue): Message[] {
  const first = say("soil-reading.value", {
    nutrient: nutrientWord(value.nutrient),
    content: measure(value.mgPerKg, "mg/kg"),
    extractant: wordOf(`soil-reading.extractant.${value.extractant}`),
    class: wordOf(`soil-reading.class.${read.class}`),
    response: wordOf(`soil-reading.response.${read.response}`),
    guide: read.guide.title,
    ...bounds(read),
  });
  const others = beside
    .filter((other) => other.response !== read.response)
    .map((other) =>
      say("soil-reading.value-beside", {
        nutrient: nutrientWord(value.nutrient),
        guide: other.guide.title,
        class: wordOf(`soil-reading.class.${other.class}`),
        response: wordOf(`soil-reading.response.${other.response}`),
      }),
    );
  return [first, ...others];
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

function cationsSaid({ cations }: SoilReading): Message[] {
  if (!cations) return [];
  const shares = {
    cec: cations.cecCmolPerKg.toFixed(1),
    ca: measure(cations.caPct, "pct"),
    mg: measure(cations.mgPct, "pct"),
    k: measure(cations.kPct, "pct"),
  };
  return [say(cations.cecIsMinimum ? "soil-reading.cec.minimum" : "soil-reading.cec.sum", shares)];
}

function organicMatterSaid({ test }: SoilReading): Message[] {
  if (test.organicMatterPct === undefined) return [];
  return [say("soil-reading.organic-matter", { share: measure(test.organicMatterPct, "pct") })];
}

const refusedSaid = ({ value, why, problem }: RefusedValue): Message =>
  say(`soil-reading.refused.${why}`, {
    nutrient: nutrientWord(value.nutrient),
    content: measure(value.mgPerKg, "mg/kg"),
    extractant: value.extractant === undefined ? "" : wordOf(`soil-reading.extractant.${value.extractant}`),
    problem: problem.message,
  });
