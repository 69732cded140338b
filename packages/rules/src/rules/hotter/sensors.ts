import type { Working } from "../../core/working.ts";
import type { ValveState } from "../../states/states.ts";
import { rootZoneDepthM } from "../../water/zone.ts";
import type { Asked } from "./ask.ts";
import type { ZoneLine } from "./line.ts";

type Reading = NonNullable<ValveState["zones"][number]["soilWater"]>[number];

/** Two sensors are a pair within this time and depth of each other (common practice). */
const PAIR_WITHIN_MS = 3_600_000;
const PAIR_WITHIN_CM = 5;
/** Pairs this near to the line's water content speak for it, and so many must (common practice). */
const NEAR_M3_PER_M3 = 0.02;
const FEWEST_PAIRS = 3;
/** A reading holds for a day, and says too dry only so far beyond the line (common practice). */
const READING_HOLDS_MS = 24 * 3_600_000;
const BEYOND_LINE = 1.1;

/** The line as a sensor reads it. */
export interface SensorLine {
  /** Water content at the line; undefined where field capacity was not measured. */
  m3PerM3: number | undefined;
  /** Median tension of the pairs near it, and how many there are; undefined where there are too few. */
  paired: { kPa: number; n: number } | undefined;
  /** A fresh reading is plainly beyond the line. */
  tooDry: boolean;
}

/**
 * The line in a zone's own sensors. Tension comes only from pairs read in this bed, never from a curve of a texture: the
 * same tension means another depletion in each soil.
 */
export function sensorLineOf(asked: Asked, z: ZoneLine, w: Working): SensorLine {
  const readings = z.zone.soilWater ?? [];
  const { fieldCapacity } = z.zone.bed.soil;
  const d = z.on(z.start);
  if (fieldCapacity === undefined) return { m3PerM3: undefined, paired: undefined, tooDry: false };
  const depthMm = 1000 * rootZoneDepthM(z.zone, d.day, asked.today);
  const m3PerM3 = w.line(
    "θ",
    "water content at the line",
    `θFC - D / (1000 Zr), θFC = ${fieldCapacity}`,
    fieldCapacity - d.lineMm / depthMm,
    "m3/m3",
  );
  const paired = pairedTension(readings, m3PerM3, asked.state.asOf);
  if (paired) {
    w.line("h", "tension at the line", `median of ${paired.n} pairs read in this bed`, paired.kPa, "kPa");
  }
  const latest = latestOf(readings, asked.state.asOf, depthMm / 10);
  const depletionMm = latest?.kind === "water-content" ? (fieldCapacity - latest.value) * depthMm : undefined;
  const tooDry =
    (depletionMm !== undefined && depletionMm > BEYOND_LINE * d.lineMm) ||
    (latest?.kind === "tension-kpa" && paired !== undefined && latest.value > BEYOND_LINE * paired.kPa);
  if (latest) {
    w.line(
      "sensor",
      `latest reading in the root zone, ${latest.at}`,
      latest.kind,
      latest.value,
      latest.kind === "tension-kpa" ? "kPa" : "m3/m3",
    );
  }
  return { m3PerM3, paired, tooDry };
}

function pairedTension(readings: Reading[], m3PerM3: number, asOf: string): SensorLine["paired"] {
  const past = readings.filter((r) => Date.parse(r.at) <= Date.parse(asOf));
  const contents = past.filter((r) => r.kind === "water-content");
  const tensions = past.flatMap((t) => {
    if (t.kind !== "tension-kpa") return [];
    const at = Date.parse(t.at);
    const [partner] = contents
      .filter((c) => Math.abs(c.depthCm - t.depthCm) <= PAIR_WITHIN_CM)
      .map((c) => ({ c, apartMs: Math.abs(Date.parse(c.at) - at) }))
      .filter(({ apartMs }) => apartMs <= PAIR_WITHIN_MS)
      .toSorted((a, b) => a.apartMs - b.apartMs);
    return partner && Math.abs(partner.c.value - m3PerM3) <= NEAR_M3_PER_M3 ? [t.value] : [];
  });
  if (tensions.length < FEWEST_PAIRS) return undefined;
  const sorted = tensions.toSorted((a, b) => a - b);
  const half = sorted.length / 2;
  const kPa = ((sorted[Math.ceil(half) - 1] as number) + (sorted[Math.floor(half)] as number)) / 2;
  return { kPa, n: sorted.length };
}

function latestOf(readings: Reading[], asOf: string, rootDepthCm: number): Reading | undefined {
  const now = Date.parse(asOf);
  return readings
    .filter((r) => r.depthCm <= rootDepthCm)
    .filter((r) => Date.parse(r.at) <= now && now - Date.parse(r.at) <= READING_HOLDS_MS)
    .toSorted((a, b) => Date.parse(a.at) - Date.parse(b.at))
    .at(-1);
}
