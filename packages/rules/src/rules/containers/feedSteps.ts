import type { Material } from "../../states/food.ts";
import { COLDEST_COLUMN_C, SOLUBILITY } from "../../tables/solubility.ts";
import { type Message, measure, say, wordOf } from "../../text/message.ts";
import { type Feed, type Stock, TARGET_PPM_N } from "./feed.ts";
import type { PotReading } from "./judge.ts";
import { controlledRelease } from "./slowFeed.ts";

/** Strength, meter, grams, and what may stand in its place. */
export function feedSteps(r: PotReading): Message[] {
  const { feed, potted } = r;
  const slow = controlledRelease(potted.pots.volumeL);
  return [
    strengthStep(feed),
    ...(feed.ppmN > 0 ? [meterStep(feed), say("containers.step.why-120"), leanStep(feed)] : []),
    ...productSteps(feed),
    say("containers.step.slow", {
      spoons: Math.round(4 * slow.tablespoons) / 4,
      granules: measure(slow.millilitres, "mL"),
    }),
  ];
}

function strengthStep({ ppmN, waterPpmN, nGPerPotWeek }: Feed): Message {
  const params = {
    target: measure(TARGET_PPM_N, "mg/L"),
    add: measure(ppmN, "mg/L"),
    week: measure(nGPerPotWeek, "g"),
  };
  if (waterPpmN === undefined) return say("containers.step.feed", params);
  const water = measure(waterPpmN, "mg/L");
  return say(ppmN > 0 ? "containers.step.feed-less-water" : "containers.step.feed-none", {
    ...params,
    water,
  });
}

function meterStep({ ec }: Feed): Message {
  return ec.measuredLow === null || ec.measuredHigh === null
    ? say("containers.step.meter-above", { low: measure(ec.low, "dS/m"), high: measure(ec.high, "dS/m") })
    : say("containers.step.meter", {
        low: measure(ec.measuredLow, "dS/m"),
        high: measure(ec.measuredHigh, "dS/m"),
      });
}

const leanStep = ({ stage, leanPpmN }: Feed): Message =>
  say("containers.step.lean", {
    stage: wordOf(`containers.stage.${stage}`),
    ppm: measure(leanPpmN, "mg/L"),
  });

function productSteps({ choice, product }: Feed): Message[] {
  if (choice.kind === "several") return [say("containers.step.choose")];
  if (choice.kind === "none") return [say("containers.step.no-material")];
  if (choice.kind === "unfit") {
    return [
      say("containers.step.unfit", {
        what: wordOf(`material.${choice.material.kind}`),
        why: wordOf(`containers.why.${choice.why}`),
      }),
    ];
  }
  if (!product) return [];
  const { injector } = product;
  const what = wordOf(`material.${product.material.kind}`);
  const grams = {
    what,
    week: measure(product.gPerPotWeek, "g"),
    can: measure(10, "L"),
    inCan: measure(product.gPer10L, "g"),
    potash: measure(product.k2oPpm, "mg/L"),
  };
  return [say("containers.step.product", grams), ...(injector ? stockSteps(injector, product.material) : [])];
}

function stockSteps(stock: Stock, { kind }: Material): Message[] {
  const what = wordOf(`material.${kind}`);
  if (stock.kind !== "mix") {
    const coldest = measure(SOLUBILITY[kind]?.atC[0]?.[0] ?? COLDEST_COLUMN_C, "C");
    return [say(`containers.step.stock-${stock.kind}`, { what, tank: measure(stock.tankC, "C"), coldest })];
  }
  const { gramsInStock, tankL, ratio, days, tooStrong } = stock;
  const mix = say("containers.step.injector", {
    what,
    grams: measure(gramsInStock, "g"),
    tank: measure(tankL, "L"),
    ratio,
    days: measure(days, "days"),
  });
  if (!tooStrong) return [mix];
  const { set, gPerL, most, tankC } = tooStrong;
  return [
    say(most.atC === null ? "containers.step.too-strong" : "containers.step.does-not-dissolve", {
      what,
      set,
      strength: measure(gPerL, "g"),
      most: measure(most.gPerL, "g"),
      litre: measure(1, "L"),
      tank: measure(tankC, "C"),
      ratio,
    }),
    mix,
  ];
}
