import type { ImportLine } from "@pith/contract";
import { Stopped, type Watch } from "@pith/services";
import type { Context, TypedResponse } from "hono";
import { stream } from "hono/streaming";
import type { JSONParsed } from "hono/utils/types";
import type { AppDeps, AppEnv } from "./env.ts";
import { problemOf } from "./problems.ts";

const LINES = "application/x-ndjson";

/** Whether the answer is wanted line by line. */
export const wantsLines = (c: Context): boolean => c.req.header("accept")?.includes(LINES) ?? false;

/** What the route's document says of such an answer: each line is one of these. */
type Lines<S extends 200 | 201> = Response & TypedResponse<JSONParsed<ImportLine>, S, "json">;

/**
 * Long work as lines of JSON: how far it is, then its result, or the problem that ended it. The status is sent before
 * the end is known, so it is the good one either way. Hanging up stops the work.
 */
export function asLines<S extends 200 | 201>(
  c: Context<AppEnv>,
  status: S,
  log: AppDeps["log"],
  work: (watch: Watch) => Promise<Extract<ImportLine, { result: unknown }>["result"]>,
): Lines<S> {
  const stop = new AbortController();
  let finished = () => {};
  // A connection belongs to the request on the edge: it must outlive the handler, which returns before the work is done.
  c.get("connections").until = new Promise<void>((done) => {
    finished = done;
  });
  c.status(status);
  c.header("content-type", `${LINES}; charset=utf-8`);
  // What stands between may keep small answers back, or press them.
  c.header("cache-control", "no-store, no-transform");
  c.header("x-accel-buffering", "no");
  return stream(c, async (out) => {
    out.onAbort(() => stop.abort());
    const say = async (line: ImportLine) => void (await out.writeln(JSON.stringify(line)));
    try {
      await say({ result: await work({ report: say, signal: stop.signal }) });
    } catch (error) {
      if (!(error instanceof Stopped)) {
        const problem = problemOf(error, c, log);
        await say({ problem: await problem.json() });
      }
    } finally {
      finished();
    }
  }) as Lines<S>;
}
