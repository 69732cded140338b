import { spawn } from "node:child_process";
import { createServer } from "node:net";
import { afterAll, beforeAll, expect, test } from "vitest";
import { findFreePort } from "../../infra/process/ports.mjs";
import { bundleProgram } from "../../infra/programs.mjs";
import { freshDatabase, type TestDatabase } from "../support/database.ts";

/** The API as a process: it starts, or says in one sentence why it does not. */

const API = await bundleProgram("apps/api/src/entry-node.ts");
let database: TestDatabase;
beforeAll(async () => {
  database = await freshDatabase();
});
afterAll(() => database?.drop());

const settings = () => ({
  DATABASE_URL_APP: database.appUrl,
  DATABASE_URL_AUTH: database.authUrl,
  AUTH_SECRET: "only-for-this-test-only-for-this-test",
  PORT: "0",
});

/** Runs it until it ends, or until it says something that `until` knows and `then` is done; then asks it to end. */
function run(
  env: Record<string, string | undefined>,
  until?: RegExp,
  then: () => Promise<unknown> = async () => {},
) {
  const child = spawn(process.execPath, [API], {
    env: { NODE_ENV: "production", PATH: process.env.PATH, ...env },
    stdio: ["ignore", "pipe", "pipe"],
  });
  let said = "";
  let complained = "";
  let asked = false;
  child.stdout.on("data", (chunk: Buffer) => {
    said += chunk;
    if (asked || !until?.test(said)) return;
    asked = true;
    void then().finally(() => child.kill("SIGTERM"));
  });
  child.stderr.on("data", (chunk: Buffer) => {
    complained += chunk;
  });
  return new Promise<{ code: number | null; said: string; complained: string }>((ended) =>
    child.on("close", (code: number | null) => ended({ code, said, complained })),
  );
}

/** It did not start, and said so in one line that is one sentence, without a stack. */
function expectOneSentence({ code, said, complained }: Awaited<ReturnType<typeof run>>): string {
  expect([code, said]).toEqual([1, ""]);
  expect(complained).toMatch(/^[^\n]+\n$/);
  return complained.trim();
}

test("starts as the unprivileged role, and ends in order when asked", async () => {
  const { code, said, complained } = await run(settings(), /"ready"/);
  expect([code, complained]).toEqual([0, ""]);
  expect(JSON.parse(said.split("\n")[0] ?? "")).toMatchObject({ host: "127.0.0.1", msg: "ready" });
});

test("keeps an idle connection for longer than its callers let one rest", async () => {
  const port = await findFreePort();
  let idle: string | null = null;
  await run({ ...settings(), PORT: String(port) }, /"ready"/, async () => {
    idle = (await fetch(`http://127.0.0.1:${port}/healthz`)).headers.get("keep-alive");
  });
  expect(idle).toBe("timeout=75");
});

test("refuses to start as the server's superuser", async () => {
  const sentence = expectOneSentence(await run({ ...settings(), DATABASE_URL_APP: database.adminUrl }));
  expect(sentence).toBe(
    'The API cannot start: The database role "postgres" is a superuser, so row-level security would not hold it; log in as pith_app.',
  );
});

test("names each setting that is missing or wrong, and never the secret itself", async () => {
  const sentence = expectOneSentence(
    await run({ DATABASE_URL_APP: "nowhere", AUTH_SECRET: "too short", PORT: "70000" }),
  );
  expect(sentence).toMatch(/^The API's settings are wrong: /);
  for (const name of ["DATABASE_URL_APP", "DATABASE_URL_AUTH", "AUTH_SECRET", "PORT"]) {
    expect(sentence).toContain(name);
  }
  expect(sentence).not.toContain("too short");
});

test("a database that does not answer: one sentence", async () => {
  const nobody = new URL(database.appUrl);
  nobody.port = "1";
  const sentence = expectOneSentence(await run({ ...settings(), DATABASE_URL_APP: nobody.href }));
  expect(sentence).toMatch(/^The API cannot start: The database at 127\.0\.0\.1:1 does not answer/);
  expect(sentence).not.toContain(nobody.password);
});

test("a wrong password: one sentence without it", async () => {
  const wrong = new URL(database.appUrl);
  wrong.password = "guessed";
  const sentence = expectOneSentence(await run({ ...settings(), DATABASE_URL_APP: wrong.href }));
  expect(sentence).toBe('The API cannot start: password authentication failed for user "pith_app"');
});

test("a taken port: one sentence that says how to take another", async () => {
  const other = createServer();
  await new Promise<void>((ready) => other.listen(0, "127.0.0.1", ready));
  const address = other.address();
  const port = typeof address === "object" && address ? address.port : 0;
  const sentence = expectOneSentence(await run({ ...settings(), PORT: String(port) }));
  await new Promise((closed) => other.close(closed));
  expect(sentence).toBe(`Port ${port} is taken. Set PORT (npm start: PITH_API_PORT) to a free one.`);
});
