import { randomUUID } from "node:crypto";
import { farms, fieldNotes, memberships } from "@pith/db";
import fc from "fast-check";
import { afterAll, beforeAll, expect, test } from "vitest";
import { type Api, type Person, startApi } from "../api/support.ts";
import { asOffice, makeBed, makeFarm, makeOffice, makePlanting, makeSite } from "../support/factories.ts";
import { soak } from "../support/soak.ts";

/**
 * Five offices of two farms each, and people of every role in some of them. Requests are drawn at random over people,
 * offices, farms and rows of whoever; each answer is compared with a model of a few lines, and whatever it is, no word of
 * an office or farm that is not the asker's stands in it.
 */

const OFFICES = 5;
const REQUESTS = soak(1000, 10_000);
const ROLES = ["lead", "agent", "farmer", "reader"] as const;
type Role = (typeof ROLES)[number];

interface Ground {
  officeId: string;
  farms: { id: string; siteId: string; bedId: string; plantingId: string; word: string }[];
}
interface Member {
  /** Office by number, and in it the role; the farms are the first alone where the role has farms. */
  places: Map<number, Role>;
  person: Person;
}

let api: Api;
const grounds: Ground[] = [];
const members: Member[] = [];

beforeAll(async () => {
  api = await startApi();
  for (let n = 0; n < OFFICES; n++) {
    const office = await makeOffice(api.db, { name: `Office ${word(n, 9)}` });
    const ground: Ground = { officeId: office.id, farms: [] };
    for (let f = 0; f < 2; f++) {
      const mark = word(n, f);
      const farm = await makeFarm(api.db, office, { name: `Farm ${mark}` });
      const site = await makeSite(api.db, farm, { name: `Site ${mark}` });
      const bed = await makeBed(api.db, site, { name: `Bed ${mark}` });
      const planting = await makePlanting(api.db, bed, { varietyName: `Variety ${mark}` });
      ground.farms.push({ id: farm.id, siteId: site.id, bedId: bed.id, plantingId: planting.id, word: mark });
    }
    grounds.push(ground);
  }
  // Who signs in is of the first API's own offices; here they are given places in these. One is in two at once.
  const people = [api.lead, api.agent, api.farmer, api.reader, api.stranger];
  for (const [i, person] of people.entries()) {
    const places = new Map<number, Role>([
      [i % OFFICES, ROLES[i % ROLES.length] as Role],
      [(i + 2) % OFFICES, ROLES[(i + 1) % ROLES.length] as Role],
      [(i + 3) % OFFICES, ROLES[(i + 2) % ROLES.length] as Role],
    ]);
    for (const [n, role] of places) {
      const { officeId, farms: of } = grounds[n] as Ground;
      await asOffice(api.db, officeId, (tx) =>
        tx.insert(memberships).values({
          officeId,
          userId: person.id,
          role,
          name: person.name,
          ...(isStaff(role) ? {} : { farmIds: [of[0]?.id ?? ""] }),
        }),
      );
    }
    members.push({ places, person });
  }
}, 120_000);
afterAll(() => api?.close());

/** A word that stands in the names of one farm, or of one office, and nowhere else. */
const word = (office: number, farm: number) => `zq${office}x${farm}zq`;
const isStaff = (role: Role) => role === "lead" || role === "agent";

const request = fc.record({
  who: fc.nat(4),
  /** Of the path. */
  office: fc.nat(OFFICES - 1),
  /** Whose farm and row are named: often the same office's, often not. */
  of: fc.nat(OFFICES - 1),
  own: fc.nat(3).map((n) => n > 0),
  farm: fc.nat(1),
  /** A row of another farm than the one of the path. */
  astray: fc.nat(4).map((n) => n === 0),
  none: fc.nat(5).map((n) => n === 0),
  does: fc.constantFrom(
    "office",
    "farms",
    "farm",
    "bed",
    "planting",
    "records",
    "round",
    "roundOf",
    "advisories",
    "note",
    "rename",
  ),
});
type Drawn = typeof request extends fc.Arbitrary<infer T> ? T : never;

/** The call that was drawn, and what the model says of it: the status, or several where the row has its own say. */
function drawn({ who, office, of, own, farm, astray, none, does }: Drawn) {
  const member = members[who] as Member;
  const role = member.places.get(office);
  const ground = grounds[own ? office : of] as Ground;
  const at = ground.farms[farm] as Ground["farms"][number];
  const elsewhere = ground.farms[1 - farm] as Ground["farms"][number];
  const farmId = none ? randomUUID() : at.id;
  const row = astray ? elsewhere : at;
  const path = `/v1/offices/${grounds[office]?.officeId}`;
  const inOffice = role !== undefined;
  const staff = role !== undefined && isStaff(role);
  const mine = !none && (own || of === office) && (staff || farm === 0);
  const seen = inOffice && mine;
  const read = (status: number) => ({ method: "get" as const, body: undefined, status });
  const hidden = inOffice ? (mine ? 200 : 404) : 404;
  switch (does) {
    case "office":
      return { member, path, ...read(inOffice ? 200 : 404) };
    case "farms":
      return { member, path: `${path}/farms`, ...read(inOffice ? 200 : 404) };
    case "farm":
      return { member, path: `${path}/farms/${farmId}`, ...read(hidden) };
    case "bed":
      return {
        member,
        path: `${path}/farms/${farmId}/beds/${row.bedId}`,
        ...read(seen && !astray ? 200 : 404),
      };
    case "planting":
      return {
        member,
        path: `${path}/farms/${farmId}/plantings/${row.plantingId}`,
        ...read(seen && !astray ? 200 : 404),
      };
    case "records":
      return { member, path: `${path}/farms/${farmId}/records`, ...read(hidden) };
    case "round":
      return { member, path: `${path}/round?all=yes`, ...read(inOffice ? (staff ? 200 : 403) : 404) };
    case "roundOf":
      return {
        member,
        path: `${path}/round?all=yes&farmId=${farmId}`,
        ...read(inOffice ? (staff ? hidden : 403) : 404),
      };
    case "advisories":
      return { member, path: `${path}/advisories?farmId=${farmId}`, ...read(hidden) };
    case "note": {
      const body = { plantingId: row.plantingId, on: "2026-05-09", kind: "leggy", value: null, text: null };
      const status = !inOffice ? 404 : role === "reader" ? 403 : !mine ? 404 : astray ? 422 : 201;
      return { member, path: `${path}/farms/${farmId}/notes`, method: "post" as const, body, status };
    }
    case "rename": {
      const body = { phone: "555 0100" };
      const status = !inOffice ? 404 : !staff ? 403 : mine ? 200 : 404;
      return { member, path: `${path}/farms/${farmId}`, method: "patch" as const, body, status };
    }
  }
}

/** Every word of a farm or office that this person may meet under this office's path. */
function theirs({ places }: Member, office: number): Set<string> {
  const role = places.get(office);
  if (role === undefined) return new Set();
  return new Set([word(office, 9), word(office, 0), ...(isStaff(role) ? [word(office, 1)] : [])]);
}

test(
  `${REQUESTS} requests over five offices and every role: each as the model says, and no foreign row`,
  async () => {
    const samples = fc.sample(request, { seed: 20_260_601, numRuns: REQUESTS });
    const wrong: unknown[] = [];
    const tally: Record<string, number> = {};
    for (const sample of samples) {
      const { member, path, method, body, status } = drawn(sample);
      const answer = await api.as(member.person)[method](path, body);
      tally[answer.status] = (tally[answer.status] ?? 0) + 1;
      const known = theirs(member, sample.office);
      const foreign = [...new Set(answer.text.match(/zq\d+x\d+zq/g))].filter((w) => !known.has(w));
      if (answer.status !== status || foreign.length > 0) {
        wrong.push({ ...sample, method, path, wanted: status, was: answer.status, foreign });
      }
    }
    expect(wrong).toEqual([]);
    // Each outcome was really met, and often.
    for (const status of [200, 201, 403, 404]) expect(tally[status] ?? 0).toBeGreaterThan(REQUESTS / 100);
  },
  soak(600_000, 3_600_000),
);

test("and what was written stands on the farms that the model let through, and nowhere else", async () => {
  const samples = fc.sample(request, { seed: 20_260_601, numRuns: REQUESTS });
  const wanted = new Map<string, number>();
  for (const { status, path } of samples.map(drawn).filter((d) => d.method === "post")) {
    const farmId = path.split("/")[5] ?? "";
    if (status === 201) wanted.set(farmId, (wanted.get(farmId) ?? 0) + 1);
  }
  for (const { officeId, farms: of } of grounds) {
    const [notes, rows] = await asOffice(api.db, officeId, async (tx) => [
      await tx.select({ farmId: fieldNotes.farmId }).from(fieldNotes),
      await tx.select({ id: farms.id }).from(farms),
    ]);
    expect(rows.map((r) => r.id).sort()).toEqual(of.map((f) => f.id).sort());
    for (const { id } of of) {
      expect([id, notes.filter((n) => n.farmId === id).length]).toEqual([id, wanted.get(id) ?? 0]);
    }
  }
});
