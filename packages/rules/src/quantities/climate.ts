import { airPressure } from "./climate/airPressure.ts";
import { calmNightCooling } from "./climate/calmNightCooling.ts";
import { degreeDays } from "./climate/degreeDays.ts";
import { et0DailyQuantity } from "./climate/et0Daily.ts";
import { et0Hargreaves } from "./climate/et0Hargreaves.ts";
import { et0HourlyQuantity } from "./climate/et0Hourly.ts";
import { extraterrestrialRadiation } from "./climate/extraterrestrialRadiation.ts";
import { frostDate } from "./climate/frostDate.ts";
import { germinationDays } from "./climate/germinationDays.ts";
import { greenhouseHeat } from "./climate/greenhouseHeat.ts";
import { hourlyTemperatures } from "./climate/hourlyTemperatures.ts";
import { leafUnfolding } from "./climate/leafUnfolding.ts";
import { netRadiation } from "./climate/netRadiation.ts";
import { nightTemperatureTrend } from "./climate/nightTemperatureTrend.ts";
import { psychrometricConstant } from "./climate/psychrometricConstant.ts";
import { radiativeMinimum } from "./climate/radiativeMinimum.ts";
import { saturationVapourPressure } from "./climate/saturationVapourPressure.ts";
import { solarRadiation } from "./climate/solarRadiation.ts";
import { vapourPressure } from "./climate/vapourPressure.ts";
import { windAt2m } from "./climate/windAt2m.ts";

/** The climate quantities, in the order of the list. */
export const climateQuantities = [
  airPressure,
  psychrometricConstant,
  saturationVapourPressure,
  vapourPressure,
  windAt2m,
  extraterrestrialRadiation,
  solarRadiation,
  netRadiation,
  et0DailyQuantity,
  et0HourlyQuantity,
  et0Hargreaves,
  degreeDays,
  hourlyTemperatures,
  frostDate,
  radiativeMinimum,
  nightTemperatureTrend,
  calmNightCooling,
  germinationDays,
  leafUnfolding,
  greenhouseHeat,
];
