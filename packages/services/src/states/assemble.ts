import {
  addDays,
  type Bed,
  type BedHistory,
  type BedState,
  type Expected,
  type FarmSeasonState,
  type FirstPick,
  localDay,
  type OwnWork,
  type PlantingState,
  type StructureState,
  type ValveState,
  type WaterTest,
} from "@pith/rules";
import { type FarmFacts, MOST_PLANT_TEMPERATURES, type SiteFacts, WEATHER_DAYS } from "./facts.ts";
import {
  applicationPart,
  bedPart,
  drainReadingPart,
  feedingPart,
  materialPart,
  notePart,
  plantingPart,
  plantTestPart,
  present,
  signPart,
  sitePart,
  soilTestPart,
  soilWaterPart,
  sprayPart,
  structurePart,
  waterTestPart,
} from "./parts.ts";

/** Subjects' states from a farm's facts: pure, the same facts give the same bytes. */

const MOST_NOTES = 2000;
const MOST_SOIL_TESTS = 50;
const MOST_RECORDS = 2000;
const MOST_UNANSWERED = 200;
const MOST_SOIL_WATER = 5000;
const MOST_WATER_TESTS = 50;
const MOST_PLANT_TESTS = 50;
const MOST_DRAIN_READINGS = 400;
const MOST_SIGNS = 500;
const MOST_SPRAYS = 500;
const MOST_PICKED = 1000;
const MOST_HISTORY = 200;
const MOST_FIRST_PICKS = 50;
const MOST_OWN_WORK = 500;
/** Heat is reckoned ahead; the last weeks show what the nights were. */
const STRUCTURE_WEATHER_DAYS = 30;
/** As much as a state can hold. */
const MOST_GIVEN_MM = 3000;

type PlantingRow = FarmFacts["plantings"][number];
type BedView = FarmFacts["beds"][number];

const head = (facts: FarmFacts) => ({ version: 1 as const, asOf: facts.asOf, settings: facts.settings });

/** From setting out, or from sowing while they are raised; never further back than the rules read. */
const startOf = (planting: PlantingRow, today: string): string =>
  later(
    planting.setOutOn !== null && planting.setOutOn <= today ? planting.setOutOn : planting.sownOn,
    today,
  );

const later = (day: string, today: string): string => {
  const earliest = addDays(today, -(WEATHER_DAYS - 1));
  return day > earliest ? day : earliest;
};

/** What the rules read about one planting; its shed is the farm's and is put in by the farm's season. */
export function plantingState(facts: FarmFacts, planting: PlantingRow): PlantingState {
  const { bed, site } = placeOf(facts, planting.bedId);
  const start = startOf(planting, site.today);
  const waterTests = waterTestsOf(facts, bed.siteId, bed.valveId, site.today);
  return present({
    kind: "planting" as const,
    ...head(facts),
    site: sitePart(site.row),
    bed: bedOf(facts, bed, planting),
    planting: plantingPart(planting),
    notes: notesOf(facts, planting, site.today),
    weather: site.weather.filter((day) => day.date >= start),
    plantTemperatures: facts.temperatures
      .filter((t) => t.plantingId === planting.id && localDay(t.at, site.row.timeZone) >= start)
      .slice(-MOST_PLANT_TEMPERATURES)
      .map(({ at, temperatureC }) => ({ at, temperatureC })),
    forecast: site.forecast,
    climatology: site.climatology,
    soilTests: soilTestsOf(facts, bed, site.today),
    guides: some(facts.guides),
    feeding: feedingPart(planting.feeding),
    shed: [],
    applications: applicationsOf(facts, planting, site.today),
    // Lime and ash advised for its bed keep ammonium away from it too.
    unanswered: [...unansweredOf(facts, planting.id, site), ...unansweredOf(facts, bed.id, site)].slice(
      -MOST_UNANSWERED,
    ),
    water: waterOf(facts, bed, planting, waterTests, site.today),
    waterTests: some(waterTests),
    plantTests: some(
      facts.plantTests
        .filter((t) => t.plantingId === planting.id && t.sampledOn <= site.today)
        .slice(0, MOST_PLANT_TESTS)
        .map(plantTestPart),
    ),
    drainReadings: some(
      facts.drainReadings
        .filter((r) => r.plantingId === planting.id && r.onDay <= site.today)
        .slice(0, MOST_DRAIN_READINGS)
        .map(drainReadingPart),
    ),
    waterings: bed.valveId === null ? undefined : some(wateringsOf(facts, bed.valveId, start, site.today)),
    signs: some(
      facts.signs
        .filter((s) => s.plantingId === planting.id && s.onDay <= site.today)
        .slice(-MOST_SIGNS)
        .map((s) => signPart(s, facts.photos.get(s.id) ?? 0)),
    ),
    sprays: some(spraysOf(facts, bed.id)),
    firstPicks: some(firstPicksOf(facts, planting)),
    picked: some(
      facts.harvests
        .filter((h) => h.plantingId === planting.id && h.onDay <= site.today)
        .slice(-MOST_PICKED)
        .map(({ onDay, kg, marketableKg }) => present({ on: onDay, kg, marketableKg })),
    ),
    history: some(historyOf(facts, bed.id)),
    ownWork: some(ownWorkOf(facts, site.today)),
  }) as PlantingState;
}

/** The farm's season: standing plantings in the order in which they share the shed. */
export function farmSeasonState(facts: FarmFacts, plantings: PlantingState[]): FarmSeasonState {
  return {
    kind: "farm-season",
    ...head(facts),
    id: facts.farmId,
    season: Number(facts.asOf.slice(0, 4)),
    shed: facts.materials.map(materialPart),
    plantings,
    ...givingMinutesOf(facts),
  };
}

/** The plantings that stand on a valve now. */
export const plantingsOnValve = (facts: FarmFacts, valveId: string): PlantingRow[] => {
  const beds = new Map(facts.beds.filter((b) => b.valveId === valveId).map((b) => [b.id, b]));
  return facts.plantings.filter((p) => {
    const bed = beds.get(p.bedId);
    const today = bed && facts.sites.get(bed.siteId)?.today;
    return today !== undefined && p.setOutOn !== null && p.setOutOn <= today;
  });
};

/** What the rules read about one valve; undefined where nothing stands on it. */
export function valveState(facts: FarmFacts, valve: FarmFacts["valves"][number]): ValveState | undefined {
  const standing = plantingsOnValve(facts, valve.id);
  const site = facts.sites.get(valve.siteId);
  if (standing.length === 0 || !site) return undefined;
  const start = standing.map((p) => startOf(p, site.today)).sort()[0] ?? site.today;
  return present({
    kind: "valve" as const,
    ...head(facts),
    id: valve.id,
    site: sitePart(site.row),
    valve: present({
      method: valve.method,
      flowLPerH: valve.flowLPerH,
      efficiency: valve.efficiency,
      wettedFraction: valve.wettedFraction,
    }),
    zones: standing.map((planting) => {
      const { bed } = placeOf(facts, planting.bedId);
      return present({
        bed: bedPart(bed),
        planting: plantingPart(planting),
        notes: notesOf(facts, planting, site.today),
        soilWater: some(
          facts.soilWater
            .filter((r) => r.bedId === bed.id)
            .slice(-MOST_SOIL_WATER)
            .map(soilWaterPart),
        ),
        soilTests: some(soilTestsOf(facts, bed, site.today)),
      });
    }),
    weather: site.weather.filter((day) => day.date >= start),
    forecast: site.forecast,
    climatology: site.climatology,
    waterTests: some(waterTestsOf(facts, valve.siteId, valve.id, site.today)),
    waterings: wateringsOf(facts, valve.id, start, site.today),
    unanswered: unansweredOf(facts, valve.id, site),
  }) as ValveState;
}

/** What the rules read about one house or tunnel. */
export function structureState(facts: FarmFacts, structure: FarmFacts["structures"][number]): StructureState {
  const site = facts.sites.get(structure.siteId);
  if (!site) throw new Error(`structure ${structure.id} stands on no site of its farm`);
  return present({
    kind: "structure" as const,
    ...head(facts),
    site: sitePart(site.row),
    structure: structurePart(structure),
    weather: site.weather.slice(-STRUCTURE_WEATHER_DAYS),
    forecast: site.forecast,
    climatology: site.climatology,
  }) as StructureState;
}

/** What the rules read about one bed, with the shed it is limed from and when its plants go out. */
export function bedState(facts: FarmFacts, bed: BedView): BedState {
  const { site } = placeOf(facts, bed.id);
  const inBed = facts.plantings.filter((p) => p.bedId === bed.id);
  const dates = inBed.flatMap((p) => p.setOutOn ?? p.plannedSetOutOn ?? []).sort();
  return present({
    kind: "bed" as const,
    ...head(facts),
    site: sitePart(site.row),
    bed: bedPart(bed),
    soilTests: soilTestsOf(facts, bed, site.today),
    guides: some(facts.guides),
    shed: some(facts.materials.map(materialPart)),
    applications: some(
      facts.applications
        .filter((a) => a.bedId === bed.id && a.onDay <= site.today)
        .slice(-MOST_RECORDS)
        .map(applicationPart),
    ),
    // The next to go out; where none does, the last that went.
    setOutOn: dates.find((d) => d >= site.today) ?? dates.at(-1),
    // One that is only planned does not hide those that stand.
    standingSince: inBed
      .flatMap((p) => p.setOutOn ?? [])
      .filter((d) => d <= site.today)
      .sort()
      .at(-1),
    unanswered: some(unansweredOf(facts, bed.id, site)),
    sprays: some(spraysOf(facts, bed.id)),
    history: some(historyOf(facts, bed.id)),
    pepperSeason: pepperSeasonOf(dates, site.today),
    ...givingMinutesOf(facts),
  }) as BedState;
}

/** The season of the peppers in a bed, or of those meant for it. */
const pepperSeasonOf = (dates: string[], today: string): number | undefined => {
  const date = dates.find((d) => d >= today) ?? dates.at(-1);
  return date === undefined ? undefined : Number(date.slice(0, 4));
};

const spraysOf = (facts: FarmFacts, bedId: string) =>
  facts.sprays
    .filter((s) => s.bedId === bedId)
    .slice(-MOST_SPRAYS)
    .map(sprayPart);

/** What stood in a bed: as written down, and plantings kept here that were cleared; one line a season and crop. */
export function historyOf(facts: FarmFacts, bedId: string): BedHistory[] {
  const said = facts.bedHistory
    .filter((h) => h.bedId === bedId)
    .map(({ season, crop, disease }) => present({ season, crop, disease }) as BedHistory);
  const grown = facts.cleared
    .filter((p) => p.bedId === bedId)
    .map((p): BedHistory => ({ season: Number((p.setOutOn ?? p.sownOn).slice(0, 4)), crop: "pepper" }))
    .filter((h) => !said.some((s) => s.season === h.season && s.crop === h.crop));
  const once = new Map(grown.map((h) => [h.season, h]));
  return [...said, ...once.values()].sort((a, b) => a.season - b.season).slice(-MOST_HISTORY);
}

/** What givings took, where somebody wrote it down. */
function givingMinutesOf(facts: FarmFacts): Pick<FarmSeasonState, "givingMinutes"> {
  const minutes = facts.applications.flatMap((a) => a.minutesOfLabour ?? []).slice(-MOST_OWN_WORK);
  return minutes.length > 0 ? { givingMinutes: minutes } : {};
}

/** What covers took on this farm's beds, as its people wrote it down. */
const ownWorkOf = (facts: FarmFacts, today: string): OwnWork[] =>
  facts.works
    .flatMap(({ bedId, onDay, task, minutesOfLabour }) => {
      const bed = facts.beds.find((b) => b.id === bedId);
      if (!bed || onDay > today || (task !== "covering" && task !== "airing")) return [];
      return [{ task, minutes: minutesOfLabour, bedM2: bed.lengthM * bed.widthM }];
    })
    .slice(-MOST_OWN_WORK);

/** When plantings of the same name were first picked on this farm before. */
const firstPicksOf = (facts: FarmFacts, { varietyName }: PlantingRow): FirstPick[] => {
  const name = varietyName.trim().toLowerCase();
  return facts.cleared
    .filter(
      (p) => p.varietyName.trim().toLowerCase() === name && p.setOutOn !== null && p.firstPickOn !== null,
    )
    .slice(-MOST_FIRST_PICKS)
    .map(
      ({ sownOn, setOutOn, firstPickOn, pickAt }) =>
        present({ sownOn, setOutOn, firstPickOn, at: pickAt }) as FirstPick,
    );
};

/** Shortest length a state can hold [m]. */
const LEAST_LENGTH_M = 0.2;

/**
 * A planting's own part of its bed. Plantings that stand in one bed side by side share its length, and its containers, by the
 * rows' length their plants take, so that nothing is fed or covered twice. A valve waters the bed whole.
 */
function bedOf(facts: FarmFacts, bed: BedView, planting: PlantingRow): Bed {
  const whole = bedPart(bed);
  const neighbours = facts.plantings.filter((p) => p.bedId === bed.id);
  if (neighbours.length < 2) return whole;
  const takes = (p: PlantingRow) => (p.plants * p.plantSpacingM) / p.rowsPerBed;
  const share = takes(planting) / neighbours.reduce((sum, p) => sum + takes(p), 0);
  const { containers } = whole;
  return {
    ...whole,
    lengthM: Math.max(LEAST_LENGTH_M, bed.lengthM * share),
    ...(containers && {
      containers: { ...containers, count: Math.max(1, Math.round(containers.count * share)) },
    }),
  };
}

/** Where a bed lies. Keys of the schema hold that both are there. */
function placeOf(facts: FarmFacts, bedId: string): { bed: BedView; site: SiteFacts } {
  const bed = facts.beds.find((b) => b.id === bedId);
  const site = bed && facts.sites.get(bed.siteId);
  if (!bed || !site) throw new Error(`bed ${bedId} is not among its farm's facts`);
  return { bed, site };
}

const notesOf = (facts: FarmFacts, planting: PlantingRow, today: string) =>
  facts.notes
    .filter((n) => n.plantingId === planting.id && n.onDay <= today)
    .slice(-MOST_NOTES)
    .map(notePart);

/** A list that says something; an empty one is left out of a state. */
const some = <T>(list: T[]): T[] | undefined => (list.length > 0 ? list : undefined);

const wateringsOf = (facts: FarmFacts, valveId: string, start: string, today: string) =>
  facts.waterings
    .filter((w) => w.valveId === valveId && w.onDay >= start && w.onDay <= today)
    .slice(-MOST_RECORDS)
    .map(({ onDay, minutes, litres }) => present({ on: onDay, minutes, litres }));

/**
 * What this planting was given, and what its bed was given for plantings that were cleared since: manure of last autumn
 * is in the ground whoever it was meant for. What was given to a neighbour that stands in the same bed is the neighbour's.
 */
function applicationsOf(facts: FarmFacts, planting: PlantingRow, today: string) {
  const standing = new Set(facts.plantings.map((p) => p.id));
  return facts.applications
    .filter(
      (a) =>
        a.onDay <= today &&
        (a.plantingId === planting.id ||
          (a.bedId === planting.bedId && (a.plantingId === null || !standing.has(a.plantingId)))),
    )
    .slice(-MOST_RECORDS)
    .map(applicationPart);
}

/** Tests of that valve's own water; where it has none, those of all water of the site. */
function waterTestsOf(facts: FarmFacts, siteId: string, valveId: string | null, today: string): WaterTest[] {
  const known = facts.waterTests.filter((t) => t.siteId === siteId && t.sampledOn <= today);
  const own = valveId === null ? [] : known.filter((t) => t.valveId === valveId);
  const meant = own.length > 0 ? own : known.filter((t) => t.valveId === null);
  return meant.slice(0, MOST_WATER_TESTS).map(waterTestPart);
}

/** Nitrate in the water a planting gets, as newest measured, and how much of it its bed had since setting out. */
function waterOf(
  facts: FarmFacts,
  bed: BedView,
  planting: PlantingRow,
  tests: { nitrateNMgPerL?: number | undefined }[],
  today: string,
): PlantingState["water"] {
  const nitrateNMgPerL = tests.find((t) => t.nitrateNMgPerL !== undefined)?.nitrateNMgPerL;
  const givenMm = givenTo(facts, bed, planting, today);
  if (nitrateNMgPerL === undefined && givenMm === undefined) return undefined;
  return present({ nitrateNMgPerL, givenMm }) as PlantingState["water"];
}

/** Depth on the cropped land of every bed of the valve [mm]; a litre on a square metre is a millimetre. */
function givenTo(facts: FarmFacts, bed: BedView, planting: PlantingRow, today: string): number | undefined {
  const valve = facts.valves.find((v) => v.id === bed.valveId);
  if (!valve || planting.setOutOn === null || planting.setOutOn > today) return undefined;
  const since = planting.setOutOn;
  const given = facts.waterings.filter((w) => w.valveId === valve.id && w.onDay >= since && w.onDay <= today);
  // Nothing written down is not the same as nothing given.
  if (given.length === 0) return undefined;
  const litres = given.reduce((sum, w) => sum + (w.litres ?? ((w.minutes ?? 0) / 60) * valve.flowLPerH), 0);
  const areaM2 = facts.beds
    .filter((b) => b.valveId === valve.id)
    .reduce((sum, b) => sum + b.lengthM * b.spacingM, 0);
  return Math.min(MOST_GIVEN_MM, litres / areaM2);
}

const soilTestsOf = (facts: FarmFacts, bed: BedView, today: string) =>
  facts.soilTests
    .filter((t) => t.bedId === bed.id && t.sampledOn <= today)
    .slice(0, MOST_SOIL_TESTS)
    .map(soilTestPart);

/**
 * Advice past its day that nobody answered: whether it was done is unknown. One that a newer replaced before its day
 * came was not to be done any more; one that was replaced after it stays unknown.
 */
function unansweredOf(facts: FarmFacts, subjectId: string, { row, today }: SiteFacts) {
  return facts.unanswered
    .flatMap(({ ruleId, subjectId: id, issuedAt, expected, replacedAt }) => {
      const {
        date: due,
        minutes,
        netMm,
        materialId,
        amountKg,
        nKgPerHa,
        alongside,
      } = (expected ?? {}) as Partial<Expected>;
      if (id !== subjectId || due === undefined || due >= today) return [];
      if (replacedAt !== null && localDay(replacedAt, row.timeZone) <= due) return [];
      const advised = present({ minutes, netMm, materialId, amountKg, nKgPerHa, alongside });
      return [{ rule: ruleId, issuedOn: localDay(issuedAt, row.timeZone), due, ...advised }];
    })
    .slice(-MOST_UNANSWERED) as PlantingState["unanswered"];
}
