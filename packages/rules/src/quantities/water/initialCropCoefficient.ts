import { z } from "zod";
import { refuse } from "../../core/errors.ts";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import { fao56 } from "../cite.ts";

/** Depths that the two figures of the initial coefficient stand for [mm]. Source: FAO-56, eq. 59. */
const LIGHT_MM = 10;
const HEAVY_MM = 40;

/**
 * The initial crop coefficient between light and heavy wettings.
 *
 *   Kcini = light + (I - 10) / (40 - 10) (heavy - light)        10 <= I <= 40 mm; beyond, the nearer figure
 *
 * Source: FAO-56, eq. 59.
 */
const betweenWettings = (light: number, heavy: number, depthMm: number): number => {
  const share = (Math.min(HEAVY_MM, Math.max(LIGHT_MM, depthMm)) - LIGHT_MM) / (HEAVY_MM - LIGHT_MM);
  return light + share * (heavy - light);
};

/**
 * `initial-crop-coefficient`: Kc ini for the depth that each wetting really brings to the part it wets (eq. 59-61). The
 * two readings of figures 29 and 30 come in, since the figures depend on ET0, soil and the days between wettings.
 * Refuses a light reading above the heavy one.
 */
export const initialCropCoefficient = defineQuantity({
  id: "initial-crop-coefficient",
  question: "What is the crop coefficient of young plants, watered this much at a time?",
  schema: z.strictObject({
    kcLightWetting: num("coefficient for wettings of 10 mm or less, FAO-56 figure 29", "", 0.05, 1.3),
    kcHeavyWetting: num("coefficient for wettings of 40 mm or more, FAO-56 figure 30", "", 0.05, 1.3),
    wettingMm: num("mean depth of a wetting over the whole area", "mm", 0.1, 300),
    wettedFraction: num(
      "share of the ground that a wetting reaches; 1 where left out",
      "fraction",
      0.05,
      1,
    ).optional(),
    et0MmPerDay: num("reference evapotranspiration", "mm/day", 0, 20).optional(),
  }),
  outputs: {
    kcIni: { meaning: "crop coefficient of the initial stage, over the whole area", unit: "" },
    wettedDepthMm: { meaning: "depth of a wetting on the ground it reaches", unit: "mm" },
    etcMmPerDay: { meaning: "crop evapotranspiration; null without ET0", unit: "mm/day" },
  },
  sources: [fao56("eq. 59-61")],
  compute(input, w) {
    const { kcLightWetting, kcHeavyWetting, wettingMm, et0MmPerDay } = input;
    if (kcLightWetting > kcHeavyWetting) {
      const bound = `at most ${kcHeavyWetting}`;
      refuse("kcLightWetting", `must not be above kcHeavyWetting (${kcHeavyWetting})`, bound, kcLightWetting);
    }
    if (input.wettedFraction === undefined) {
      w.estimate("wettedFraction", "taken as 1: rain or sprinkler wets all of the ground", fao56("Table 20"));
    }
    const fw = input.wettedFraction ?? 1;
    const wettedDepthMm = w.line(
      "Iw",
      "depth of a wetting on the ground it reaches",
      `I / fw = ${wettingMm} / ${fw}`,
      wettingMm / fw,
      "mm",
      fao56("eq. 61"),
    );
    const onWetted = w.line(
      "Kcini(Iw)",
      "coefficient of the wetted ground",
      `light + (Iw - 10) / (40 - 10) (heavy - light), Iw from 10 to 40; light = ${kcLightWetting}, heavy = ${kcHeavyWetting}`,
      betweenWettings(kcLightWetting, kcHeavyWetting, wettedDepthMm),
      "",
      fao56("eq. 59"),
    );
    const kcIni = w.line(
      "Kcini",
      "coefficient over the whole area",
      "fw Kcini(Iw)",
      fw * onWetted,
      "",
      fao56("eq. 60"),
    );
    if (et0MmPerDay === undefined) return { kcIni, wettedDepthMm, etcMmPerDay: null };
    const etcMmPerDay = w.line(
      "ETc",
      "crop evapotranspiration",
      `Kcini ET0, ET0 = ${et0MmPerDay}`,
      kcIni * et0MmPerDay,
      "mm/day",
      fao56("eq. 58"),
    );
    return { kcIni, wettedDepthMm, etcMmPerDay };
  },
});
