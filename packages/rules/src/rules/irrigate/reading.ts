import type { AvailableWater } from "../../water/availableWater.ts";
import type { DemandDay } from "../../water/demand.ts";
import type { Salinity } from "../../water/salt.ts";
import type { Season, SeasonBook, SoilStart } from "../../water/season.ts";
import type { SensorWord } from "../../water/soilSensor.ts";
import type { TopSoil } from "../../water/topSoil.ts";
import type { StandingZone } from "../../water/zone.ts";
import type { ZoneGround } from "../../water/zoneSeason.ts";

/** A day whose evening finds the root zone short, and what is missing that morning. */
export interface ShortDay {
  day: string;
  depletionMm: number;
}

/** One day to come, as it would run without water. */
export interface OpenDay {
  et0Mm: number;
  kcb: number;
  ke: number;
  etcMm: number;
  tawMm: number;
  rawMm: number;
  depletionFraction: number;
  /** What may be missing that evening before water is due: RAW, or what a deficit on purpose lets it go to. */
  triggerMm: number;
}

/** A zone's book up to now, and when it will be short. */
export interface ZoneReading {
  zone: StandingZone;
  index: number;
  available: AvailableWater;
  top: TopSoil | undefined;
  salinity: Salinity | undefined;
  ground: ZoneGround;
  /** The book's days and the days to come; the first `closed` are the book's. */
  days: DemandDay[];
  closed: number;
  season: Season;
  book: SeasonBook;
  /** The start of the first day not yet in the book, with what was watered since. */
  start: SoilStart;
  depletionMm: number;
  /** What the book alone has missing; differs from `depletionMm` where a sensor decides. */
  bookDepletionMm: number;
  sensors: SensorWord[];
  decidedBy: "book" | "water-content" | "tension-kpa";
  today: OpenDay;
  /** First day whose evening finds it short, if no rain falls. */
  due: ShortDay | undefined;
  /** The same with the forecast's rain. */
  dueWithRain: ShortDay | undefined;
  /** The thirstiest and the mildest day of recent weather [mm/day]. */
  et0Span: { highMm: number; lowMm: number };
  /** The same in the hottest, and in the coolest, of recent weather. */
  earliest: ShortDay | undefined;
  latest: ShortDay | undefined;
}

/** What a run of the days to come reads. */
export type Ahead = Pick<ZoneReading, "zone" | "days" | "season" | "closed">;
