import type { Step } from "../../core/rule.ts";
import type { Working } from "../../core/working.ts";
import type { StructureState } from "../../states/states.ts";
import { FUEL_HEAT, FUEL_SOURCE } from "../../tables/fuels.ts";
import { MAT_SOURCE, MAT_W_PER_M2 } from "../../tables/glazings.ts";
import { type Message, measure, onDay, say } from "../../text/message.ts";
import { type Season, seasonOf } from "./demand.ts";
import { type House, withLayer } from "./house.ts";
import type { Nights } from "./nights.ts";

/** Everything the answer says. */
export interface Heating {
  house: House;
  nights: Nights;
  season: Season | null;
  /** Nights of the forecast. */
  ahead: { day: string; coldestC: number; kWh: number }[];
  design: { outsideC: number; of: number } | null;
  coldest: number;
  loadW: number;
  ratedW: number | null;
  code: "heat" | "unrated" | "short" | "no-heater";
}

const kWh = (value: number) => measure(value, "kWh");
const W = (value: number) => measure(value, "W");

export function stepsOf(state: StructureState, h: Heating, w: Working): Step[] {
  return [
    ...loadSteps(h),
    ...nightSteps(h),
    ...fuelSteps(state, h, w),
    ...layerSteps(state, h),
    ...waitingSteps(h),
    ...matSteps(state, w),
    say("night-heat.step.thermometer"),
  ].map((text) => ({ text }));
}

function loadSteps({ house, design, coldest, loadW, nights, ratedW, code }: Heating): Message[] {
  // Nobody has measured how this place differs from its station.
  const colderW = nights.pairedNights === 0 ? loadW + house.lossWPerK * nights.plusMinusC : null;
  return [
    design
      ? say("night-heat.step.load", { load: W(loadW), outside: measure(coldest, "C"), n: nights.years })
      : say("night-heat.step.load-forecast", { load: W(loadW), outside: measure(coldest, "C") }),
    ...(code === "unrated" ? [say("night-heat.step.rating-unknown")] : []),
    ...(colderW === null
      ? []
      : [
          say("night-heat.step.colder-site", {
            c: measure(nights.plusMinusC, "C-difference"),
            load: W(colderW),
          }),
        ]),
    ...(code === "short" ? [say("night-heat.step.short", { missing: W(loadW - (ratedW ?? 0)) })] : []),
  ];
}

function nightSteps({ ahead, season }: Heating): Message[] {
  const worst = ahead.reduce<Heating["ahead"][number] | undefined>(
    (a, n) => (n.kWh > (a?.kWh ?? 0) ? n : a),
    undefined,
  );
  return [
    ...(worst
      ? [
          say("night-heat.step.worst-night", {
            day: onDay(worst.day),
            kWh: kWh(worst.kWh),
            outside: measure(worst.coldestC, "C"),
          }),
        ]
      : []),
    ...(season
      ? [
          say("night-heat.step.season", {
            nights: season.nights,
            mean: kWh(season.meanKWh),
            low: kWh(season.lowKWh),
            high: kWh(season.highKWh),
          }),
        ]
      : []),
  ];
}

/** A night and the season by each fuel that has a price, and which fuels have none. */
function fuelSteps({ structure }: StructureState, { season, ahead }: Heating, w: Working): Message[] {
  const basis = season ?? null;
  const total = basis?.meanKWh ?? ahead.reduce((sum, n) => sum + n.kWh, 0);
  const nights = basis?.nights ?? ahead.length;
  if (total === 0 || nights === 0) return [];
  return structure.heaters.map((heater, i) => {
    const { unit, kWhPerUnit, efficiency: usual } = FUEL_HEAT[heater.fuel];
    if (heater.efficiency === undefined) {
      w.estimate(`heaters.${i}.efficiency`, `${usual}, as is usual for ${heater.fuel}`, {
        key: "common-practice",
      });
    }
    const useful = kWhPerUnit * (heater.efficiency ?? usual);
    const units = w.line(
      `F${i + 1}`,
      `${heater.fuel} for those nights`,
      `${total.toFixed(0)} kWh / (${kWhPerUnit.toFixed(2)} kWh/${unit} × ${heater.efficiency ?? usual})`,
      total / useful,
      unit,
      FUEL_SOURCE,
    );
    const said = {
      fuel: { word: `night-heat.fuel.${heater.fuel}` },
      amount: measure(units, unit),
      nights,
    };
    if (heater.pricePerUnit === undefined) return say("night-heat.step.fuel", said);
    const money = units * heater.pricePerUnit;
    return say("night-heat.step.fuel-money", {
      ...said,
      night: Number((money / nights).toFixed(2)),
      money: Number(money.toFixed(0)),
    });
  });
}

/** What a second layer would save of the season. */
function layerSteps({ structure }: StructureState, { house, nights, season }: Heating): Message[] {
  if (!season || season.meanKWh === 0) return [];
  return (["inner-film", "fleece"] as const).flatMap((layer) => {
    const other = withLayer(structure, house, layer);
    if (!other) return [];
    const saved = season.meanKWh - seasonOf(nights, other).meanKWh;
    return [
      say(`night-heat.step.with-${layer}`, {
        saved: kWh(saved),
        share: measure((100 * saved) / season.meanKWh, "pct"),
      }),
    ];
  });
}

/** What starting a week or two later would save. */
function waitingSteps({ house, nights, season }: Heating): Message[] {
  if (!season || season.meanKWh === 0) return [];
  return [7, 14].flatMap((days) => {
    if (days >= nights.climate.length) return [];
    const saved = season.meanKWh - seasonOf(nights, house, days).meanKWh;
    return [
      say("night-heat.step.waiting", {
        days: measure(days, "days"),
        saved: kWh(saved),
        share: measure((100 * saved) / season.meanKWh, "pct"),
      }),
    ];
  });
}

/** Heat under the trays alone. */
function matSteps({ structure: { trays } }: StructureState, w: Working): Message[] {
  if (!trays) return [];
  const areaM2 = trays.count * trays.areaM2;
  const high = w.line(
    "Wm",
    "seedling mats under all trays, at most",
    `${areaM2.toFixed(2)} m2 × ${MAT_W_PER_M2.high.toFixed(0)} W/m2`,
    areaM2 * MAT_W_PER_M2.high,
    "W",
    MAT_SOURCE,
  );
  return [
    say("night-heat.step.mats", { trays: trays.count, low: W(areaM2 * MAT_W_PER_M2.low), high: W(high) }),
  ];
}
