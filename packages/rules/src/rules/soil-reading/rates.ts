import { gypsumBy, type Mended, magnesiumBy, recommendationOf } from "../../guides/recommend.ts";
import type { Guide } from "../../guides/schema.ts";
import { type Message, measure, say } from "../../text/message.ts";
import { PH_TARGET } from "./acidity.ts";
import type { SoilReading } from "./reading.ts";
import type { ReadValue } from "./values.ts";

/** What the guides that read this test print as rates for it. They are shown, not advised: feeding and lime decide. */
export function ratesSaid(reading: SoilReading): Message[] {
  return [...reading.read.flatMap(rateSaid), ...magnesiumSaid(reading), ...gypsumSaid(reading)];
}

function rateSaid({ value, read }: ReadValue): Message[] {
  const found = recommendationOf(read.guide, value.nutrient, read.class);
  if (!found) return [];
  return [
    say("soil-reading.rate", {
      guide: found.guide.title,
      form: found.form,
      none: found.highKgPerHa === 0 ? "yes" : "no",
      range: found.lowKgPerHa === found.highKgPerHa ? "no" : "yes",
      low: measure(found.lowKgPerHa, "kg/ha"),
      high: measure(found.highKgPerHa, "kg/ha"),
      crop: found.crop,
    }),
  ];
}

/** Lime is due below the guide's own target, else below the one for peppers. */
const limeIsDue = (guide: Guide, waterPh: number) =>
  waterPh < (guide.recommendations?.targetPh?.low ?? PH_TARGET.low);

function magnesiumSaid({ test, read }: SoilReading): Message[] {
  const mg = read.find((r) => r.value.nutrient === "Mg");
  if (!mg || test.waterPh === undefined) return [];
  const { guide } = mg.read;
  return mended(guide, magnesiumBy(guide, mg.read.class, limeIsDue(guide, test.waterPh)));
}

/** The gypsum rule reads calcium by the sheet's extractant, though the sheet has no classes for calcium. */
function gypsumSaid({ test, read }: SoilReading): Message[] {
  const guide = read.find((r) => r.read.guide.recommendations?.gypsum)?.read.guide;
  if (!guide || test.waterPh === undefined) return [];
  const extractants = new Set(Object.values(guide.nutrients).map((n) => n.extractant));
  const ca = test.values.find(
    (v) => v.nutrient === "Ca" && v.extractant !== undefined && extractants.has(v.extractant),
  );
  return ca ? mended(guide, gypsumBy(guide, ca.mgPerKg, test.waterPh)) : [];
}

function mended(guide: Guide, found: Mended | undefined): Message[] {
  if (!found) return [];
  const crop = guide.recommendations?.crop ?? "";
  if (found.kind === "dolomitic-lime") {
    return [say("soil-reading.rate-dolomitic", { guide: guide.title, crop })];
  }
  const low = measure(found.lowKgPerHa, "kg/ha");
  return [say(`soil-reading.rate-${found.kind}`, { guide: guide.title, low, crop })];
}
