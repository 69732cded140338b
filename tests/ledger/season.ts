import { type Db, forecasts, soilTests, weatherDays } from "@pith/db";
import { addDays, epochDay } from "@pith/rules";
import { adviseAgain, type Ctx, getDraft, getRound, issueDraft } from "@pith/services";
import {
  asOffice,
  makeAgent,
  makeBed,
  makeFarm,
  makeFarmer,
  makeMaterial,
  makeOffice,
  makePlanting,
  makeSite,
  makeValve,
} from "../support/factories.ts";

/** An invented farm in the middle of its season: something on a valve, fed from a shed, with a soil test and weather. */

export const NOW = "2026-07-06T13:00:00.000Z";
const TODAY = "2026-07-06";

export type Season = Awaited<ReturnType<typeof makeSeason>>;

export async function makeSeason(db: Db, over: { climateYears?: number; stockKg?: number | null } = {}) {
  const office = await makeOffice(db);
  const agent = await makeAgent(db, office, { name: "Iva Moorhen" });
  const farm = await makeFarm(db, office, { name: "Low Fell", contactName: "Oda Teal", phone: "555 0100" });
  const farmer = await makeFarmer(db, farm, { name: "Oda Teal" });
  const site = await makeSite(db, farm);
  const valve = await makeValve(db, site, { name: "North valve" });
  const bed = await makeBed(db, site, { valveId: valve.id, name: "Bed by the hedge" });
  const material = await makeMaterial(db, farm, {
    stockKg: over.stockKg === undefined ? 40 : over.stockKg,
  });
  const planting = await makePlanting(db, bed, {
    setOutOn: "2026-06-08",
    yieldGoalTPerHa: 25,
    feeding: { materialId: material.id, method: "banded", credits: [] },
  });
  await asOffice(db, office.id, async (tx) => {
    const from = addDays(TODAY, -120);
    const days = weatherBetween(from, TODAY);
    const past = over.climateYears ? weatherBetween(`${2026 - over.climateYears}-01-01`, "2025-12-31") : [];
    const at = { officeId: office.id, farmId: farm.id, siteId: site.id };
    for (let i = 0; i < past.length; i += 1000) {
      await tx.insert(weatherDays).values(past.slice(i, i + 1000).map((d) => ({ ...at, ...d })));
    }
    await tx.insert(weatherDays).values(days.map((d) => ({ ...at, ...d })));
    await tx.insert(forecasts).values({
      ...at,
      issuedAt: "2026-07-06T10:00:00.000Z",
      days: weatherBetween(TODAY, addDays(TODAY, 6)).map((d) => ({ ...d, rainMm: 0 })),
    });
    await tx.insert(soilTests).values({
      officeId: office.id,
      farmId: farm.id,
      bedId: bed.id,
      sampledOn: "2026-04-20",
      depthCm: 15,
      medium: "mineral-soil",
      labName: "Laboratory of Aldertarn",
      sampleRef: "A-17",
      result: {
        waterPh: 6.4,
        organicMatterPct: 2.6,
        values: [
          { nutrient: "P", extractant: "mehlich-3", mgPerKg: 40 },
          { nutrient: "K", extractant: "mehlich-3", mgPerKg: 95 },
        ],
      },
    });
  });
  const ctxOf = (member: typeof agent, role: "agent" | "farmer", now: () => Date): Ctx => ({
    db,
    officeId: office.id,
    actor: {
      userId: member.userId,
      name: member.name,
      role,
      farmIds: role === "agent" ? "*" : member.farmIds,
    },
    requestId: "test",
    now,
  });
  const clock = { now: NOW };
  // A clock that moves while a verb runs, as real ones do: what must carry one instant may not read it twice.
  let reads = 0;
  const now = () => new Date(new Date(clock.now).getTime() + 7 * reads++);
  return {
    office,
    farm,
    site,
    valve,
    bed,
    material,
    planting,
    clock,
    agent: ctxOf(agent, "agent", now),
    farmer: ctxOf(farmer, "farmer", now),
  };
}

/** A plain yearly wave with a little unevenness that depends on nothing but the day: no two runs differ. */
function weatherBetween(from: string, to: string) {
  const days = [];
  for (let date = from; date <= to; date = addDays(date, 1)) {
    const n = epochDay(date);
    const season = -Math.cos((2 * Math.PI * (n % 365.25)) / 365.25);
    const mean = 7 + 15 * season + 3 * Math.sin(n * 1.7);
    days.push({
      date,
      tMaxC: round(mean + 6),
      tMinC: round(mean - 6),
      rainMm: n % 9 === 0 ? 6 : 0,
      rhMeanPct: 65,
      windMPerS: 2.5,
    });
  }
  return days;
}

const round = (v: number) => Math.round(v * 10) / 10;

/** Lets days go by: dry weather is recorded up to the new day, and its morning's forecast comes in. */
export async function goOnTo(season: Season, day: string): Promise<void> {
  const { office, farm, site, clock } = season;
  const at = { officeId: office.id, farmId: farm.id, siteId: site.id };
  const dry = (from: string, to: string) => weatherBetween(from, to).map((d) => ({ ...d, rainMm: 0 }));
  await asOffice(season.agent.db, office.id, async (tx) => {
    const days = dry(addDays(clock.now.slice(0, 10), 1), day);
    await tx.insert(weatherDays).values(days.map((d) => ({ ...at, ...d })));
    await tx
      .insert(forecasts)
      .values({ ...at, issuedAt: `${day}T10:00:00.000Z`, days: dry(day, addDays(day, 6)) });
  });
  clock.now = `${day}T13:00:00.000Z`;
}

/** Advises, and issues the draft of one rule under the agent's name. */
export async function issue({ agent }: Season, ruleId: string, note: string | null = null) {
  await adviseAgain(agent, {});
  const { drafts } = await getRound(agent, {});
  const draft = drafts.find((d) => d.ruleId === ruleId);
  if (!draft) throw new Error(`no advice of ${ruleId} is drafted`);
  const { stateSha256 } = await getDraft(agent, draft.id);
  return issueDraft(agent, draft.id, { stateSha256, note });
}

/** Nothing was done beyond what is said. */
export const ACTUAL = {
  on: TODAY,
  materialId: null,
  amountKg: null,
  areaM2: null,
  minutes: null,
  litres: null,
};
