import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { openAuthDatabase, withOffice } from "@pith/db";
import { ServiceError, serverItself, tasks, wantJob, wantNightly } from "@pith/services";
import postgres, { type Sql } from "postgres";
import { SMTPServer } from "smtp-server";
import { afterAll, afterEach, beforeAll, expect, test, vi } from "vitest";
import { errorForLog, withoutValues } from "../../apps/api/src/withoutValues.ts";
import { openMail } from "../../apps/api/src/worker/openMail.ts";
import { startWorker } from "../../apps/api/src/worker/startWorker.ts";
import { asOffice, makeFarm, makeSite } from "../support/factories.ts";
import { type Api, startApi } from "./support.ts";

/** Work in the background, done by a real worker over a real queue. */

let api: Api;
let queue: Sql;
let runsPath: string;
const stops: (() => Promise<void>)[] = [];
beforeAll(async () => {
  api = await startApi();
  queue = postgres(api.database.jobsUrl, { max: 1, onnotice: () => {} });
  runsPath = `/v1/offices/${api.office.id}/runs`;
});
afterEach(async () => {
  for (const stop of stops.splice(0)) await stop();
  vi.restoreAllMocks();
  await queue`delete from jobs._private_jobs`;
  await api.admin`delete from runs`;
});
afterAll(async () => {
  await queue?.end();
  await api?.close();
});

const ctxOf = (officeId = api.office.id) => ({
  db: api.db,
  officeId,
  actor: serverItself,
  requestId: "test",
  now: () => api.clock.now,
});
const want = (...[task, about, options]: [Parameters<typeof wantJob>[2], object?, object?]) =>
  asOffice(api.db, api.office.id, (tx) => wantJob(tx, ctxOf(), task, about, options));

function work({ smtp, folder, concurrency }: { smtp?: string; folder?: string; concurrency?: number } = {}) {
  const log: Record<string, unknown>[] = [];
  const worker = startWorker({
    jobsUrl: api.database.jobsUrl,
    deps: { db: api.db, now: () => api.clock.now },
    mail: openMail({
      SMTP_URL: smtp,
      PITH_MAIL_FROM: "Pith <advice@aldertarn.example>",
      PITH_MAIL_FOLDER: folder,
    }),
    pullFor: [],
    log: (line) => log.push(line),
    concurrency,
  });
  stops.push(() => worker.stop());
  return { worker, log };
}

/** Waits for what a real worker does in its own time. */
const until = <T>(look: () => Promise<T>) => vi.waitFor(look, { timeout: 15_000, interval: 20 });
const runNow = async (id: string) => (await api.as(api.lead).get(`${runsPath}/${id}`).expect(200)).body;
const untilIs = (id: string, status: string) =>
  until(async () => {
    const run = await runNow(id);
    expect(run).toMatchObject({ status });
    return run;
  });
const waiting = () =>
  queue<{ task: string; key: string; payload: object }[]>`
    select t.identifier as task, j.key, j.payload from jobs._private_jobs j join jobs._private_tasks t on t.id = j.task_id`;

test("what is wanted in a transaction that is undone is not wanted", async () => {
  const undone = asOffice(api.db, api.office.id, async (tx) => {
    await wantJob(tx, ctxOf(), "advise-farm", { farmId: api.farm.id });
    throw new Error("undone");
  });
  await expect(undone).rejects.toThrow("undone");
  expect(await waiting()).toEqual([]);
  expect((await api.as(api.agent).get(runsPath).expect(200)).body.runs).toEqual([]);
});

test("ten changes want one job, of ids alone; another farm's is another", async () => {
  for (let n = 0; n < 10; n++) await want("advise-farm", { farmId: api.farm.id });
  await want("advise-farm", { farmId: api.nextFarm.id });
  const payload = (farmId: string) => ({ officeId: api.office.id, farmId, id: null });
  expect((await waiting()).map((job) => job.payload)).toEqual([
    payload(api.farm.id),
    payload(api.nextFarm.id),
  ]);
  const { runs } = (await api.as(api.agent).get(runsPath).expect(200)).body;
  expect(runs).toHaveLength(2);
  expect(runs[0]).toMatchObject({ status: "waiting", attempts: 0, progress: null, problem: null });
});

test("a job of another office, or of its farm, cannot be wanted", async () => {
  await asOffice(api.db, api.office.id, async (tx) => {
    // The office is not an argument: this is the transaction's own, whatever the caller says.
    await wantJob(tx, ctxOf(), "advise-office");
  });
  expect((await waiting()).map((job) => (job.payload as { officeId: string }).officeId)).toEqual([
    api.office.id,
  ]);
  await expect(want("advise-farm", { farmId: api.otherFarm.id })).rejects.toMatchObject({
    cause: { code: expect.stringMatching(/^(23503|42501)$/) },
  });
  expect(await waiting()).toHaveLength(1);
});

test("a whole office is advised again in the background, and says how far it is", async () => {
  const wanted = (await api.as(api.agent).post(runsPath, { task: "advise-office" }).expect(202)).body;
  expect(wanted).toMatchObject({ status: "waiting", wantedBy: "Orla", farmId: null, task: "advise-office" });
  const again = (await api.as(api.lead).post(runsPath, { task: "advise-office" }).expect(202)).body;
  expect(again.id).toBe(wanted.id);
  work();
  expect(await untilIs(wanted.id, "done")).toMatchObject({
    progress: { done: 2, total: 2 },
    attempts: 1,
    problem: null,
  });
});

test("what fails is tried again later and later, is given up, and done again for a lead alone", async () => {
  const task = vi.spyOn(tasks, "advise-farm");
  task.mockRejectedValue(new Error("secret words of somebody's"));
  await want("advise-farm", { farmId: api.farm.id });
  const [{ id }] = (await api.as(api.agent).get(runsPath)).body.runs;
  const clock = async () => (await queue`select extract(epoch from clock_timestamp())::float8 as s`)[0]?.s;
  let before = await clock();
  work();
  // e to the power of the try, in seconds; the others by a table of powers.
  for (const [attempt, seconds] of [
    [1, Math.E],
    [2, 7.38906],
    [3, 20.08554],
    [4, 54.59815],
  ] as const) {
    const due = await until(async () => {
      const [row] = await queue`select extract(epoch from run_at)::float8 as due
        from jobs._private_jobs where attempts = ${attempt} and locked_at is null`;
      expect(row).toBeDefined();
      return row?.due;
    });
    expect(due).toBeGreaterThan(before + seconds - 0.001);
    expect(due).toBeLessThan((await clock()) + seconds + 0.001);
    const run = await untilIs(id, "waiting");
    expect(run.attempts).toBe(attempt);
    expect(run.problem).toBe("Something unforeseen went wrong; the server's log says what.");
    expect((Date.parse(run.dueAt) - api.clock.now.getTime()) / 1000).toBeCloseTo(seconds, 2);
    before = await clock();
    await queue`update jobs._private_jobs set run_at = now()`;
    await queue`select pg_notify('jobs:insert', '{"count":1}')`;
  }
  expect(await untilIs(id, "failed")).toMatchObject({ attempts: 5, dueAt: null });
  const { runs } = (await api.as(api.lead).get(`${runsPath}?status=failed`).expect(200)).body;
  expect(runs.map((run: { id: string }) => run.id)).toEqual([id]);
  expect(JSON.stringify(runs)).not.toContain("secret");

  task.mockResolvedValue();
  await api.as(api.agent).post(`${runsPath}/${id}/retry`).expect(403);
  await api.as(api.farmer).post(`${runsPath}/${id}/retry`).expect(403);
  await api.as(api.stranger).post(`${runsPath}/${id}/retry`).expect(404);
  expect(task).toHaveBeenCalledTimes(5);
  await api.as(api.lead).post(`${runsPath}/${id}/retry`).expect(202);
  expect(await untilIs(id, "done")).toMatchObject({ attempts: 1, problem: null });
  expect(task).toHaveBeenCalledTimes(6);
  expect((await api.as(api.lead).post(`${runsPath}/${id}/retry`).expect(409)).body.detail).toBe(
    "Only what failed for good can be done again.",
  );
});

test("why it failed is said where the words are ours", async () => {
  vi.spyOn(tasks, "advise-farm").mockRejectedValue(new ServiceError("conflict", "This farm is being moved."));
  await want("advise-farm", { farmId: api.farm.id });
  const [{ id }] = (await api.as(api.agent).get(runsPath)).body.runs;
  work();
  await until(async () => expect((await runNow(id)).problem).toBe("This farm is being moved."));
});

test("what was given up needs nobody any more once the same has worked", async () => {
  const task = vi.spyOn(tasks, "advise-farm").mockRejectedValue(new Error("no"));
  await want("advise-farm", { farmId: api.farm.id });
  await queue`update jobs._private_jobs set attempts = max_attempts - 1`;
  const [{ id }] = (await api.as(api.agent).get(runsPath)).body.runs;
  work();
  await untilIs(id, "failed");
  task.mockResolvedValue();
  await want("advise-farm", { farmId: api.farm.id });
  await untilIs(id, "overtaken");
});

test("what is wanted anew while it is being done is done again after it", async () => {
  let release = (): void => {};
  const task = vi.spyOn(tasks, "advise-farm");
  task.mockImplementationOnce(
    () =>
      new Promise<void>((done) => {
        release = done;
      }),
  );
  task.mockResolvedValue();
  await want("advise-farm", { farmId: api.farm.id });
  work();
  await until(async () => expect(task).toHaveBeenCalledTimes(1));
  await want("advise-farm", { farmId: api.farm.id });
  release();
  await until(async () => expect(task).toHaveBeenCalledTimes(2));
  await until(async () => {
    const { runs } = (await api.as(api.agent).get(runsPath)).body;
    expect(runs.map((run: { status: string }) => run.status)).toEqual(["done", "done"]);
  });
});

test("an office whose webhooks let it wait holds up nobody: one at a time, and after what people wait for", async () => {
  let release = (): void => {};
  const hanging = new Promise<void>((done) => {
    release = done;
  });
  const hook = vi.spyOn(tasks, "send-webhook").mockImplementation(() => hanging);
  const carried = vi.spyOn(tasks, "deliver").mockResolvedValue();
  const id = () => ({ id: globalThis.crypto.randomUUID() });
  for (let n = 0; n < 3; n++) await want("send-webhook", id());
  await want("deliver", id());
  const order = await queue`select t.identifier as task, j.priority from jobs._private_jobs j
    join jobs._private_tasks t on t.id = j.task_id order by j.priority, j.run_at`;
  expect(order.map((row) => [row.task, row.priority])).toEqual([
    ["deliver", -10],
    ...Array(3).fill(["send-webhook", 10]),
  ]);
  work({ concurrency: 2 });
  await until(async () => expect(hook).toHaveBeenCalledTimes(1));
  await want("deliver", id());
  await until(async () => expect(carried).toHaveBeenCalledTimes(2));
  expect(hook).toHaveBeenCalledTimes(1);
  release();
  await until(async () => expect(hook).toHaveBeenCalledTimes(3));
});

test("the list comes a page at a time, newest first", async () => {
  for (const key of ["a", "b", "c"]) {
    await want("advise-office", {}, { key });
    api.clock.now = new Date(api.clock.now.getTime() + 1000);
  }
  const keys = async (query: string) => {
    const { body } = await api.as(api.agent).get(`${runsPath}?limit=2${query}`).expect(200);
    return { ids: body.runs.map((run: { wantedAt: string }) => run.wantedAt), next: body.next };
  };
  const first = await keys("");
  const second = await keys(`&after=${encodeURIComponent(first.next)}`);
  expect([first.ids.length, second.ids.length, second.next]).toEqual([2, 1, null]);
  expect([...first.ids, ...second.ids]).toEqual([...first.ids, ...second.ids].sort().reverse());
  await api.as(api.agent).get(`${runsPath}?after=elsewhere`).expect(422);
});

test("each farm is wanted in the night of its site, and none by day", async () => {
  const site = await makeSite(api.db, { officeId: api.office.id, id: api.farm.id });
  expect(site.timeZone).toBe("America/Chicago");
  const at = (instant: string) => ({ ...ctxOf(), now: () => new Date(instant) });
  // In June Chicago is five hours behind: three at night is eight in UTC.
  await wantNightly(at("2026-06-10T07:00:00Z"));
  await wantNightly(at("2026-06-10T20:00:00Z"));
  expect(await waiting()).toEqual([]);
  await wantNightly(at("2026-06-10T08:00:00Z"));
  const nightly = (await waiting()).filter((job) => job.task === "advise-farm");
  expect(nightly.map((job) => job.payload)).toEqual([
    { officeId: api.office.id, farmId: api.farm.id, id: null },
  ]);
  const [run] = (await api.as(api.agent).get(runsPath)).body.runs;
  expect(run).toMatchObject({ wantedBy: null });
});

test("a site in a zone that nobody knows keeps no other farm from its night, and is said", async () => {
  const bad = await makeFarm(api.db, api.office, { name: "Nowhere" });
  await makeSite(api.db, { officeId: api.office.id, id: bad.id }, { timeZone: "X" });
  await makeSite(api.db, { officeId: api.office.id, id: api.farm.id }, { name: "Another ground" });
  const night = { ...ctxOf(), now: () => new Date("2026-06-10T08:00:00Z") };
  expect(await wantNightly(night)).toEqual({ zoneless: [bad.id] });
  const advised = (await waiting()).filter((job) => job.task === "advise-farm");
  expect(advised.map((job) => (job.payload as { farmId: string }).farmId)).toEqual([api.farm.id]);
});

test("the clock's hour wants it for every office that the queue's role sees", async () => {
  await makeSite(api.db, { officeId: api.otherOffice.id, id: api.otherFarm.id }, { name: "Wrens' ground" });
  const task = vi.spyOn(tasks, "advise-farm").mockResolvedValue();
  work();
  await queue`select jobs.add_job('each-hour', '{"_cron":{"ts":"2026-06-10T08:00:00.000Z"}}')`;
  await until(async () =>
    expect(new Set(task.mock.calls.map(([ctx]) => ctx.officeId))).toEqual(
      new Set([api.office.id, api.otherOffice.id]),
    ),
  );
  expect(task.mock.calls.every(([ctx]) => ctx.actor === serverItself)).toBe(true);
});

test("what is kept for a while only is let go", async () => {
  await want("advise-office", {}, { key: "old" });
  await want("advise-office", {}, { key: "old-failed" });
  await want("advise-office", {}, { key: "young" });
  await api.admin`update runs set status = 'done', ended_at = now() - interval '8 days' where key = 'old'`;
  await api.admin`update runs set status = 'failed', ended_at = now() - interval '8 days' where key = 'old-failed'`;
  await queue`delete from jobs._private_jobs`;
  await api.admin`insert into auth.mails (mail, queued_at) values ('{}', now() - interval '2 days')`;
  await queue`delete from jobs._private_jobs`;
  work();
  await queue`select jobs.add_job('let-go')`;
  await until(async () =>
    expect((await api.admin`select key from runs order by key`).map((row) => row.key)).toEqual([
      "old-failed",
      "young",
    ]),
  );
  await until(async () => expect(await api.admin`select id from auth.mails`).toHaveLength(0));
});

const letter = {
  to: "bram@aldertarn.example",
  subject: "Your link — für dich",
  text: "Come in by this link:\n\nhttps://pith.example/in#token-1\n",
  html: '<p><a href="https://pith.example/in#token-1">Come in</a></p>',
};
const queueLetter = async () => {
  const { queueMail } = await import("@pith/services");
  const authDb = openAuthDatabase(api.database.authUrl, { max: 1 });
  await queueMail(authDb, letter);
  await authDb.close();
};

test("a letter goes to the mail server as it was laid down, and is forgotten", async () => {
  const got: { from: unknown; to: unknown; data: string }[] = [];
  let refuse = true;
  const server = new SMTPServer({
    authOptional: true,
    disabledCommands: ["STARTTLS"],
    onData(stream, session, done) {
      const parts: Buffer[] = [];
      stream.on("data", (part: Buffer) => parts.push(part));
      stream.on("end", () => {
        if (refuse) {
          refuse = false;
          return done(new Error("busy with <bram@aldertarn.example>"));
        }
        const { mailFrom, rcptTo } = session.envelope;
        got.push({ from: mailFrom, to: rcptTo, data: Buffer.concat(parts).toString("utf8") });
        done();
      });
    },
  });
  await new Promise<void>((ready) => server.listen(0, "127.0.0.1", ready));
  stops.push(() => new Promise((done) => server.close(() => done())));
  const address = server.server.address();
  const port = typeof address === "object" && address ? address.port : 0;
  await queueLetter();
  const [{ id: mailId } = { id: "" }] = await api.admin`select id from auth.mails`;
  const { log } = work({ smtp: `smtp://127.0.0.1:${port}` });
  // The first time the server is busy: the letter stays and is tried again.
  await until(async () => {
    const [job] = await queue`select attempts from jobs._private_jobs where locked_at is null`;
    expect(job?.attempts).toBe(1);
  });
  expect(await api.admin`select id from auth.mails`).toHaveLength(1);
  // What the mail server said quotes an address, and the queue keeps why a job failed for months.
  const [kept] = await queue`select last_error from jobs._private_jobs`;
  expect(kept?.last_error).toMatch(/^Another server did not answer \(E[A-Z]+\)\.$/);
  expect(JSON.stringify(log)).toContain("busy with");
  await queue`update jobs._private_jobs set run_at = now()`;
  await queue`select pg_notify('jobs:insert', '{"count":1}')`;
  await until(async () => expect(got).toHaveLength(1));
  expect(got[0]).toMatchObject({
    from: { address: "advice@aldertarn.example" },
    to: [{ address: "bram@aldertarn.example" }],
  });
  const data = got[0]?.data.replaceAll("\r\n", "\n") ?? "";
  expect(data).toContain("From: Pith <advice@aldertarn.example>\n");
  expect(data).toContain("To: bram@aldertarn.example\n");
  // RFC 2047: words beyond ASCII, in UTF-8 and quoted-printable.
  expect(data).toContain("Subject: =?UTF-8?Q?Your_link_=E2=80=94_f=C3=BCr_dich?=\n");
  expect(data).toContain(`Message-ID: <${mailId}@aldertarn.example>\n`);
  expect(data).toContain("Auto-Submitted: auto-generated\n");
  expect(data).toContain("https://pith.example/in#token-1");
  expect(data).toContain('<p><a href="https://pith.example/in#token-1">Come in</a></p>');
  await until(async () => expect(await api.admin`select id from auth.mails`).toHaveLength(0));
  await until(async () => expect(await waiting()).toEqual([]));
  expect(JSON.stringify(log)).not.toMatch(/token-1|bram|aldertarn/);
});

test.each([
  [
    "a failed statement",
    "Failed query: insert into people values ($1)\nparams: Wren,0170 555\n    at run (x.ts:1)",
    "Failed query: insert into people values ($1)\n    at run (x.ts:1)",
  ],
  [
    "a mail server",
    "Message failed: 550 <wren@aldertarn.example>: no such box",
    "Message failed: 550 <***>: no such box",
  ],
  ["a database", 'invalid input syntax for type uuid: "Wren"', 'invalid input syntax for type uuid: "***"'],
])("the log keeps what %s says without what it was given", (_who, said, kept) => {
  expect(withoutValues(said)).toBe(kept);
  expect(errorForLog(new Error("outside", { cause: new Error(said) })).message).toContain(kept);
});

test("without a mail server letters are laid down in a folder", async () => {
  const folder = mkdtempSync(join(tmpdir(), "pith-mail-"));
  stops.push(async () => rmSync(folder, { recursive: true }));
  await queueLetter();
  work({ folder });
  const name = await until(async () => {
    const [first, ...more] = readdirSync(folder).filter((file) => file.endsWith(".eml"));
    expect([first, more]).toEqual([expect.any(String), []]);
    return String(first);
  });
  expect(readFileSync(join(folder, name), "utf8")).toContain("To: bram@aldertarn.example");
  await until(async () => expect(await api.admin`select id from auth.mails`).toHaveLength(0));
});

test("a farmer, a reader and another office see no work, and a reader's own transaction wants none", async () => {
  await want("advise-farm", { farmId: api.farm.id });
  const [{ id }] = (await api.as(api.agent).get(runsPath)).body.runs;
  for (const who of [api.farmer, api.reader]) {
    await api.as(who).get(runsPath).expect(403);
    await api.as(who).get(`${runsPath}/${id}`).expect(403);
    await api.as(who).post(runsPath, { task: "advise-office" }).expect(403);
  }
  await api.as(api.stranger).get(runsPath).expect(404);
  const elsewhere = `/v1/offices/${api.otherOffice.id}/runs/${id}`;
  await api.as(api.stranger).get(elsewhere).expect(404);
  const reading = withOffice(
    api.db,
    { officeId: api.office.id, role: "reader", farmIds: [api.farm.id], userId: api.reader.id },
    (tx) => wantJob(tx, ctxOf(), "advise-farm", { farmId: api.farm.id }),
  );
  await expect(reading).rejects.toMatchObject({ cause: { code: "25006" } });
});
