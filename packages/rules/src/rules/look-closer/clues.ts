import { addDays, localDay } from "../../core/days.ts";
import { Working } from "../../core/working.ts";
import { latestTestOf } from "../../food/latestTest.ts";
import { heldGuide } from "../../guides/held.ts";
import type { Crop, SoilDisease } from "../../states/bedPlan.ts";
import type { MaterialKind } from "../../states/food.ts";
import type { PlantingState } from "../../states/states.ts";
import type { Clue } from "../../tables/diagnosisTypes.ts";
import { PEPPER_SALT_TOLERANCE } from "../../tables/saltTolerance.ts";
import { soilSaltOf } from "../salt/soil.ts";
import { settledEce, waterTestOf } from "../salt/water.ts";
import { readValue } from "../soil-reading/values.ts";

/** A spraying or a feed this recent can have to do with the signs (cp). */
const RECENT_DAYS = 28;
/** Manure, ash and lime this recent are still at work (cp; some herbicides stay in manure for a year, Tennessee). */
const YEAR_DAYS = 365;
/** Iron goes short above this pH, hardly below the other (cp). */
const HIGH_PH = 7.2;
const LOW_PH = 6.5;
/** Rotations against Verticillium are of 4 to 5 years (PNW handbook). */
const HOST_YEARS = 5;
const VERTICILLIUM_HOSTS: readonly Crop[] = ["tomato", "potato", "eggplant", "pepper"];
const LIMING: readonly (MaterialKind | undefined)[] = [
  "wood-ash",
  "calcitic-lime",
  "dolomitic-lime",
  "hydrated-lime",
  "burnt-lime",
];
const MANURES: readonly (MaterialKind | undefined)[] = ["manure", "poultry-manure", "compost"];

/** Points that a record gives; 0 where it is read and speaks neither way, null where there is none to read. */
export type Clues = Record<Clue, number | null>;

/** What sprays, inputs, tests and the bed's past say. Strong where a test speaks (±2), weaker where a habit does (cp). */
export function cluesOf(state: PlantingState, today: string, firstOn: string): Clues {
  const { planting, applications, site } = state;
  const recent = addDays(firstOn, -RECENT_DAYS);
  const sprayed = (target: string) =>
    (state.sprays ?? []).some((s) => {
      const on = localDay(s.at, site.timeZone);
      return s.target === target && Date.parse(s.at) <= Date.parse(state.asOf) && on >= recent;
    });
  const given = (since: string, is: (a: (typeof applications)[number]) => boolean) =>
    applications.some((a) => a.on >= since && a.on <= today && is(a));
  const lastYear = addDays(firstOn, -YEAR_DAYS);
  const isNew = planting.setOutOn === undefined || addDays(planting.setOutOn, RECENT_DAYS) >= firstOn;
  return {
    herbicide: sprayed("weeds") ? 3 : null,
    "residue-in-manure": given(lastYear, (a) => MANURES.includes(a.kind)) ? 1 : null,
    "insects-sprayed": sprayed("insects") ? 1 : null,
    salty: saltOf(state, today),
    "short-K": soilOf(state, today, "K"),
    "short-P": soilOf(state, today, "P"),
    "short-Mg": soilOf(state, today, "Mg"),
    "short-Ca": soilOf(state, today, "Ca"),
    "nitrogen-given": given(recent, (a) => a.nPct > 0) ? -1 : null,
    "high-ph": phOf(
      state,
      today,
      given(lastYear, (a) => LIMING.includes(a.kind)),
    ),
    "host-before": hostsOf(state, Number(today.slice(0, 4))),
    "newly-set-out": isNew ? 1 : -1,
  };
}

/** That a disease was found in this bed in an earlier season. */
export const foundBefore = (state: PlantingState, today: string, disease: SoilDisease): boolean =>
  (state.history ?? []).some((h) => h.disease === disease && h.season < Number(today.slice(0, 4)));

/** By the guide that fits the soil test. */
function soilOf(state: PlantingState, today: string, nutrient: "K" | "P" | "Mg" | "Ca"): number | null {
  const latest = latestTestOf(state.soilTests, today, (t) => t.values.some((v) => v.nutrient === nutrient));
  const at = latest?.test.values.findIndex((v) => v.nutrient === nutrient) ?? -1;
  const value = latest?.test.values[at];
  if (!latest || !value) return null;
  const { test, index } = latest;
  const context = {
    ...(test.waterPh !== undefined && { waterPh: test.waterPh }),
    ...(test.cecCmolPerKg !== undefined && { cecCmolPerKg: test.cecCmolPerKg }),
  };
  const reading = readValue(test, value, `soilTests.${index}.values.${at}`, context, {
    chosen: heldGuide(state.settings.soilGuide, state.guides),
    own: state.guides,
  });
  if (!("read" in reading)) return null;
  return { responds: 2, "may-respond": 0, unlikely: -2 }[reading.read.response];
}

/** Soil first, else the soil that the water would make; against pepper's threshold. Pots are not read by soil limits. */
function saltOf(state: PlantingState, today: string): number | null {
  const limit = PEPPER_SALT_TOLERANCE[0].thresholdDsPerM.low;
  const newest = state.soilTests.filter((t) => t.ec).toSorted((a, b) => (a.sampledOn < b.sampledOn ? 1 : -1));
  const readable = newest[0]?.medium === "mineral-soil";
  const soil = readable ? soilSaltOf(state, today, new Working()) : undefined;
  if (soil?.kind === "read") return soil.lowDsPerM > limit ? 2 : soil.highDsPerM < limit ? -2 : 0;
  const ec = waterTestOf(state.waterTests ?? [], today)?.test.ecDSPerM;
  if (ec === undefined) return null;
  return settledEce(ec) > limit ? 2 : -1;
}

function phOf(state: PlantingState, today: string, limed: boolean): number | null {
  const ph = latestTestOf(state.soilTests, today, (t) => t.waterPh !== undefined)?.test.waterPh;
  if (ph !== undefined && ph >= HIGH_PH) return 2;
  if (ph !== undefined && ph < LOW_PH) return -2;
  if (limed) return 1;
  return ph === undefined ? null : 0;
}

function hostsOf({ history }: PlantingState, year: number): number | null {
  const before = (history ?? []).filter((h) => h.season < year && h.season >= year - HOST_YEARS);
  if (before.length === 0) return null;
  return before.some((h) => VERTICILLIUM_HOSTS.includes(h.crop)) ? 1 : -1;
}
