import { isSlow } from "../../food/schedule.ts";
import type { Material } from "../../states/food.ts";
import type { PlantingState } from "../../states/states.ts";
import { type Message, measure, onDay, say, wordOf } from "../../text/message.ts";
import { amount } from "./amount.ts";
import type { FeedingReading } from "./reading.ts";

/** What to give, material by material, in every measure a grower may have at hand. */
export function doseSaid(state: PlantingState, r: FeedingReading): Message[] {
  const { dose } = r;
  if (!dose) return [];
  const hectares = r.demand.areaM2 / 10_000;
  const split = r.rain !== undefined && r.rain.giveOn === undefined;
  const said = dose.parts.flatMap(({ material, kg }): Message[] => {
    const name = wordOf(`material.${material.kind}`);
    const now = r.dueNow && r.rain?.giveOn === undefined;
    if (!now) {
      return [
        say("feeding.step.next", { material: name, day: onDay(dose.on), bed: amount(kg), weeks: dose.weeks }),
      ];
    }
    const shared = {
      material: name,
      bed: amount(kg),
      area: measure(kg / hectares, "kg/ha"),
      square: measure((kg * 1000) / r.demand.areaM2, "g/m2"),
      weeks: dose.weeks,
    };
    return [perPlace(state, kg * 1000, shared), ...scoopSaid(material.bulkDensityKgPerL, kg, name)];
  });
  return [
    ...(split ? [say("feeding.step.split", rainParams(r))] : []),
    ...(r.rain?.giveOn === undefined ? [] : [say("feeding.step.wait", rainParams(r))]),
    ...said,
    ...logEach(dose.parts),
    ...(r.dueNow && r.dry && !r.rain
      ? r.dry.parts.map(({ material, kg }) =>
          say("feeding.step.dry", {
            material: wordOf(`material.${material.kind}`),
            weeks: r.dry?.weeks ?? 1,
            bed: amount(kg),
          }),
        )
      : []),
    ...dose.parts
      .filter((p) => isSlow(p.material.kind))
      .map((p) => say("feeding.step.slow", { material: wordOf(`material.${p.material.kind}`) })),
  ];
}

/** An answer to the advice is prefilled with every material of the dose. */
const logEach = (parts: readonly { material: Material }[]): Message[] =>
  parts.length > 1 ? [say("feeding.step.log-each")] : [];

const rainParams = ({ dose, rain }: FeedingReading) => ({
  rain: measure(rain?.rainMm ?? 0, "mm"),
  excess: measure(rain?.excessMm ?? 0, "mm"),
  low: measure(rain?.lossKgPerHa.low ?? 0, "kg/ha"),
  high: measure(rain?.lossKgPerHa.high ?? 0, "kg/ha"),
  day: onDay(dose?.on ?? ""),
});

/** Less than this for a plant [g] no grower weighs: it would be said as 0.00 of an ounce. */
const LEAST_PER_PLANT_G = 0.005 * 28.349523125;

function perPlace(state: PlantingState, grams: number, shared: Message["params"]): Message {
  const { bed, planting } = state;
  const row = measure(grams / (bed.lengthM * planting.rowsPerBed), "g/m");
  const perPlant = grams / planting.plants;
  return perPlant < LEAST_PER_PLANT_G
    ? say("feeding.step.dose-bed-row", { ...shared, row })
    : say("feeding.step.dose-bed", { ...shared, row, plant: measure(perPlant, "g/plant") });
}

/** By volume, where somebody weighed how much a litre of it is. */
function scoopSaid(kgPerL: number | undefined, kg: number, material: { word: string }): Message[] {
  if (kgPerL === undefined) return [];
  return [say("feeding.step.scoop", { material, volume: measure((kg / kgPerL) * 1000, "scoop-mL") })];
}
