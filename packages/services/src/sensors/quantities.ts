import type { Quantity } from "@pith/contract";

/** What a reading of a quantity can be, and what it cannot. */
interface Plausible {
  /** Outside, the sensor or its unit is wrong: flagged `range`. In the unit kept. */
  lowest: number;
  highest: number;
  /** Largest change in a minute; null where jumps are real. */
  stepPerMinute: number | null;
  /** The same value for so long is a stuck sensor; null where it may rest. */
  stuckAfterH: number | null;
  /** A value that may stay: no wind, night, saturated air, wet soil. */
  mayRestAt?: (value: number) => boolean;
}

/**
 * Ranges and steps: World Meteorological Organization, Guidelines on quality control procedures for data from automatic
 * weather stations (Zahumensky 2004, reproduced in WMO-No. 488), from memory: air -80 to 60 C and 3 C a minute, humidity
 * 0 to 100 % and 10 %, wind 0 to 75 m/s and 20 m/s, radiation 0 to 1600 W/m2 and 1000 W/m2, soil -50 to 50 C and 0.5 C.
 * That radiation may read -10 at night (the dome is colder than the sensor), rain of one reading 500 mm, what soil sensors
 * and meters can read, and how long each may stand still are common practice; that a temperature is suspect which does
 * not move in 12 hours is in US EPA 454/R-99-005, Table 8-4.
 */
export const PLAUSIBLE: Record<Quantity, Plausible> = {
  "air-temperature": { lowest: -80, highest: 60, stepPerMinute: 3, stuckAfterH: 12 },
  "relative-humidity": {
    lowest: 0,
    highest: 100,
    stepPerMinute: 10,
    stuckAfterH: 12,
    mayRestAt: (v) => v >= 95,
  },
  rain: { lowest: 0, highest: 500, stepPerMinute: null, stuckAfterH: null },
  "wind-speed": { lowest: 0, highest: 75, stepPerMinute: 20, stuckAfterH: 12, mayRestAt: (v) => v < 0.5 },
  "solar-radiation": {
    lowest: -10,
    highest: 1600,
    stepPerMinute: 1000,
    stuckAfterH: 12,
    mayRestAt: (v) => v < 1,
  },
  "soil-temperature": { lowest: -50, highest: 50, stepPerMinute: 0.5, stuckAfterH: 72 },
  "soil-tension": {
    lowest: 0,
    highest: 1500,
    stepPerMinute: null,
    stuckAfterH: 168,
    mayRestAt: (v) => v <= 1,
  },
  "soil-water": { lowest: 0, highest: 1, stepPerMinute: 0.1, stuckAfterH: 168 },
  "water-ec": { lowest: 0, highest: 50, stepPerMinute: null, stuckAfterH: null },
  battery: { lowest: 0, highest: 100, stepPerMinute: null, stuckAfterH: null },
};
