import { Hono } from "hono";
import { afterEach, expect, test, vi } from "vitest";
import type { AppEnv } from "../../apps/api/src/env.ts";
import { exportGate } from "../../apps/api/src/exportGate.ts";
import { asFile } from "../../apps/api/src/file.ts";

/** Files that are written while they are sent hold a connection each, and must not hold it for ever. */

afterEach(() => {
  vi.useRealTimers();
});

test("who takes nothing of a file for a minute has hung up; who takes a little is served on", async () => {
  vi.useFakeTimers();
  let ended: unknown;
  const app = new Hono<AppEnv>();
  app.get("/", (c) => {
    c.set("connections", {} as never);
    return asFile(
      c,
      () => {},
      { type: "text/plain", name: "all.txt" },
      async (out) => {
        try {
          for (;;) await out.text("a line\n");
        } catch (error) {
          ended = error;
          throw error;
        }
      },
    );
  });
  const reader = (await app.request("/")).body?.getReader();
  for (let minute = 0; minute < 3; minute++) {
    await vi.advanceTimersByTimeAsync(59_000);
    await reader?.read();
  }
  expect(ended).toBeUndefined();
  await vi.advanceTimersByTimeAsync(61_000);
  expect(ended).toBeInstanceOf(Error);
});

test("one export of an office is written at a time, three in all, and a place is free again after each", async () => {
  const gate = exportGate();
  const ends: (() => void)[] = [];
  const slow = () => new Promise<void>((done) => ends.push(done));
  const going = ["a", "b", "c"].map((office) => gate(office, slow));
  await expect(gate("a", slow)).rejects.toMatchObject({
    status: 429,
    message: expect.stringMatching(/of this office/),
  });
  await expect(gate("d", slow)).rejects.toMatchObject({
    status: 429,
    message: expect.stringMatching(/^3 exports/),
  });
  for (const end of ends) end();
  await Promise.all(going);
  await expect(gate("a", () => Promise.reject(new Error("broke")))).rejects.toThrow("broke");
  await gate("a", async () => {});
});
