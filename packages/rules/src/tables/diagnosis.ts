import { DISEASES } from "./diagnosisDiseases.ts";
import { FOOD } from "./diagnosisFood.ts";
import { PESTS } from "./diagnosisPests.ts";
import type { Cause } from "./diagnosisTypes.ts";
import { WEATHER_DAMAGE } from "./diagnosisWeather.ts";

/** Every possible cause the rule knows. Order is that of the docs and breaks ties, nothing else. */
export const CAUSES: readonly Cause[] = [...PESTS, ...DISEASES, ...FOOD, ...WEATHER_DAMAGE];
