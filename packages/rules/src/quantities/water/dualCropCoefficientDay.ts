import { z } from "zod";
import { flag, num, word } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import { ORGANIC_MULCH, PLASTIC_MULCH } from "../../tables/cropCoefficients.ts";
import { fao56 } from "../cite.ts";
import {
  EVAPORATION_CONVENTION,
  evaporationFields,
  refuseImpossibleTop,
  soilEvaporationDay,
  writeEvaporationDay,
} from "./dualEvaporationDay.ts";
import { coverFractionOf, exposedWettedFraction, KC_MIN, largestKc } from "./dualExposedSoil.ts";

/** Of the printed 50 to 80 % the end that leaves more evaporation: pepper itself is not in the table. */
const PLASTIC_FALL = PLASTIC_MULCH.evaporationReductionPct.low / 100;
/** 5 % for each 10 % of the ground covered. */
const ORGANIC_FALL = (10 * ORGANIC_MULCH.evaporationReductionPctPer10PctCover.value) / 100;
const MULCH_FALL = { none: 0, organic: ORGANIC_FALL, plastic: PLASTIC_FALL } as const;

/**
 * `dual-crop-coefficient-day`: Kc = Kcb + Ke of one day, with the water balance of the soil's drying top.
 *
 * The basal coefficient comes in as it is for the day: moved to the climate (eq. 70), and lowered 5 to 15 % under
 * plastic (`mulched-crop-coefficient`). Trickle: few as FAO-56 p. 148 states. Mulch lowers Ke: organic by 5 % for each
 * 10 % of the ground covered (p. 197), complete plastic by 50 to 80 % (p. 196; 50 taken, in proportion to the ground
 * covered). There is no water stress in Kc: that is `water-stress` on Kcb alone.
 *
 * Source: FAO-56, eq. 69, 71, 72, 74-79. Refuses what {@link refuseImpossibleTop} refuses.
 */
export const dualCropCoefficientDay = defineQuantity({
  id: "dual-crop-coefficient-day",
  question: "What do the crop and the soil between it use on this day, each on its own?",
  schema: z.strictObject({
    kcb: num("basal crop coefficient of the day", "", 0, 1.6),
    kcMin: num("coefficient of dry bare soil; 0.15 where left out", "", 0.1, 0.2).optional(),
    heightM: num("height of the crop", "m", 0.01, 20),
    rhMinPct: num("minimum relative humidity", "%", 0, 100),
    windAt2mMPerS: num("wind speed at 2 m", "m/s", 0, 30),
    coverFraction: num(
      "share of the ground that the crop shades, as measured",
      "fraction",
      0,
      0.99,
    ).optional(),
    trickle: flag("drippers beneath the plants; no where left out").optional(),
    wettedEveryDayOrTwo: flag("the soil is wetted every day or two; no where left out").optional(),
    mulch: word("mulch between the plants; none where left out", ["none", "organic", "plastic"]).optional(),
    mulchedFraction: num("share of the ground under mulch; all where left out", "fraction", 0, 1).optional(),
    ...evaporationFields,
  }),
  outputs: {
    kc: { meaning: "crop coefficient, basal and evaporation", unit: "" },
    ke: { meaning: "soil evaporation coefficient", unit: "" },
    kr: { meaning: "how freely the top gives its water", unit: "" },
    kcMax: { meaning: "upper limit of the crop coefficient", unit: "" },
    coverFraction: { meaning: "share of the ground that the crop shades", unit: "fraction" },
    exposedWettedFraction: { meaning: "share of the ground wetted and open to the sun", unit: "fraction" },
    etcMmPerDay: { meaning: "crop evapotranspiration without stress", unit: "mm/day" },
    evaporationMm: { meaning: "soil evaporation over the whole area", unit: "mm" },
    surfacePercolationMm: { meaning: "water that passes the drying top", unit: "mm" },
    evaporationDepletionMm: { meaning: "water missing from the exposed, wetted soil", unit: "mm" },
    convention: { meaning: "how the day's water and evaporation are ordered", unit: "sentence" },
  },
  sources: [fao56("eq. 69, 71, 72, 74-79")],
  compute(input, w) {
    refuseImpossibleTop(input);
    if (input.runoffMm === undefined) {
      w.estimate("runoffMm", "taken as 0: all rain enters the soil", fao56("p. 170"));
    }
    const kcMax = w.line(
      "Kcmax",
      "upper limit of the crop coefficient",
      `max{${input.wettedEveryDayOrTwo ? 1.1 : 1.2} + [0.04 (u2 - 2) - 0.004 (RHmin - 45)] (h / 3)^0.3, Kcb + 0.05}, u2 = ${input.windAt2mMPerS}, RHmin = ${input.rhMinPct}, h = ${input.heightM}, Kcb = ${input.kcb}`,
      largestKc(input),
      "",
      fao56("eq. 72"),
    );
    if (input.coverFraction === undefined) {
      w.estimate("coverFraction", "from Kcb: [(Kcb - Kcmin) / (Kcmax - Kcmin)]^(1 + 0.5 h)", fao56("eq. 76"));
      if (input.kcMin === undefined) {
        w.estimate("kcMin", "0.15, the lower end of the printed 0.15 to 0.20", fao56("eq. 76"));
      }
    }
    const coverFraction = w.line(
      "fc",
      "share of the ground that the crop shades",
      input.coverFraction === undefined
        ? `[(Kcb - ${input.kcMin ?? KC_MIN}) / (Kcmax - ${input.kcMin ?? KC_MIN})]^(1 + 0.5 h)`
        : "measured",
      input.coverFraction ?? coverFractionOf({ ...input, kcMin: input.kcMin ?? KC_MIN, kcMax }),
      "fraction",
      fao56("eq. 76"),
    );
    const trickle = input.trickle ?? false;
    const few = w.line(
      "few",
      "share of the ground wetted and open to the sun",
      `min(1 - fc, ${trickle ? "[1 - (2/3) fc] fw" : "fw"}), fw = ${input.wettedFraction}`,
      exposedWettedFraction({ coverFraction, wettedFraction: input.wettedFraction, trickle }),
      "fraction",
      fao56("eq. 75"),
    );
    const mulch = input.mulch ?? "none";
    if (mulch !== "none" && input.mulchedFraction === undefined) {
      w.estimate("mulchedFraction", "taken as 1: all of the ground lies under the mulch");
    }
    const mulchFall = w.line(
      "mulch",
      "share by which the mulch lowers evaporation",
      mulch === "none" ? "no mulch" : `${MULCH_FALL[mulch]} × share covered ${input.mulchedFraction ?? 1}`,
      MULCH_FALL[mulch] * (input.mulchedFraction ?? 1),
      "fraction",
      fao56("ch. 10, p. 196-197"),
    );
    const whole = { ...input, kcMax, exposedWettedFraction: few, runoffMm: input.runoffMm ?? 0, mulchFall };
    const day = soilEvaporationDay(whole);
    writeEvaporationDay(w, whole, day);
    const kc = w.line("Kc", "crop coefficient", "Kcb + Ke", input.kcb + day.ke, "", fao56("eq. 69"));
    const etcMmPerDay = w.line(
      "ETc",
      "crop evapotranspiration without stress",
      `(Kcb + Ke) ET0, ET0 = ${input.et0MmPerDay}`,
      kc * input.et0MmPerDay,
      "mm/day",
      fao56("eq. 69"),
    );
    return {
      ...day,
      kc,
      kcMax,
      coverFraction,
      exposedWettedFraction: few,
      etcMmPerDay,
      convention: EVAPORATION_CONVENTION,
    };
  },
});
