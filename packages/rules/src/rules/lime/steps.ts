import { addDays } from "../../core/days.ts";
import type { Step } from "../../core/rule.ts";
import { isBuyable } from "../../food/buyable.ts";
import { APART_DAYS } from "../../soil-acidity/ammonium.ts";
import { EPSOM_MG_PCT } from "../../soil-acidity/calciumMagnesium.ts";
import { EPSOM_IN_TWO_FROM_KG_PER_HA, MONTHS_BETWEEN } from "../../soil-acidity/split.ts";
import { LIME_MONTHS, type LimeTiming, monthsFrom } from "../../soil-acidity/timing.ts";
import { weight } from "../../soil-acidity/weight.ts";
import type { Bed } from "../../states/parts.ts";
import type { BedState } from "../../states/states.ts";
import { LIME_MATERIALS } from "../../tables/limeMaterials.ts";
import { type Message, measure, onDay, say, wordOf } from "../../text/message.ts";
import { bedAreaM2, croppedAreaM2 } from "../../water/ground.ts";
import { type Ground, type Judged, type LimeTask, rate } from "./judge.ts";
import type { LimeMaterials, MaterialRate } from "./materials.ts";
import type { SulfurPlan } from "./sulfur.ts";

const name = (kind: string) => wordOf(`material.${kind}`);

export function stepsOf(state: BedState, j: Judged): Step[] {
  return said(state, j).map((text) => ({ text }));
}

function said(state: BedState, j: Judged): Message[] {
  switch (j.task) {
    case "lime":
      return [...limeSaid(state, j), ...timingSaid(j.timing), ...afterwards(j)];
    case "still-working":
      return [
        say("lime.step.still-working", {
          working: measure(j.need.creditKgPerHa, "kg/ha"),
          call: measure(j.need.callKgPerHa, "kg/ha"),
        }),
        ...ashSaid(j),
        say("lime.step.retest"),
      ];
    case "fizz-first":
      return [say("lime.step.fizz"), ...sulfurSaid(state.bed, j.plan), ...sulfurTiming(j.timing)];
    case "sulfur":
      return [...sulfurSaid(state.bed, j.plan), ...sulfurTiming(j.timing)];
    case "sulfur-at-work":
      return [say("lime.step.sulfur-retest")];
    case "free-lime":
      return [say("lime.step.live-with-it"), say("lime.step.watch-iron"), say("lime.step.containers")];
    case "gypsum":
    case "magnesium":
      return shortSaid(j);
  }
}

function limeSaid(state: BedState, j: Ground & LimeTask): Message[] {
  const { rates, leftOut } = j.materials;
  const [chosen, ...others] = rates;
  return [
    say(chosen.applications === 1 ? "lime.step.spread" : "lime.step.spread-first", {
      material: name(chosen.kind),
      kg: weight(chosen.firstKg),
      area: measure(bedAreaM2(state.bed), "m2"),
      ...rate((chosen.firstKg * 10_000) / bedAreaM2(state.bed)),
    }),
    ...(chosen.applications === 1
      ? []
      : [
          say("lime.step.split", {
            times: chosen.applications,
            months: MONTHS_BETWEEN.lime,
            whole: weight(chosen.bedKg),
            ...rate(chosen.kgPerHa),
          }),
        ]),
    say("lime.step.alleys", {
      cropped: measure(croppedAreaM2(state.bed), "m2"),
      kg: weight(chosen.croppedKg),
      over: measure((chosen.bedKg * 10_000) / croppedAreaM2(state.bed), "kg/ha"),
    }),
    say("lime.step.work-in", { depth: measure(j.soil.depthCm, "cm") }),
    ...stockSaid(chosen),
    ...workSaid(chosen),
    ...qualitySaid(chosen),
    ...magnesiumOfLime(j, chosen),
    ...others.map((r) =>
      say(r.material ? "lime.step.instead" : "lime.step.instead-bought", {
        material: name(r.kind),
        kg: weight(r.bedKg),
        ...rate(r.kgPerHa),
        effective: measure(r.quality.effectivePct, "pct"),
      }),
    ),
    ...leftOutSaid(leftOut),
    ...(j.need.creditKgPerHa > 0
      ? [say("lime.step.credit", { working: measure(j.need.creditKgPerHa, "kg/ha") }), ...ashSaid(j)]
      : []),
  ];
}

const ashSaid = ({ ashCounted }: { ashCounted: boolean }): Message[] =>
  ashCounted ? [say("lime.step.ash-counted")] : [];

const leftOutSaid = (leftOut: LimeMaterials["leftOut"]): Message[] =>
  leftOut.map(({ material, why }) => say(`lime.step.${why}`, { material: name(material.kind) }));

function stockSaid(r: MaterialRate): Message[] {
  const stock = r.material?.stockKg;
  if (!r.material) return [say("lime.step.not-in-shed", { material: name(r.kind) })];
  if (stock === undefined) return [say("lime.step.stock-unknown")];
  if (r.buyKg === 0)
    return [say("lime.step.stock-enough", { stock: weight(stock), left: weight(stock - r.bedKg) })];
  const short = {
    stock: weight(stock),
    buy: weight(r.buyKg ?? 0),
    bags: r.bags ?? 0,
    cost: (r.cost ?? 0).toFixed(2),
  };
  if (!isBuyable(r.material)) return [say("lime.step.stock-short", short)];
  const [bags, cost] = [r.bags === undefined ? "" : "-bags", r.cost === undefined ? "" : "-cost"];
  return [say(`lime.step.buy${bags}${cost}`, short)];
}

/** The work beside the price: a weaker lime in more parts is spread more often. */
function workSaid({ applications, hours, wages, cost = 0 }: MaterialRate): Message[] {
  if (hours === undefined) return [];
  const said = { times: applications, hours: measure(hours, "hours") };
  if (wages === undefined) return [say("lime.step.hours", said)];
  return [say("lime.step.wages", { ...said, wages: wages.toFixed(2), sum: (cost + wages).toFixed(2) })];
}

function qualitySaid(r: MaterialRate): Message[] {
  const { untested, effectivePct } = r.quality;
  if (untested.neutralisingValue || untested.fineness) return [say("lime.step.untested")];
  return [say("lime.step.effective", { effective: measure(effectivePct, "pct") })];
}

function magnesiumOfLime({ magnesium }: Ground, chosen: MaterialRate): Message[] {
  // Where it is low the lime chosen is dolomitic, of the shed or to be bought.
  if (!magnesium?.low) return [];
  const mg = measure(magnesium.mgPerKg, "mg/kg");
  const mgPct = chosen.material?.mgPct ?? LIME_MATERIALS["dolomitic-lime"].mgPct;
  return [say("lime.step.dolomitic", { mg, brings: measure((chosen.kgPerHa * mgPct) / 100, "kg/ha") })];
}

function timingSaid(timing: LimeTiming): Message[] {
  const months = { least: LIME_MONTHS.least, most: LIME_MONTHS.most };
  const { when, from, by, setOutOn, ammoniumOn, limedOn } = timing;
  const days = {
    from: onDay(from),
    by: onDay(by ?? from),
    out: onDay(setOutOn ?? from),
    acts: onDay(monthsFrom(from, LIME_MONTHS.least)),
    done: onDay(monthsFrom(from, LIME_MONTHS.most)),
  };
  return [
    say(`lime.step.${when}`, { ...months, ...days }),
    ...(ammoniumOn === undefined
      ? []
      : [say("lime.step.after-ammonium", { day: onDay(ammoniumOn), from: onDay(from) })]),
    ...(limedOn === undefined
      ? []
      : [
          say("lime.step.after-part", {
            day: onDay(limedOn),
            from: onDay(from),
            months: MONTHS_BETWEEN.lime,
          }),
        ]),
  ];
}

function afterwards(j: Ground & LimeTask): Message[] {
  const [chosen] = j.materials.rates;
  const first = chosen.applications > 1 || chosen.firstKg < chosen.bedKg * (1 - 1e-9);
  const ph = first ? j.phAfterFirst : j.phAfterAll;
  return [
    ph === null
      ? say("lime.step.ph-by-method", { ph: j.need.targetPh.toFixed(1), method: methodWord(j.need.method) })
      : say(first ? "lime.step.ph-first" : "lime.step.ph-all", {
          ph: ph.toFixed(1),
          method: methodWord(j.need.method),
          depth: measure(j.soil.depthCm, "cm"),
        }),
    say("lime.step.not-with-ammonium", {
      from: onDay(j.timing.from),
      until: onDay(addDays(j.timing.from, APART_DAYS)),
    }),
    say("lime.step.retest"),
  ];
}

export const methodWord = (method: string) => wordOf(`lime.method.${method}`);

function sulfurSaid(bed: Bed, plan: SulfurPlan): Message[] {
  const kind = plan.material?.kind ?? "sulfur";
  const factor = plan.bedKg > 0 ? plan.materialBedKg / plan.bedKg : 1;
  return [
    say(plan.applications === 1 ? "lime.step.sulfur" : "lime.step.sulfur-split", {
      material: name(kind),
      kg: weight(plan.materialBedKg),
      first: weight(plan.materialBedKg / plan.applications),
      times: plan.applications,
      area: measure(bedAreaM2(bed), "m2"),
      ...rate(plan.kgPerHa * factor),
      target: plan.targetPh.toFixed(1),
    }),
    say("lime.step.sulfur-alleys", {
      cropped: measure(croppedAreaM2(bed), "m2"),
      kg: weight(plan.croppedKg * factor),
    }),
    ...(kind === "sulfur"
      ? [say("lime.step.ferrous", { kg: weight((plan.ferrousKgPerHa * bedAreaM2(bed)) / 10_000) })]
      : []),
    ...plan.beside.map((other) => say(`lime.step.sulfur-${other.method}`, rate(other.kgPerHa))),
    ...(plan.material ? [] : [say("lime.step.not-in-shed", { material: name("sulfur") })]),
    ...leftOutSaid(plan.leftOut),
  ];
}

function sulfurTiming(timing: LimeTiming): Message[] {
  const key = timing.when === "after-crop" ? "lime.step.sulfur-after-crop" : "lime.step.sulfur-when";
  return [say(key, { from: onDay(timing.from) }), say("lime.step.sulfur-retest")];
}

/** The printed rules, in words: how much is dosed is feeding's alone, for each planting, so that nothing is given twice. */
function shortSaid(j: Ground): Message[] {
  const magnesium = j.magnesiumAsks ? j.magnesium : undefined;
  return [
    ...(j.calciumAsks ? [say("lime.step.gypsum")] : []),
    ...(magnesium ? [say("lime.step.magnesium", { mg: measure(magnesium.mgPerKg, "mg/kg") })] : []),
    say("lime.step.by-feeding"),
    ...(magnesium ? [epsomSaid()] : []),
  ];
}

const epsomSaid = (): Message =>
  say("lime.step.epsom", {
    holds: measure(EPSOM_MG_PCT, "pct"),
    months: MONTHS_BETWEEN.epsom,
    from: measure(EPSOM_IN_TWO_FROM_KG_PER_HA / 10, "g/m2"),
  });
