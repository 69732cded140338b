import { type ChildProcess, execFileSync, spawn, spawnSync } from "node:child_process";
import { once } from "node:events";
import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { ask } from "../../infra/postgres/connect.mjs";
import { readPostmaster } from "../../infra/postgres/leftover.mjs";
import { type Server, startServer } from "../../infra/postgres/server.mjs";
import { PlainFailure } from "../../infra/process/failure.mjs";
import { identityOf } from "../../infra/process/identity.mjs";
import { until } from "../../infra/process/wait.mjs";

/** What a killed run leaves behind, made by killing one. */

const serverModule = new URL("../../infra/postgres/server.mjs", import.meta.url).href;

let home: string;
let dataDir: string;
const flags = ["-c", "fsync=off"]; // programs are killed here, not the machine
const running: Server[] = [];
const children: ChildProcess[] = [];

beforeEach(() => {
  home = mkdtempSync(join(tmpdir(), "pith-faults-"));
  chmodSync(home, 0o711);
  dataDir = join(home, "postgres");
});

afterEach(async () => {
  for (const child of children.splice(0)) child.kill("SIGKILL");
  for (const server of running.splice(0)) await server.stop();
  rmSync(home, { recursive: true, force: true });
});

async function start(): Promise<Server> {
  const server = await startServer({ dataDir, flags });
  running.push(server);
  return server;
}

/** A run of its own that starts a server and stays. */
function anotherRun(): ChildProcess {
  const script = `import { startServer } from ${JSON.stringify(serverModule)};
    await startServer({ dataDir: ${JSON.stringify(dataDir)}, flags: ${JSON.stringify(flags)} });
    console.log("up");
    setInterval(() => {}, 1000);`;
  const child = spawn(process.execPath, ["--input-type=module", "-e", script], {
    stdio: ["ignore", "pipe", "inherit"],
  });
  children.push(child);
  return child;
}

async function kill(child: ChildProcess): Promise<void> {
  const gone = once(child, "exit");
  child.kill("SIGKILL");
  await gone;
}

/** A run that came up and was then killed, its server left running. */
async function killedRun(): Promise<{ pid: number; port: number }> {
  const child = anotherRun();
  await once(child.stdout as NodeJS.ReadableStream, "data");
  await kill(child);
  const left = readPostmaster(dataDir);
  if (!left || !identityOf(left.pid)) throw new Error("the killed run left no server");
  return left;
}

const countOf = async (server: Server) =>
  (await ask(server.adminUrl, "select count(*)::int as n from kept"))[0]?.n;

describe("a server left by a killed run", () => {
  test("is used again, not doubled, and is stopped like one's own", async () => {
    const left = await killedRun();
    const server = await start();
    expect(server).toMatchObject({ adopted: true, pid: left.pid, port: left.port });
    await server.stop();
    expect(identityOf(left.pid)).toBeUndefined();
  });

  test("when it was killed too, the next start recovers what was written, on the same port", async () => {
    const first = await start();
    await ask(first.adminUrl, "create table kept as select generate_series(1, 1000) as n");
    process.kill(first.pid, "SIGKILL");
    await first.ended;
    const second = await start();
    expect(second.adopted).toBe(false);
    expect(second.port).toBe(first.port);
    expect(await countOf(second)).toBe(1000);
  });

  test("whose number now belongs to another program does not stop the next start, nor is that program touched", async () => {
    await (await start()).stop();
    const lines = [process.pid, dataDir, 0, 1, "", "127.0.0.1", "", "ready", ""];
    writeFileSync(join(dataDir, "postmaster.pid"), lines.join("\n"));
    const server = await start();
    expect(server.adopted).toBe(false);
    expect(server.pid).not.toBe(process.pid);
  });
});

describe("a data folder", () => {
  test("killed in the middle of being made is made again", async () => {
    const child = anotherRun();
    const partOf = () => readdirSync(home).find((name) => name.startsWith("postgres.new-"));
    const begun = await until(
      () => {
        const part = partOf();
        return part !== undefined && existsSync(join(home, part, "PG_VERSION")) ? part : undefined;
      },
      { withinMs: 30_000, everyMs: 1 },
    );
    await kill(child);
    expect(begun).toMatch(/^postgres\.new-\d+$/);
    expect(existsSync(dataDir)).toBe(false);
    const server = await start();
    expect(await ask(server.adminUrl, "select 1 as one")).toEqual([{ one: 1 }]);
    expect(partOf()).toBeUndefined();
  });

  test("that looks begun but was never finished is made again", async () => {
    mkdirSync(dataDir);
    writeFileSync(join(dataDir, "PG_VERSION"), "15\n");
    const said: string[] = [];
    const server = await startServer({ dataDir, flags, log: (sentence) => said.push(sentence) });
    running.push(server);
    expect(said).toEqual([
      `The database's folder ${server.dataDir} was never finished, so it is made again.`,
    ]);
    expect(await ask(server.adminUrl, "select 1 as one")).toEqual([{ one: 1 }]);
  });

  test("whose password was lost opens again with a new one, its rows kept", async () => {
    const first = await start();
    await ask(first.adminUrl, "create table kept as select 7 as n");
    await first.stop();
    rmSync(`${dataDir}.password`);
    const second = await start();
    expect(second.adminUrl).not.toBe(first.adminUrl);
    expect(await countOf(second)).toBe(1);
  });

  test("made by another version is refused and left alone", async () => {
    const first = await start();
    await first.stop();
    writeFileSync(join(first.dataDir, "PG_VERSION"), "14\n");
    await expect(startServer({ dataDir, flags })).rejects.toThrow(
      /was made by Postgres 14, but this Pith brings Postgres 15/,
    );
    expect(existsSync(join(first.dataDir, "global", "pg_control"))).toBe(true);
  });
});

test("the server's password is readable by its owner alone, and nobody gets in without it", async () => {
  const server = await start();
  expect(statSync(`${dataDir}.password`).mode & 0o777).toBe(0o600);
  const wrong = new URL(server.adminUrl);
  wrong.password = "wrong";
  await expect(ask(wrong.href, "select 1")).rejects.toMatchObject({ code: "28P01" });
  const [settings] = await ask(
    server.adminUrl,
    "select current_setting('listen_addresses') as listens, current_setting('unix_socket_directories') as sockets",
  );
  expect(settings).toEqual({ listens: "127.0.0.1", sockets: "" });
});

if (process.getuid?.() === 0)
  test("in a folder only root may enter, its files stand in a system folder, and are found there again", async () => {
    chmodSync(home, 0o700);
    const said: string[] = [];
    const log = (sentence: string) => said.push(sentence);
    const first = await startServer({ dataDir, flags, log });
    running.push(first);
    const folder = dirname(first.dataDir);
    try {
      expect(folder).toMatch(/^\/var\/lib\/pith\/[0-9a-f]{16}$/);
      expect(said).toEqual([
        `The database's own user may not enter this folder, so the database's files stand in ${folder}.`,
      ]);
      await ask(first.adminUrl, "create table kept as select 7 as n");
      await first.stop();
      const second = await startServer({ dataDir, flags, log });
      running.push(second);
      expect(second.dataDir).toBe(first.dataDir);
      expect(said.length).toBe(1);
      expect(await countOf(second)).toBe(1);
      await second.stop();
      expect(statSync(home).mode & 0o777).toBe(0o700);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });

/** Mounts a disk smaller than the 40 MB of a new data folder; only root, and not in every container, may do so. */
const mountSmallDisk = (folder: string): boolean =>
  spawnSync("mount", ["-t", "tmpfs", "-o", "size=30m,mode=711", "none", folder]).status === 0;

function mayMount(): boolean {
  const folder = mkdtempSync(join(tmpdir(), "pith-small-"));
  const mounted = mountSmallDisk(folder);
  if (mounted) execFileSync("umount", [folder]);
  rmSync(folder, { recursive: true });
  return mounted;
}

if (mayMount())
  test("a full disk is told in one sentence, and nothing half made stays on it", async () => {
    const small = join(home, "small");
    mkdirSync(small);
    mountSmallDisk(small);
    try {
      const failure = await startServer({ dataDir: join(small, "postgres"), flags }).catch((error) => error);
      expect(failure).toBeInstanceOf(PlainFailure);
      expect(failure.message).toBe(
        `The disk that holds ${small} is full, so Pith could not make the database: free some space and run it again.`,
      );
      expect(readdirSync(small)).toEqual(["postgres.password"]);
    } finally {
      execFileSync("umount", [small]);
    }
  });
