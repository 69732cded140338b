import type { Step } from "../../core/rule.ts";
import type { Working } from "../../core/working.ts";
import { PEPPER_BORON_MG_PER_L } from "../../tables/boronLimits.ts";
import { PEPPER_SALT_TOLERANCE } from "../../tables/saltTolerance.ts";
import { type Message, measure, say } from "../../text/message.ts";
import { type Judged, soilIsSalty } from "./judge.ts";
import type { Restriction, WaterClass, WaterReading } from "./water.ts";

/** Depth washed: where most of a pepper's roots are (common practice). */
const WASHED_DEPTH_MM = 300;
/** DL / DS = 0.1 ECe / ECe(wanted), by sprinkling or in several small waterings (FAO-29 after Hoffman 1980, from memory). */
const WASHING_FACTOR = 0.1;

const [pepper] = PEPPER_SALT_TOLERANCE;
const pct = (value: number) => measure(value, "pct");
const dSPerM = (value: number) => measure(value, "dS/m");
const oneDecimal = (value: number) => Math.round(value * 10) / 10;

/** Depth of water that must pass through the washed depth to bring the soil to pepper's threshold [mm]. */
function washingDepthMm(eceDsPerM: number, w: Working): number {
  return w.line(
    "DL",
    "water that must drain through the top 30 cm to bring it to the threshold",
    `0.1 DS ECe / a, DS = ${WASHED_DEPTH_MM} mm, ECe = ${eceDsPerM}, a = ${pepper.thresholdDsPerM.low}`,
    (WASHING_FACTOR * WASHED_DEPTH_MM * eceDsPerM) / pepper.thresholdDsPerM.low,
    "mm",
    { key: "fao29-leaching-depth" },
  );
}

/** What to do, in the order in which it is done: what it costs, what to do about salt, then about single ions. */
export function stepsOf(j: Judged, w: Working): Step[] {
  const messages = [...costSteps(j), ...saltSteps(j, w), ...(j.water ? ionSteps(j.water) : [])];
  return messages.map((text) => ({ text }));
}

function costSteps({ soil, fromSoil, water, fromWater, cost }: Judged): Message[] {
  const steps: Message[] = [];
  if (soil.kind === "read" && fromSoil) {
    const shared = {
      ece: dSPerM(soil.eceDsPerM),
      loss: pct(fromSoil.lossPct),
      low: pct(fromSoil.lowPct),
      high: pct(fromSoil.highPct),
    };
    steps.push(
      soil.converted
        ? say("salt.step.soil-converted", {
            ...shared,
            ec: dSPerM(soil.ecDsPerM),
            extraction: soil.extraction,
          })
        : say("salt.step.soil-measured", shared),
    );
  }
  if (water?.ecDsPerM !== undefined && fromWater) {
    steps.push(
      say("salt.step.water", {
        ec: dSPerM(water.ecDsPerM),
        ece: dSPerM(fromWater.eceDsPerM),
        loss: pct(fromWater.lossPct),
      }),
    );
  }
  if (cost) {
    const kg = measure(cost.kg, "kg");
    steps.push(
      cost.money === undefined
        ? say("salt.step.cost-fruit", { kg })
        : say("salt.step.cost-money", { kg, money: Math.round(cost.money) }),
    );
  }
  return steps;
}

function saltSteps({ decision, soil, fromSoil, water, fromWater }: Judged, w: Working): Message[] {
  const steps: Message[] = [];
  const salty = (fromSoil?.lossPct ?? 0) > 0 || restrictionOf(water, "ec") !== "none";
  const wash = soil.kind === "read" && soilIsSalty(soil, fromSoil);
  const leach = water?.leachingFraction;
  if (decision === "better-water") steps.push(say("salt.step.better-water"));
  const givesMore = typeof leach === "number" && (fromWater?.highPct ?? 0) > 0;
  if (wash || givesMore) steps.push(say("salt.step.drain-first"));
  if (wash) {
    steps.push(say("salt.step.wash", { depth: measure(washingDepthMm(soil.eceDsPerM, w), "mm") }));
  }
  if (givesMore) {
    const morePct = w.line(
      "AW/ET - 1",
      "more than the plants use, so that enough drains",
      `100 LR / (1 - LR), LR = ${leach}`,
      (100 * leach) / (1 - leach),
      "%",
      { key: "fao29-leaching-depth" },
    );
    steps.push(say("salt.step.leach-share", { share: pct(100 * leach), more: pct(morePct) }));
  }
  if (salty || decision === "better-water") steps.push(say("salt.step.seedlings"), say("salt.step.ring"));
  return steps;
}

const restrictionOf = (water: WaterReading | undefined, what: WaterClass["what"]): Restriction =>
  water?.classes.find((c) => c.what === what)?.restriction ?? "none";

function ionSteps(water: WaterReading): Message[] {
  const limited = water.classes.filter((c) => c.restriction !== "none");
  const overhead = limited.find((c) => c.what === "chloride-leaves" || c.what === "sodium-leaves");
  const steps: Message[] = overhead ? [say("salt.step.dry-leaves")] : [];
  for (const c of limited) {
    const words = { value: oneDecimal(c.value), class: { word: `salt.class.${c.restriction}` } };
    if (c.what === "infiltration")
      steps.push(say("salt.step.infiltration", words), say("salt.step.ask-gypsum"));
    if (c.what === "sodium") steps.push(say("salt.step.sodium", words));
    if (c.what === "chloride") steps.push(say("salt.step.chloride", words));
    if (c.what === "boron") {
      steps.push(
        say("salt.step.boron", {
          value: measure(c.value, "mg/L"),
          low: measure(PEPPER_BORON_MG_PER_L.none, "mg/L"),
          high: measure(PEPPER_BORON_MG_PER_L.severe, "mg/L"),
        }),
      );
    }
    if (c.what === "nitrate") steps.push(say("salt.step.nitrate", { value: measure(c.value, "mg/L") }));
    if (c.what === "bicarbonate") steps.push(say("salt.step.bicarbonate", words));
    if (c.what === "ph") steps.push(say("salt.step.ph", words));
  }
  return steps;
}
