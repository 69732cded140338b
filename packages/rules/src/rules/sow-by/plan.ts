import { addDays } from "../../core/days.ts";
import { refuse } from "../../core/errors.ts";
import type { SourceRef, Working } from "../../core/working.ts";
import { germinationDays } from "../../quantities/climate/germinationDays.ts";
import { seedsToSow } from "../../quantities/statistics/seedsToSow.ts";
import type { Planting } from "../../states/parts.ts";
import type { SetOutDay } from "../set-out/day.ts";

export type SowCode = "sow" | "sow-earlier" | "sow-later" | "too-late";

/** Everything the answer is made of. */
export interface SowPlan {
  code: SowCode;
  today: string;
  sownOn: string;
  out: SetOutDay;
  dates: Dates;
  raising: Raising;
  seeds: Seeds;
  /** First day in the bed if sown today. */
  soonest: string;
}

const PRACTICE: SourceRef = { key: "common-practice" };
const GUIDES: SourceRef = {
  key: "transplanting-guides",
  locator: "6-8 weeks, 6-8 true leaves, hardened 7-10 days",
};

/** From seedlings showing to 6-8 true leaves, the hardening within it (TR-14, from memory: 6 to 8 weeks). */
const RAISING_DAYS = { least: 42, most: 56 } as const;
/** Last days of the raising (TR-14, from memory: 7 to 10). */
const HARDENING = { least: 7, most: 10 } as const;
/** From seedlings showing to the first or second true leaf, when they are potted on (cp). */
const POTTING_ON = { least: 14, most: 21 } as const;
/** Where nobody measured the medium: the cool end of the 20-24 C that FAO's card asks for, so that no day is missing. */
const USUAL_MEDIUM_C = 20;
/** Between these the table has seedlings at both columns; outside them the days are not known, or none come up. */
const COOLEST_C = 15;
const HOTTEST_C = 35;
/** The fastest column of the table that loses no seedlings to heat. */
export const FASTEST_C = 25;
/** Seedlings lost between emergence and setting out where nobody counted, and the wanted chance of enough (cp). */
const USUAL_LOSS_PCT = 10;
const CHANCE = 0.9;

/** How long seeds take to plants. */
export interface Raising {
  mediumC: number;
  mediumKnown: boolean;
  germinationDays: number;
  /** Days that the fastest medium would save; 0 where this one is as fast. */
  savedByWarmthDays: number;
  /** Normal seedlings of a hundred seeds at this medium. */
  normalPct: number;
  leastDays: number;
  mostDays: number;
}

/**
 * From sowing to the bed: germination by the medium, then the raising.
 *
 * @throws DomainError naming `planting.propagation.mediumC` outside 15 to 35 C
 */
export function raisingOf(planting: Planting, w: Working): Raising {
  const given = planting.propagation?.mediumC;
  if (given !== undefined && (given < COOLEST_C || given > HOTTEST_C)) {
    const message = "peppers do not come up reliably in a medium this warm or cool: change it before sowing";
    refuse("planting.propagation.mediumC", message, `${COOLEST_C} to ${HOTTEST_C} C`, given);
  }
  const mediumC = given ?? USUAL_MEDIUM_C;
  w.line(
    "T_medium",
    "temperature at the seed, day and night",
    given === undefined ? "usual" : "given",
    mediumC,
    "C",
  );
  if (given === undefined) {
    w.estimate("planting.propagation.mediumC", "20 C, the cool end of a nursery's 20-24 C", {
      key: "fao-pepper-card",
      locator: "nursery soil 20-24 C",
    });
  }
  const emergence = germinationDays.compute({ soilC: mediumC });
  w.include(emergence);
  const days = Math.ceil(emergence.value.days ?? Number.NaN);
  const fastest = Math.ceil(germinationDays.compute({ soilC: FASTEST_C }).value.days ?? Number.NaN);
  w.line(
    "D_raise",
    "days from seedlings showing to the bed",
    "6 to 8 weeks",
    RAISING_DAYS.least,
    "days",
    GUIDES,
  );
  w.line(
    "D_harden",
    "of these, days of hardening",
    `${HARDENING.least} to ${HARDENING.most}, the last of them`,
    HARDENING.most,
    "days",
    GUIDES,
  );
  if (planting.propagation?.growingC !== undefined) {
    w.estimate(
      "weeks of raising",
      `6 to 8, not adjusted to ${planting.propagation.growingC} C: the published rates of leaves are of other peppers, in warm houses`,
      GUIDES,
    );
  }
  return {
    mediumC,
    mediumKnown: given !== undefined,
    germinationDays: days,
    savedByWarmthDays: mediumC < FASTEST_C ? Math.max(0, days - fastest) : 0,
    normalPct: emergence.value.normalSeedlingsPct,
    leastDays: days + RAISING_DAYS.least,
    mostDays: days + RAISING_DAYS.most,
  };
}

/** Days of the plan, backward from the bed. */
export interface Dates {
  setOut: string;
  /** First and last sowing day that give plants of the right age. */
  sowFrom: string;
  sowBy: string;
  /** Of the plants sown last. */
  emerge: string;
  potOnFrom: string;
  potOnTo: string;
  hardenFrom: string;
}

export function datesBefore(setOut: string, raising: Raising): Dates {
  const emerge = addDays(setOut, -RAISING_DAYS.least);
  return {
    setOut,
    sowFrom: addDays(setOut, -raising.mostDays),
    sowBy: addDays(setOut, -raising.leastDays),
    emerge,
    potOnFrom: addDays(emerge, POTTING_ON.least),
    potOnTo: addDays(emerge, POTTING_ON.most),
    hardenFrom: addDays(setOut, -HARDENING.most),
  };
}

export interface Seeds {
  seeds: number;
  germinationPct: number;
  lossPct: number;
  chance: number;
}

/** Seeds for the wanted plants: the packet's germination, or the table's at this medium where that is lower. */
export function seedsFor(planting: Planting, raising: Raising, w: Working): Seeds {
  const packet = planting.propagation?.germinationPct;
  const germinationPct = Math.min(packet ?? 100, raising.normalPct);
  const said = packet === undefined ? "" : `packet ${packet} %, `;
  w.line(
    "g_used",
    "normal seedlings of a hundred seeds, as reckoned with",
    `${said}table ${raising.normalPct.toFixed(0)} % at this medium; the lower`,
    germinationPct,
    "%",
    PRACTICE,
  );
  if (packet === undefined) {
    w.estimate("planting.propagation.germinationPct", "the table's normal seedlings at this medium", {
      key: "harrington-minges-1954",
      locator: "pepper, normal seedlings",
    });
  }
  const lossPct = planting.propagation?.lossPct ?? USUAL_LOSS_PCT;
  if (planting.propagation?.lossPct === undefined) {
    w.estimate("planting.propagation.lossPct", `${USUAL_LOSS_PCT} % of the seedlings`, PRACTICE);
  }
  w.line("P_enough", "wanted chance of enough plants", "default", CHANCE, "fraction", PRACTICE);
  const counted = seedsToSow.compute({ plants: planting.plants, germinationPct, lossPct, chance: CHANCE });
  w.include(counted);
  return { seeds: counted.value.seeds, germinationPct, lossPct, chance: CHANCE };
}
