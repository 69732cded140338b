import { type Db, openDatabase } from "@pith/db";
import { advise, type State, StateSchema } from "@pith/rules";
import {
  addApplication,
  addNote,
  adviseAgain,
  answerAdvisory,
  changeOfficeSettings,
  getAdvisory,
  getDraft,
  getFarm,
  getOffice,
  getRound,
  listAdvisories,
  listFarms,
  removeApplication,
  resolveMemberships,
  verifyLedger,
} from "@pith/services";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { adviseSubjects } from "../../packages/services/src/drafts/adviseSubjects.ts";
import { readFacts } from "../../packages/services/src/states/facts.ts";
import { freshDatabase, type TestDatabase } from "../support/database.ts";
import { asOffice, makeFarm } from "../support/factories.ts";
import { ACTUAL, goOnTo, issue, makeSeason, type Season } from "./season.ts";

let database: TestDatabase;
let db: Db;
beforeAll(async () => {
  database = await freshDatabase();
  db = openDatabase(database.appUrl, { max: 3 });
});
afterAll(async () => {
  await db.close();
  await database.drop();
});

const statesOf = ({ office, farm, clock }: Season): Promise<State[]> =>
  asOffice(db, office.id, async (tx) => {
    const facts = await readFacts(tx, { officeId: office.id, farmId: farm.id }, clock.now);
    return adviseSubjects(facts).map((s) => s.state);
  });

function strings(value: unknown): string[] {
  if (typeof value === "string") return [value];
  if (value === null || typeof value !== "object") return [];
  return Object.values(value).flatMap(strings);
}

describe("assembled states", () => {
  test("pass the rules' own door, one a planting, its shed, valve and bed", async () => {
    const states = await statesOf(await makeSeason(db, { climateYears: 9 }));
    expect(states.map((s) => s.kind)).toEqual(["planting", "shed", "valve", "bed"]);
    for (const state of states) expect(StateSchema.parse(state)).toEqual(state);
    const [planting] = states;
    if (planting?.kind !== "planting") throw new Error("the first is a planting");
    expect(planting.climatology?.years.map((y) => [y.year, y.tMinC.length])).toEqual(
      Array.from({ length: 9 }, (_, i) => [2017 + i, (2017 + i) % 4 === 0 ? 366 : 365]),
    );
    // From setting out on 8 June to today, both counted.
    expect(planting.weather.map((d) => d.date)).toHaveLength(29);
    expect(planting.weather[0]?.date).toBe("2026-06-08");
    expect(planting.forecast?.days).toHaveLength(7);
  });

  test("are without a climate where fewer than eight years are known", async () => {
    const [planting] = await statesOf(await makeSeason(db, { climateYears: 7 }));
    expect(planting).not.toHaveProperty("climatology");
  });

  test("hold ids, days, instants and words of the rules, and no other text", async () => {
    const season = await makeSeason(db);
    await addNote(season.farmer, season.farm.id, {
      plantingId: season.planting.id,
      on: "2026-07-01",
      kind: "end-rot",
      value: null,
      text: "Saw it by the north end, tell Iva",
    });
    const id = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/;
    const instantOrDay = /^\d{4}-\d\d-\d\d(T[\d:.]+Z)?$/;
    const word = /^(NO3-N|[NPK]|P2O5|K2O|Ca|Mg|[a-z0-9]+(-[a-z0-9]+)*|America\/Chicago)$/;
    for (const text of (await statesOf(season)).flatMap(strings)) {
      expect(
        [id, instantOrDay, word].some((shape) => shape.test(text)),
        text,
      ).toBe(true);
    }
  });

  test("read nothing that happened after their instant", async () => {
    const season = await makeSeason(db);
    season.clock.now = "2026-06-20T13:00:00.000Z";
    for (const state of await statesOf(season)) {
      if (!("weather" in state)) continue;
      expect(state.weather.at(-1)?.date).toBe("2026-06-20");
      expect(state).not.toHaveProperty("forecast");
    }
  });

  test("are the same bytes twice, and so is the advice on them", async () => {
    const season = await makeSeason(db);
    const [one, other] = [await statesOf(season), await statesOf(season)];
    expect(JSON.stringify(one)).toBe(JSON.stringify(other));
    for (const state of one) expect(JSON.stringify(advise(state))).toBe(JSON.stringify(advise(state)));
  });
});

describe("advice that nobody answered", () => {
  test("is carried as unknown once its day has passed, with what follows either way", async () => {
    const season = await makeSeason(db);
    await issue(season, "irrigate");
    const unanswered = async () =>
      (await statesOf(season)).flatMap((s) => (s.kind === "valve" ? s.unanswered : []));
    expect(await unanswered()).toEqual([]);
    await goOnTo(season, "2026-07-07");
    expect(await unanswered()).toMatchObject([
      { rule: "irrigate", issuedOn: "2026-07-06", due: "2026-07-06" },
    ]);
    expect((await unanswered())[0]?.minutes).toBeGreaterThan(30);

    await goOnTo(season, "2026-07-09");
    await adviseAgain(season.agent, {});
    const { drafts } = await getRound(season.agent, {});
    const draft = drafts.find((d) => d.ruleId === "irrigate");
    const { said } = await getDraft(season.agent, draft?.id ?? "");
    expect(said.cases).toHaveLength(2);
    expect(said.cases[0]?.when).not.toBe(said.cases[1]?.when);
  });

  test("stays unknown after a newer one replaced it, and is known once it is answered", async () => {
    const season = await makeSeason(db);
    const first = await issue(season, "irrigate");
    await goOnTo(season, "2026-07-09");
    await issue(season, "irrigate");
    const known = async () =>
      (await statesOf(season)).flatMap((s) =>
        s.kind === "valve" ? [{ unanswered: s.unanswered.length, waterings: s.waterings }] : [],
      );
    expect(await known()).toEqual([{ unanswered: 1, waterings: [] }]);
    await answerAdvisory(season.farmer, first.id, {
      kind: "done",
      actual: { ...ACTUAL, minutes: 90 },
      reason: null,
    });
    expect(await known()).toEqual([{ unanswered: 0, waterings: [{ on: "2026-07-06", minutes: 90 }] }]);
  });
});

describe("a farmer", () => {
  test("sees their own farm and what was issued to it, and neither drafts nor the ledger", async () => {
    const season = await makeSeason(db);
    const other = await makeFarm(db, season.office, { name: "High Fell" });
    const { farmer, agent } = season;
    const water = await issue(season, "irrigate", "Mind the gate");
    expect((await listFarms(farmer, {})).farms.map((f) => f.name)).toEqual(["Low Fell"]);
    expect((await listFarms(agent, {})).farms.map((f) => f.name)).toEqual(["High Fell", "Low Fell"]);
    // Page by page, each once.
    const first = await listFarms(agent, { limit: "1" });
    const second = await listFarms(agent, { limit: "1", after: first.next ?? "" });
    expect([...first.farms, ...second.farms].map((f) => f.name)).toEqual(["High Fell", "Low Fell"]);
    expect(second.next).toBeNull();
    expect((await listAdvisories(farmer, {})).advisories).toMatchObject([
      { id: water.id, issuedBy: "Iva Moorhen", note: "Mind the gate", subjectName: "North valve" },
    ]);
    const missing = crypto.randomUUID();
    const refusalOf = (farmId: string) =>
      getFarm(farmer, farmId).catch((e) => ({ code: e.code, message: e.message }));
    expect(await refusalOf(other.id)).toEqual(await refusalOf(missing));
    for (const tried of [
      getRound(farmer, {}),
      adviseAgain(farmer, {}),
      verifyLedger(farmer),
      changeOfficeSettings(farmer, {}),
    ]) {
      await expect(tried).rejects.toMatchObject({ code: "forbidden" });
    }
    expect((await listFarms(farmer, {})).farms[0]).toMatchObject({ openDrafts: 0, unanswered: 1 });
  });

  test("of another office finds nothing of ours, the same as what is not there", async () => {
    const [ours, theirs] = [await makeSeason(db), await makeSeason(db)];
    const water = await issue(ours, "irrigate");
    const refusal = (work: Promise<unknown>) => work.catch((e) => `${e.code} ${e.message}`);
    for (const ctx of [theirs.agent, theirs.farmer]) {
      expect(await refusal(getAdvisory(ctx, water.id))).toBe(
        await refusal(getAdvisory(ctx, crypto.randomUUID())),
      );
      expect(await refusal(getFarm(ctx, ours.farm.id))).toBe("not-found There is no such farm.");
      expect(
        await refusal(answerAdvisory(ctx, water.id, { kind: "cannot", actual: null, reason: null })),
      ).toBe("not-found There is no such advice.");
    }
  });

  test("takes back what they wrote and gives it back to the shed, but not what another wrote", async () => {
    const season = await makeSeason(db, { stockKg: 5 });
    const { farmer, agent, farm, planting, material } = season;
    const value = {
      plantingId: planting.id,
      materialId: material.id,
      on: "2026-07-01",
      lot: null,
      amountKg: 2,
      areaM2: 54,
      minutesOfLabour: null,
    };
    const stock = async () => (await getFarm(agent, farm.id)).materials[0]?.stockKg;
    const mine = await addApplication(farmer, farm.id, value);
    expect(await stock()).toBe(3);
    const theirs = await addApplication(agent, farm.id, { ...value, amountKg: 1 });
    await expect(removeApplication(farmer, farm.id, theirs.id)).rejects.toMatchObject({ code: "forbidden" });
    await removeApplication(farmer, farm.id, mine.id);
    expect(await stock()).toBe(4);
    // More than was counted: what is left is unknown, not nothing.
    await addApplication(farmer, farm.id, { ...value, amountKg: 6 });
    expect(await stock()).toBe(null);
  });

  test("is found with their office and farms", async () => {
    const { farmer, agent, office, farm } = await makeSeason(db);
    expect(await resolveMemberships(db, farmer.actor.userId)).toEqual([
      {
        officeId: office.id,
        officeName: "Office of Aldertarn County",
        role: "farmer",
        farmIds: [farm.id],
        asksSecondStep: false,
      },
    ]);
    expect(await resolveMemberships(db, agent.actor.userId)).toMatchObject([{ role: "agent", farmIds: [] }]);
    expect(await getOffice(farmer)).toMatchObject({ id: office.id, settings: {} });
  });
});
