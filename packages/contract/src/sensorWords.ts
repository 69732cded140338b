/**
 * What a series can measure, and the units it may be sent in. The first unit is the one readings are kept in. Names are
 * those of the SenML units registry (RFC 8428 section 12.1) and of its secondary units (RFC 8798), and beside them a few
 * that loggers really send and the registry has not: degF, kPa, cbar, dS/m, mS/cm, uS/cm, in, mph, kn.
 */
export const SENSOR_UNITS = {
  "air-temperature": ["Cel", "K", "degF"],
  "relative-humidity": ["%RH"],
  rain: ["mm", "m", "cm", "in"],
  "wind-speed": ["m/s", "km/h", "m/h", "mph", "kn"],
  "solar-radiation": ["W/m2"],
  "soil-temperature": ["Cel", "K", "degF"],
  "soil-tension": ["kPa", "Pa", "hPa", "cbar"],
  "soil-water": ["/", "%", "/100", "/1000"],
  "water-ec": ["dS/m", "S/m", "mS/cm", "uS/cm"],
  battery: ["%EL"],
} as const;
export type Quantity = keyof typeof SENSOR_UNITS;
export const QUANTITIES = Object.keys(SENSOR_UNITS) as [Quantity, ...Quantity[]];
export const UNIT_NAMES = [...new Set<string>(Object.values(SENSOR_UNITS).flat())] as [string, ...string[]];

/** Quantities of the soil: in a bed, at a depth. */
export const SOIL_QUANTITIES: readonly Quantity[] = ["soil-temperature", "soil-tension", "soil-water"];

/** What can be wrong with a reading; bit n of its flags is word n. It stays as it was sent. */
export const READING_FLAGS = ["range", "spike", "stuck", "gap"] as const;
export type ReadingFlag = (typeof READING_FLAGS)[number];
