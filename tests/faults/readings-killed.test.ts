import { type ChildProcess, fork } from "node:child_process";
import { createHash, randomUUID } from "node:crypto";
import { once } from "node:events";
import { chmodSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { appUrl, migrate } from "@pith/db/migrate";
import postgres, { type Sql } from "postgres";
import { afterAll, beforeAll, expect, test } from "vitest";
import { startServer } from "../../infra/postgres/server.mjs";
import { bundleProgram } from "../../infra/programs.mjs";
import { soak } from "../support/soak.ts";

/**
 * Devices send batches while the API, or the database itself, is ended by SIGKILL. What was acknowledged is there
 * afterwards, whole and once; what was not is sent again, as a device does, and then it is there once as well.
 */

const SECRET = "pith_a-key-for-this-test-alone";
const PASSWORDS = {
  appPassword: "app-of-this-test",
  authPassword: "auth-of-this-test",
  jobsPassword: "jobs-of-this-test",
};
const LANES = 3;
const BATCH = 200;
const ids = { office: randomUUID(), farm: randomUUID(), site: randomUUID(), series: randomUUID() };

let folder: string;
let script: string;
let server: Awaited<ReturnType<typeof startServer>>;
let api: { child: ChildProcess; port: number };

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "pith-killed-"));
  chmodSync(folder, 0o711);
  script = await bundleProgram("tests/faults/readingsApi.ts");
  server = await startServer({ dataDir: join(folder, "data") });
  await migrate({ adminUrl: server.adminUrl, ...PASSWORDS });
  await withOwner(async (sql) => {
    const { office, farm, site, series } = ids;
    await sql`insert into offices (id, name, county) values (${office}, 'A', 'B')`;
    await sql`insert into farms (office_id, id, name) values (${office}, ${farm}, 'Low Fell')`;
    await sql`insert into sites (office_id, farm_id, id, name, latitude_deg, longitude_deg, elevation_m, time_zone)
      values (${office}, ${farm}, ${site}, 'Home', 47, -93, 400, 'America/Chicago')`;
    await sql`insert into series (office_id, farm_id, id, site_id, name, label, quantity, unit, expected_every_s, silent_after_s)
      values (${office}, ${farm}, ${series}, ${site}, 'air', 'Air', 'air-temperature', 'Cel', 60, 600)`;
    const hash = createHash("sha256").update(SECRET).digest("hex");
    await sql`insert into sensor_keys (office_id, farm_id, name, prefix, secret_sha256, series_ids, created_by)
      values (${office}, ${farm}, 'Mast', 'pith_a-key-f', ${hash}, ${[series]}::uuid[], ${office})`;
  });
  api = await startApi();
});
afterAll(async () => {
  api?.child.kill("SIGKILL");
  await server?.stop();
  rmSync(folder, { recursive: true, force: true });
});

async function withOwner<T>(work: (sql: Sql) => Promise<T>): Promise<T> {
  const sql = postgres(server.adminUrl, { max: 1, onnotice: () => {} });
  try {
    return await work(sql);
  } finally {
    await sql.end();
  }
}

async function startApi(port = 0) {
  const child = fork(script, [appUrl(server.adminUrl, PASSWORDS.appPassword), String(port)], {
    stdio: ["ignore", "ignore", "ignore", "ipc"],
    execArgv: [],
  });
  const [listening] = (await once(child, "message")) as [number];
  return { child, port: listening };
}

interface Batch {
  /** Seconds since 1970 of its first reading; the others follow, one a second. */
  from: number;
  acknowledged: boolean;
}
let nextFrom = Math.floor(Date.now() / 1000) - 20 * 86_400;

const packOf = ({ from }: Batch) =>
  Array.from({ length: BATCH }, (_, i) => ({ n: "air", t: from + i, v: (from + i) % 40 }));

async function send(batch: Batch): Promise<{ stored: number; duplicates: number } | undefined> {
  try {
    const answer = await fetch(`http://127.0.0.1:${api.port}/v1/readings`, {
      method: "POST",
      headers: { authorization: `Bearer ${SECRET}`, "content-type": "application/senml+json" },
      body: JSON.stringify(packOf(batch)),
      signal: AbortSignal.timeout(5000),
    });
    return answer.status === 200 ? await answer.json() : undefined;
  } catch {
    return undefined;
  }
}

/** Sends batches until told to stop, one after another in each lane. A lane that gets no answer waits, as a device does. */
function load() {
  const batches: Batch[] = [];
  let going = true;
  const lanes = Array.from({ length: LANES }, async () => {
    while (going) {
      const batch = { from: nextFrom, acknowledged: false };
      nextFrom += BATCH;
      batches.push(batch);
      batch.acknowledged = (await send(batch)) !== undefined;
      if (!batch.acknowledged) return;
    }
  });
  return {
    batches,
    stop: async () => {
      going = false;
      await Promise.all(lanes);
    },
  };
}

const KILLS: [string, () => Promise<void>][] = [
  [
    "the API",
    async () => {
      const ended = once(api.child, "exit");
      api.child.kill("SIGKILL");
      expect(await ended).toEqual([null, "SIGKILL"]);
    },
  ],
  [
    "the database",
    async () => {
      process.kill(server.pid, "SIGKILL");
      await server.ended;
    },
  ],
];

test.each(KILLS)(
  "with %s killed in mid-batch, nothing acknowledged is lost and nothing is double",
  async (what, kill) => {
    for (let round = 0; round < soak(5, 50); round++) {
      const before = await countOf();
      const { batches, stop } = load();
      // Somewhere in the middle: when two have gone through, and then a moment that differs from round to round.
      while (batches.filter((b) => b.acknowledged).length < 2) await pause(2);
      await pause((round * 7) % 23);
      await kill();
      await stop();
      if (what === "the database")
        server = await startServer({ dataDir: join(folder, "data"), port: server.port });
      else api = await startApi();

      const acknowledged = batches.filter((b) => b.acknowledged);
      const there = await rowsFrom(batches[0]?.from ?? 0);
      const lost = acknowledged.flatMap((batch) => packOf(batch).filter(({ t, v }) => there.get(t) !== v));
      expect(lost).toEqual([]);
      // A batch is there whole or not at all.
      for (const batch of batches) {
        expect([0, BATCH]).toContain(packOf(batch).filter(({ t }) => there.has(t)).length);
      }
      for (const batch of batches) {
        const receipt = await sendUntilTaken(batch);
        expect(receipt.stored + receipt.duplicates).toBe(BATCH);
        if (batch.acknowledged) expect(receipt.duplicates).toBe(BATCH);
      }
      expect(await countOf()).toBe(before + batches.length * BATCH);
    }
  },
  soak(120_000, 3_600_000),
);

const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

/** The driver may end the API when its database is ended under it; then it is started again, as whoever runs it does. */
async function sendUntilTaken(batch: Batch) {
  for (;;) {
    if (api.child.exitCode !== null || api.child.signalCode !== null) api = await startApi();
    const receipt = await send(batch);
    if (receipt) return receipt;
    await pause(20);
  }
}

const countOf = () =>
  withOwner(async (sql) => (await sql<{ n: number }[]>`select count(*)::int as n from readings`)[0]?.n ?? 0);

const rowsFrom = (from: number) =>
  withOwner(async (sql) => {
    const rows = await sql<{ t: number; v: number }[]>`
      select extract(epoch from at)::float8 as t, value as v from readings where at >= to_timestamp(${from})`;
    return new Map(rows.map(({ t, v }) => [t, v]));
  });
