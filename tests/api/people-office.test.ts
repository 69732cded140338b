import { randomUUID } from "node:crypto";
import { afterAll, afterEach, beforeAll, describe, expect, test } from "vitest";
import { audited, cookiesOf, lettersTo, PASSWORD, post, signIn, tokenTo } from "./peopleSupport.ts";
import { type Api, type Person, startApi, timeless } from "./support.ts";

/** Who belongs to an office: asking in, taking up, changing, going, and what the audit says of it. */

let api: Api;
let office: string;
beforeAll(async () => {
  api = await startApi();
  office = `/v1/offices/${api.office.id}`;
});
afterAll(() => api?.close());
afterEach(() => api.admin`delete from auth.attempts`);

const asked = (over: object = {}) => ({
  email: "Wren@aldertarn.example",
  name: "Wren",
  role: "farmer",
  farmIds: [api.farm.id],
  ...over,
});
const invited = (who: Person, over: object = {}) => api.as(who).post(`${office}/invitations`, asked(over));
const accept = (token: string, over: object = {}) =>
  post(api, "/v1/invitations/accept", { token, name: "Wren Fellgate", password: PASSWORD, ...over });
const people = async () => (await api.as(api.lead).get(`${office}/people`).expect(200)).body.people;
const memberId = async (who: Person) =>
  (await people()).find((p: { userId: string }) => p.userId === who.id)?.id as string;

describe("asking in", () => {
  test.each([
    ["lead", "lead", [], 201],
    ["lead", "agent", [], 201],
    ["lead", "farmer", ["farm"], 201],
    ["agent", "farmer", ["farm"], 201],
    ["agent", "reader", ["farm"], 201],
    ["agent", "agent", [], 403],
    ["agent", "lead", [], 403],
    ["farmer", "reader", ["farm"], 403],
    ["reader", "reader", ["farm"], 403],
  ] as const)("%s asks %s in: farms %j, %i", async (who, role, farms, status) => {
    const email = `${who}-${role}@aldertarn.example`;
    const answer = await invited(api[who], { email, role, farmIds: farms.map(() => api.farm.id) });
    expect(answer.status).toBe(status);
    expect(await lettersTo(api, email)).toHaveLength(status === 201 ? 1 : 0);
  });

  test.each([
    ["no farm for a farmer", { farmIds: [] }],
    ["a farm of another office", () => ({ farmIds: [api.otherFarm.id] })],
    ["a farm for an agent", () => ({ role: "agent" })],
  ])("%s is refused by field", async (_, over) => {
    const answer = await invited(api.lead, typeof over === "function" ? over() : over);
    expect([answer.status, answer.body.errors[0].field]).toEqual([422, "farmIds"]);
  });

  test("says nothing about whether the address has an account", async () => {
    const unknown = await invited(api.lead, { email: "new@aldertarn.example" }).expect(201);
    const known = await invited(api.lead, { email: api.stranger.email }).expect(201);
    const alike = ({ id: _, email: __, ...rest }: Record<string, unknown>) => rest;
    expect(alike(known.body)).toEqual(alike(unknown.body));
    expect((await lettersTo(api, "new@aldertarn.example")).length).toBe(1);
    expect((await lettersTo(api, api.stranger.email)).length).toBe(1);
  });
});

describe("letters to whatever address is typed in", () => {
  test("three a day to one, from whichever office, sent again or anew; the fourth changes nothing", async () => {
    const email = "relay@aldertarn.example";
    const { body } = await invited(api.lead, { email }).expect(201);
    await invited(api.lead, { email, name: "Wren again" }).expect(201);
    const again = () => api.as(api.agent).post(`${office}/invitations/${body.id}/resend`);
    await again().expect(200);
    const [before] = await api.admin`select token_sha256, name from invitations where id = ${body.id}`;
    const refusal = await again().expect(429);
    expect(refusal.body.detail).toContain("3 go to one address");
    expect(Number(refusal.headers["retry-after"])).toBeGreaterThan(80_000);
    await invited(api.lead, { email: email.toUpperCase(), name: "Fourth" }).expect(429);
    const there = { email, name: "There", role: "farmer", farmIds: [api.otherFarm.id] };
    await api.as(api.stranger).post(`/v1/offices/${api.otherOffice.id}/invitations`, there).expect(429);
    expect(await lettersTo(api, email)).toHaveLength(3);
    expect(await api.admin`select token_sha256, name from invitations where id = ${body.id}`).toEqual([
      before,
    ]);
    api.clock.now = new Date(api.clock.now.getTime() + 86_401_000);
    await again().expect(200);
  });

  test("a hundred a day from one office, and who may ask nobody in uses none of them up", async () => {
    const count = async () =>
      (await api.admin<{ count: number }[]>`select count from auth.attempts`).map((row) => row.count);
    await invited(api.farmer).expect(403);
    expect(await count()).toEqual([]);
    await invited(api.lead, { email: "first@aldertarn.example" }).expect(201);
    await api.admin`update auth.attempts set count = 100`;
    await invited(api.lead, { email: "last@aldertarn.example" }).expect(429);
    expect(await lettersTo(api, "last@aldertarn.example")).toEqual([]);
  });
});

describe("taking up", () => {
  test("makes an account that can sign in, in the role and with the farms that were asked", async () => {
    await invited(api.agent).expect(201);
    const token = await tokenTo(api, "wren@aldertarn.example", "/join");
    const kept = await api.admin`select * from invitations`;
    expect(JSON.stringify(kept)).not.toContain(token);
    expect((await post(api, "/v1/invitations/read", { token }).expect(200)).body).toEqual({
      officeName: "Office of Aldertarn County",
      invitedBy: "Orla",
      email: "wren@aldertarn.example",
      name: "Wren",
      role: "farmer",
      farmNames: ["Low Fell"],
    });
    expect((await accept(token).expect(200)).body).toEqual({ done: true });
    const cookie = cookiesOf(await signIn(api, "wren@aldertarn.example").expect(200));
    const { body } = await api.as({ id: "", name: "", email: "", cookie }).get("/v1/me").expect(200);
    expect(body).toMatchObject({
      user: { name: "Wren Fellgate", email: "wren@aldertarn.example" },
      memberships: [{ officeId: api.office.id, role: "farmer", farmIds: [api.farm.id] }],
    });
    // Once: the address is gone with the invitation.
    await accept(token).expect(404);
    await post(api, "/v1/invitations/read", { token }).expect(404);
    const [line] = await audited(api, "invitation.accept");
    expect(line?.detail).toMatchObject({ role: "farmer", farms: [api.farm.id], joined: true });
    expect(JSON.stringify([...(await api.admin`select * from audit_log`)])).not.toContain("@");
  });

  test("with an account joins it: same answer, own password kept, offices side by side", async () => {
    const { email } = api.stranger;
    await invited(api.lead, { email, role: "agent", farmIds: [] }).expect(201);
    const token = await tokenTo(api, email, "/join");
    const answer = await accept(token, { password: "not my password at all" }).expect(200);
    expect(answer.body).toEqual({ done: true });
    await signIn(api, email, "not my password at all").expect(401);
    await signIn(api, email).expect(200);
    const { body } = await api.as(api.stranger).get("/v1/me").expect(200);
    expect(
      body.memberships.map((m: { officeId: string; role: string }) => [m.officeId, m.role]).sort(),
    ).toEqual(
      [
        [api.office.id, "agent"],
        [api.otherOffice.id, "agent"],
      ].sort(),
    );
    await api.as(api.stranger).get(office).expect(200);
  });

  test("one that never was, has run out, was taken back or replaced is the same refusal", async () => {
    const email = "late@aldertarn.example";
    const { body } = await invited(api.lead, { email }).expect(201);
    const first = await tokenTo(api, email, "/join");
    await api.as(api.lead).post(`${office}/invitations/${body.id}/resend`).expect(200);
    const second = await tokenTo(api, email, "/join", 1);
    const never = await accept("never-was");
    const replaced = await accept(first);
    await api.admin`update invitations set expires_at = ${new Date(api.clock.now.getTime() - 1000)} where id = ${body.id}`;
    const late = await accept(second);
    const [listed] = (await api.as(api.lead).get(`${office}/invitations`)).body.invitations.filter(
      (i: { id: string }) => i.id === body.id,
    );
    expect(listed.expired).toBe(true);
    await api.as(api.lead).post(`${office}/invitations/${body.id}/resend`).expect(200);
    const third = await tokenTo(api, email, "/join", 2);
    await api.as(api.lead).delete(`${office}/invitations/${body.id}`).expect(200);
    const taken = await accept(third);
    expect([never, replaced, late, taken].map((r) => r.status)).toEqual([404, 404, 404, 404]);
    for (const other of [replaced, late, taken]) expect(timeless(other.body)).toEqual(timeless(never.body));
    const [{ n } = { n: -1 }] = await api.admin<{ n: number }[]>`
      select count(*)::int as n from auth."user" where email = ${email}`;
    expect(n).toBe(0);
  });

  test("an agent sees and takes back farmers' and readers' invitations, not staff's", async () => {
    const staff = await invited(api.lead, { email: "s@aldertarn.example", role: "agent", farmIds: [] });
    const roles = (await api.as(api.agent).get(`${office}/invitations`)).body.invitations.map(
      (i: { role: string }) => i.role,
    );
    expect(new Set(roles)).toEqual(new Set(["farmer", "reader"]));
    const path = `${office}/invitations/${staff.body.id}`;
    await api.as(api.agent).delete(path).expect(404);
    // Asking the same address in another way would take the lead's out of their hands.
    await invited(api.agent, { email: "s@aldertarn.example" }).expect(409);
    await api.as(api.lead).delete(path).expect(200);
  });
});

describe("changing", () => {
  test("a lead changes role and farms, and the next call is judged by them", async () => {
    const id = await memberId(api.reader);
    const farms = [api.farm.id, api.nextFarm.id];
    const changed = await api
      .as(api.lead)
      .patch(`${office}/people/${id}`, { role: "farmer", farmIds: farms });
    expect([changed.status, changed.body.role, changed.body.farmIds.sort()]).toEqual([
      200,
      "farmer",
      farms.sort(),
    ]);
    await api.as(api.reader).get(`${office}/farms/${api.nextFarm.id}`).expect(200);
    const [line] = await audited(api, "person.role");
    expect(line?.detail).toMatchObject({ from: "reader", to: "farmer" });
    await api
      .as(api.agent)
      .patch(`${office}/people/${id}`, { role: "reader", farmIds: [api.farm.id] })
      .expect(200);
    await api.as(api.reader).get(`${office}/farms/${api.nextFarm.id}`).expect(404);
  });

  test("an agent makes nobody staff and changes no staff; a farmer changes nobody", async () => {
    const [farmer, lead] = [await memberId(api.farmer), await memberId(api.lead)];
    const as = (who: Person, id: string, role: string) =>
      api.as(who).patch(`${office}/people/${id}`, { role, farmIds: role === "agent" ? [] : [api.farm.id] });
    await as(api.agent, farmer, "agent").expect(403);
    await as(api.agent, lead, "farmer").expect(403);
    await as(api.farmer, farmer, "reader").expect(403);
    await api.as(api.agent).delete(`${office}/people/${lead}`).expect(403);
    await as(api.lead, randomUUID(), "reader").expect(404);
  });

  test("the last lead cannot be made less, taken out or leave; of two at once one stays", async () => {
    const mine = await memberId(api.lead);
    const words = "This is the office's only lead. Make somebody else a lead first.";
    for (const answer of [
      await api.as(api.lead).patch(`${office}/people/${mine}`, { role: "agent", farmIds: [] }),
      await api.as(api.lead).delete(`${office}/people/${mine}`),
      await api.as(api.lead).delete(`/v1/me/offices/${api.office.id}`),
    ]) {
      expect([answer.status, answer.body.detail]).toEqual([409, words]);
    }
    const agents = await memberId(api.agent);
    await api.as(api.lead).patch(`${office}/people/${agents}`, { role: "lead", farmIds: [] }).expect(200);
    const both = await Promise.all([
      api.as(api.lead).delete(`/v1/me/offices/${api.office.id}`),
      api.as(api.agent).delete(`/v1/me/offices/${api.office.id}`),
    ]);
    expect(both.map((r) => r.status).sort()).toEqual([200, 409]);
    const left = (both[0]?.status === 200 ? [api.lead, mine] : [api.agent, agents]) as [Person, string];
    await api.as(left[0]).get(office).expect(404);
    // Put back as it was for what follows.
    await api.admin`insert into memberships (office_id, id, user_id, role, name)
      values (${api.office.id}, ${left[1]}, ${left[0].id}, 'lead', ${left[0].name})`;
    await api.as(api.lead).patch(`${office}/people/${agents}`, { role: "agent", farmIds: [] }).expect(200);
  });
});

describe("going", () => {
  test("whoever is taken out is shut out at once, and what they did still says by whom", async () => {
    await api.as(api.farmer).patch("/v1/me", { name: "Bram Underfell" }).expect(200);
    await api
      .as(api.agent)
      .delete(`${office}/people/${await memberId(api.farmer)}`)
      .expect(200);
    await api.as(api.farmer).get(office).expect(404);
    const { body } = await api.as(api.lead).get(`${office}/audit?action=person.rename`).expect(200);
    expect(body.lines[0].who).toBe("Bram Underfell");
  });

  test("a reader leaves by themselves, and an office one is not in cannot be left", async () => {
    await api.as(api.reader).delete(`/v1/me/offices/${api.otherOffice.id}`).expect(404);
    await api.as(api.reader).delete(`/v1/me/offices/${api.office.id}`).expect(200);
    expect((await api.as(api.reader).get("/v1/me")).body.memberships).toEqual([]);
    expect(await audited(api, "person.leave", 2)).toHaveLength(2);
  });
});

describe("the audit", () => {
  test("is a lead's to read, page by page, each line once, newest first", async () => {
    await api.as(api.agent).get(`${office}/audit`).expect(403);
    const [{ n } = { n: 0 }] = await api.admin<{ n: number }[]>`
      select count(*)::int as n from audit_log where office_id = ${api.office.id}`;
    const seen: { id: string; at: string }[] = [];
    let next: string | null = "";
    while (next !== null) {
      const { body }: { body: { lines: typeof seen; next: string | null } } = await api
        .as(api.lead)
        .get(`${office}/audit?limit=7${next ? `&after=${encodeURIComponent(next)}` : ""}`)
        .expect(200);
      expect(body.lines.length).toBeLessThanOrEqual(7);
      seen.push(...body.lines);
      next = body.next;
    }
    expect(n).toBeGreaterThan(20);
    expect(new Set(seen.map((line) => line.id)).size).toBe(n);
    const times = seen.map((line) => line.at);
    expect(times).toEqual([...times].sort().reverse());
  });

  test("a place that no page gave is refused by field", async () => {
    const answer = await api.as(api.lead).get(`${office}/audit?after=yesterday`);
    expect([answer.status, answer.body.errors[0].field]).toEqual([422, "after"]);
  });
});
