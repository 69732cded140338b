import { daysBetween, localDay } from "../../core/days.ts";
import { TEXTURES } from "../../states/parts.ts";
import type { ValveState } from "../../states/states.ts";
import { middle, SOIL_WATER } from "../../tables/soils.ts";
import { bedNamed } from "../../text/message.ts";
import { availableWaterOf } from "../../water/availableWater.ts";
import { rootDepthAtAge } from "../../water/rootDepth.ts";
import { wettingOf } from "../../water/wetting.ts";
import { CP } from "../published.ts";
import type { UncertainInput } from "../types.ts";

type Input = UncertainInput<ValveState>;
type Zone = ValveState["zones"][number];

/** A valve whose flow was read off a label or an old note (common practice). */
const FLOW_CV = 0.1;
/** An efficiency by the way of watering and not by cups, either way (common practice). */
const EFFICIENCY_OFF = 0.1;
/** A gauge some way off against the field's own, over weeks (common practice). */
const RAIN_CV = 0.2;
/** Roots found by digging, of the depth reckoned: from stopped by a pan to the deep end of FAO-56's range. */
const ROOTS = { shallow: 0.7, deep: 2 } as const;

/** What a valve's water rests on that is not known for sure. */
export function irrigateInputs(state: ValveState): Input[] {
  const today = localDay(state.asOf, state.site.timeZone);
  const { flowLPerH, efficiency, method } = state.valve;
  const inputs: Input[] = [
    {
      id: "valve-flow",
      spread: {
        shape: "normal",
        unit: "L/h",
        mean: flowLPerH,
        sd: FLOW_CV * flowLPerH,
        least: flowLPerH / 2,
        most: flowLPerH * 1.5,
        source: CP,
      },
      cost: "free",
      apply: (s, value) => ({ ...s, valve: { ...s.valve, flowLPerH: Math.min(1e6, Math.max(1, value)) } }),
    },
    {
      id: "valve-efficiency",
      spread: {
        shape: "uniform",
        unit: "share",
        low: Math.max(0.2, efficiency - EFFICIENCY_OFF),
        high: Math.min(1, efficiency + EFFICIENCY_OFF),
        source: { key: "ascough-kiker-2002", locator: "abstract, uniformity in use; the width is (cp)" },
      },
      cost: "cheap",
      apply: (s, value) => ({ ...s, valve: { ...s.valve, efficiency: value } }),
    },
  ];
  if (wettingOf(state.valve).how === "table" && method === "drip") {
    inputs.push({
      id: "wetted-share",
      spread: {
        shape: "uniform",
        unit: "share",
        low: 0.3,
        high: 0.4,
        source: { key: "fao56", locator: "Table 20, p. 149" },
      },
      cost: "free",
      apply: (s, value) => ({ ...s, valve: { ...s.valve, wettedFraction: value } }),
    });
  }
  if (state.weather.some((w) => (w.rainMm ?? 0) > 0)) {
    inputs.push({
      id: "rain-gauge",
      spread: { shape: "normal", unit: "share", mean: 1, sd: RAIN_CV, least: 0.3, most: 1.7, source: CP },
      cost: "cheap",
      apply: (s, value) => ({
        ...s,
        weather: s.weather.map((w) =>
          w.rainMm === undefined ? w : { ...w, rainMm: Math.min(2000, w.rainMm * value) },
        ),
      }),
    });
  }
  return [...inputs, ...soils(state, today), ...roots(state, today)];
}

const stands = ({ planting }: Zone, today: string): boolean =>
  planting.setOutOn !== undefined &&
  planting.setOutOn <= today &&
  !(planting.endedOn !== undefined && planting.endedOn <= today);

/** The beds with plants, each once. */
const bedIds = (state: ValveState, today: string): string[] => [
  ...new Set(state.zones.flatMap((z) => (stands(z, today) ? [z.bed.id] : []))),
];

/**
 * Water a bed's soil holds, where only its texture is known. The class itself, felt by hand, was right in half of 598 cases,
 * and mostly a neighbour else (Foss et al. 1975): the range is that of the class and its neighbours, its middle likeliest.
 */
function soils(state: ValveState, today: string): Input[] {
  return bedIds(state, today).flatMap((id, i): Input[] => {
    const bed = state.zones.find((z) => z.bed.id === id)?.bed;
    const texture = bed?.soil.texture;
    if (!bed || texture === undefined || availableWaterOf(bed, "bed")?.how !== "texture") return [];
    const place = TEXTURES.indexOf(texture);
    const near = TEXTURES.slice(Math.max(0, place - 1), place + 2).map((t) => SOIL_WATER[t].available);
    const wiltingPoint = middle(SOIL_WATER[texture].wiltingPoint);
    return [
      {
        id: "soil-water",
        about: { name: id, params: { bed: bedNamed(id, i + 1) } },
        spread: {
          shape: "triangular",
          unit: "m3/m3",
          low: Math.min(...near.map((r) => r.low)),
          mode: middle(SOIL_WATER[texture].available),
          high: Math.max(...near.map((r) => r.high)),
          source: { key: "foss-1975", locator: "abstract; ranges of FAO-56, Table 19" },
        },
        cost: "laboratory",
        apply: (s, value) => ({
          ...s,
          zones: s.zones.map((z) =>
            z.bed.id === id
              ? {
                  ...z,
                  bed: {
                    ...z.bed,
                    soil: { ...z.bed.soil, wiltingPoint, fieldCapacity: wiltingPoint + value },
                  },
                }
              : z,
          ),
        }),
      },
    ];
  });
}

/** Depth of the roots where nobody dug, for the first planting of each bed. */
function roots(state: ValveState, today: string): Input[] {
  return bedIds(state, today).flatMap((id, i): Input[] => {
    const zone = state.zones.find((z) => z.bed.id === id && stands(z, today));
    const setOutOn = zone?.planting.setOutOn;
    if (!zone || setOutOn === undefined || zone.bed.kind === "containers" || zone.rootDepthM !== undefined) {
      return [];
    }
    const depthM = rootDepthAtAge(daysBetween(setOutOn, today));
    return [
      {
        id: "root-depth",
        about: { name: id, params: { bed: bedNamed(id, i + 1) } },
        spread: {
          shape: "triangular",
          unit: "m",
          low: ROOTS.shallow * depthM,
          mode: depthM,
          high: ROOTS.deep * depthM,
          source: { key: "fao56", locator: "Table 22: 0.5 to 1.0 m; the shallow end is (cp)" },
        },
        cost: "free",
        apply: (s, value) => ({
          ...s,
          zones: s.zones.map((z) =>
            z.bed.id === id && z.rootDepthM === undefined
              ? { ...z, rootDepthM: Math.min(2, Math.max(0.05, value)) }
              : z,
          ),
        }),
      },
    ];
  });
}
