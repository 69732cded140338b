import { localDay } from "../core/days.ts";
import type { SourceRef } from "../core/working.ts";
import type { SoilWaterReading, TEXTURES } from "../states/parts.ts";
import type { Range } from "../tables/soils.ts";

/** A reading older than this no longer overrides the book (common practice). */
const HOLDS_HOURS = 24;
/** A sensor that says the very same over so many days, while plants drink, is stuck (common practice). */
const STUCK_DAYS = 3;
const STUCK_READINGS = 4;
/** What the book must have taken out and not put back meanwhile, for a flat line to be implausible [mm] (common practice). */
const STUCK_USE_MM = 5;
/** No mineral soil is emptier, or holds more, than this [m3/m3] (common practice: air-dry sand; the pores of a loose loam). */
const CONTENT: Range = { low: 0.01, high: 0.6 };
/** Beyond this a granular sensor no longer follows the soil [kPa] (common practice). */
const HIGHEST_TENSION_KPA = 200;

/** Where {@link START_TENSION_KPA} comes from. */
export const START_TENSION_SOURCE: SourceRef = {
  key: "usu-vegetable-guide",
  locator: "soil tension, pepper",
};

const coarse: Range = { low: 17, high: 22 };
const sandyLoam: Range = { low: 22, high: 27 };
const medium: Range = { low: 25, high: 30 };
const fine: Range = { low: 35, high: 45 };

/**
 * Tension at which to start drip irrigation of pepper, where 20 to 25 % of the available water is gone [kPa]. Source: Utah
 * State University's vegetable guide (reference IR-3). It names sand and loamy sand; sandy loam; loam and silt loam; clay
 * loam and clay. Silt is read with silt loam, the silty clays with clay loam.
 */
const START_TENSION_KPA: Record<(typeof TEXTURES)[number], Range> = {
  sand: coarse,
  "loamy-sand": coarse,
  "sandy-loam": sandyLoam,
  loam: medium,
  "silt-loam": medium,
  silt: medium,
  "silty-clay-loam": fine,
  "silty-clay": fine,
  clay: fine,
};

/** Why a sensor was not believed or could not be read. */
type NotUsed = "stale" | "out-of-range" | "stuck" | "below-roots" | "no-threshold" | "deficit";

/** What one sensor of a zone says, and whether it is used. */
export type SensorWord = {
  depthCm: number;
  at: string;
  value: number;
} & (
  | { kind: "water-content"; used: true; depletionMm: number }
  | { kind: "tension-kpa"; used: true; start: Range; says: "water" | "wait" }
  | { kind: SoilWaterReading["kind"]; used: false; why: NotUsed }
);

/** What the words of a zone's sensors are read against. */
interface SensorSetting {
  asOf: string;
  rootDepthM: number;
  /** Then `rootDepthM` is the mix spread over the ground, and a sensor in a pot stands among the roots. */
  inContainers: boolean;
  tawMm: number;
  /** Undefined where neither it nor the texture is known. */
  fieldCapacity: number | undefined;
  texture: (typeof TEXTURES)[number] | undefined;
  /** A deficit held on purpose: the thresholds for full water do not apply. */
  deficit: boolean;
  /** Evapotranspiration less rain and irrigation of the book from an instant on [mm]. */
  driedSinceMm: (at: string) => number;
}

/**
 * The latest word of each sensor (one kind at one depth) up to now, water content first, the shallower first.
 *
 * Water content gives the depletion, Dr = 1000 (θFC - θ) Zr between 0 and TAW; tension only says whether to start, because
 * without the site's own curve it is no depth of water. Not used: a reading older than a day, one deeper than the roots,
 * one that cannot be (outside 0.01 to 0.6 m3/m3 or above 200 kPa), and one that stood still for three days while the book
 * lost 5 mm.
 */
export function sensorWords(readings: SoilWaterReading[], setting: SensorSetting): SensorWord[] {
  const now = Date.parse(setting.asOf);
  const bySensor = new Map<string, SoilWaterReading[]>();
  for (const r of readings) {
    if (Date.parse(r.at) > now) continue;
    const id = `${r.kind} ${r.depthCm}`;
    bySensor.set(id, [...(bySensor.get(id) ?? []), r]);
  }
  return [...bySensor.values()]
    .flatMap((series) =>
      wordOf(
        series.toSorted((a, b) => Date.parse(a.at) - Date.parse(b.at)),
        setting,
        now,
      ),
    )
    .toSorted((a, b) => (a.kind === b.kind ? a.depthCm - b.depthCm : a.kind === "water-content" ? -1 : 1));
}

function wordOf(series: SoilWaterReading[], setting: SensorSetting, now: number): SensorWord[] {
  const last = series.at(-1);
  if (!last) return [];
  const { kind, depthCm, at, value } = last;
  const said = { depthCm, at, value };
  const not = (why: NotUsed): SensorWord[] => [{ ...said, kind, used: false, why }];
  if (now - Date.parse(at) > HOLDS_HOURS * 3_600_000) return not("stale");
  if (!setting.inContainers && depthCm / 100 > setting.rootDepthM) return not("below-roots");
  const possible =
    kind === "water-content" ? value >= CONTENT.low && value <= CONTENT.high : value <= HIGHEST_TENSION_KPA;
  if (!possible) return not("out-of-range");
  if (isStuck(series, setting)) return not("stuck");
  if (kind === "water-content") {
    if (setting.fieldCapacity === undefined) return not("no-threshold");
    const missing = 1000 * (setting.fieldCapacity - value) * setting.rootDepthM;
    return [{ ...said, kind, used: true, depletionMm: Math.min(setting.tawMm, Math.max(0, missing)) }];
  }
  if (setting.deficit) return not("deficit");
  if (setting.texture === undefined) return not("no-threshold");
  const start = START_TENSION_KPA[setting.texture];
  return [{ ...said, kind, used: true, start, says: value >= start.low ? "water" : "wait" }];
}

function isStuck(series: SoilWaterReading[], setting: SensorSetting): boolean {
  const last = series.at(-1);
  if (!last) return false;
  const moved = series.findLastIndex((r) => r.value !== last.value);
  const flat = series.slice(moved + 1);
  const [first] = flat;
  if (!first || flat.length < STUCK_READINGS) return false;
  const days = (Date.parse(last.at) - Date.parse(first.at)) / 86_400_000;
  return days >= STUCK_DAYS && setting.driedSinceMm(first.at) >= STUCK_USE_MM;
}

/**
 * What the water content says is missing [mm]: the mean of the depths that are read, which share the root zone. Undefined
 * where none is used. Of tensions the shallowest decides, where roots drink most (common practice).
 */
export function contentDepletionMm(words: SensorWord[]): number | undefined {
  const missing = words.flatMap((w) => (w.used && w.kind === "water-content" ? [w.depletionMm] : []));
  return missing.length > 0 ? missing.reduce((a, b) => a + b, 0) / missing.length : undefined;
}

/** The local day of a sensor's word. */
export const dayOfWord = (word: SensorWord, timeZone: string): string => localDay(word.at, timeZone);
