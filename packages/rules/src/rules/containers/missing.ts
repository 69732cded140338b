import type { NeedsMoreBody } from "../../core/rule.ts";
import { PEPPER_WATER } from "../../tables/cropCoefficients.ts";
import { measure, say } from "../../text/message.ts";
import { widestAvailableWater } from "../../water/availableWater.ts";
import { bedAreaM2 } from "../../water/ground.ts";
import type { Potted } from "./door.ts";
import { volume } from "./say.ts";

/** Reference evapotranspiration of a cool, moist day and of a hot, dry one [mm]. Source: FAO-56, Table 2. */
const ET0_SPAN_MM = { low: 2, high: 8 } as const;

/** No weather near enough to today: how much a plant could ask for. */
export function missingWeather({ state, pots, plantsPerPot }: Potted): NeedsMoreBody["missing"][number] {
  const at = (et0Mm: number) =>
    volume((PEPPER_WATER.kc.mid * et0Mm * bedAreaM2(state.bed)) / pots.count / plantsPerPot);
  return {
    field: state.weather.length > 0 ? "weather" : "forecast",
    measure: say("containers.missing.weather"),
    couldMove: say("containers.missing.weather-moves", {
      low: at(ET0_SPAN_MM.low),
      high: at(ET0_SPAN_MM.high),
      cool: measure(ET0_SPAN_MM.low, "mm"),
      hot: measure(ET0_SPAN_MM.high, "mm"),
    }),
  };
}

/** Garden soil in pots without its texture: how much a pot could hold. */
export function missingTexture({ pots }: Potted): NeedsMoreBody["missing"][number] {
  const { low, high } = widestAvailableWater();
  const { value: p } = PEPPER_WATER.depletionFraction;
  return {
    field: "bed.soil.texture",
    measure: say("containers.missing.texture"),
    couldMove: say("containers.missing.texture-moves", {
      low: volume(pots.volumeL * low * p),
      high: volume(pots.volumeL * high * p),
    }),
  };
}
