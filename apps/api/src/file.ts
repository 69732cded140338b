import type { Context } from "hono";
import type { AppDeps, AppEnv } from "./env.ts";
import { errorForLog } from "./withoutValues.ts";

export interface Out {
  text: (piece: string) => Promise<unknown>;
  bytes: (piece: Uint8Array<ArrayBuffer>) => Promise<unknown>;
}

/** Thrown to end work whose reader is gone. */
class HungUp extends Error {}

/**
 * What is read for a file is read in one transaction, which holds a connection of the few there are. Who takes nothing of
 * it for so long has hung up (common practice).
 */
const PATIENCE_MS = 60_000;

/**
 * A file that is written while it is sent. What is wrong before its first byte is answered as a problem; what breaks after
 * cuts the file short, which its own form must show. Hanging up ends the work, and so does taking
 * nothing of it for long.
 */
export async function asFile(
  c: Context<AppEnv>,
  log: AppDeps["log"],
  { type, name }: { type: string; name: string },
  write: (out: Out) => Promise<void>,
): Promise<never> {
  const pipe = new TransformStream<Uint8Array, Uint8Array>();
  const writer = pipe.writable.getWriter();
  const encoder = new TextEncoder();
  let begin = () => {};
  const begun = new Promise<void>((resolve) => {
    begin = resolve;
  });
  const put = (bytes: Uint8Array) => {
    begin();
    let timer: ReturnType<typeof setTimeout> | undefined;
    const tooLong = new Promise<never>((_, reject) => {
      timer = setTimeout(() => reject(new HungUp()), PATIENCE_MS);
    });
    return Promise.race([writer.write(bytes), tooLong])
      .catch(() => {
        throw new HungUp();
      })
      .finally(() => clearTimeout(timer));
  };
  const work = write({ text: (piece) => put(encoder.encode(piece)), bytes: put }).then(() => writer.close());
  // Until the first byte is there, what goes wrong is a problem document like any other.
  await Promise.race([begun, work]);
  let finished = () => {};
  // A connection belongs to the request on the edge: it must outlive the handler, which returns before the file is written.
  c.get("connections").until = new Promise<void>((done) => {
    finished = done;
  });
  work
    .catch((error: unknown) => {
      if (!(error instanceof HungUp)) {
        log({ level: "error", requestId: c.get("requestId"), ...errorForLog(error) });
      }
      return writer.abort(error).catch(() => {});
    })
    .finally(finished);
  c.header("content-type", type);
  c.header("content-disposition", `attachment; filename="${name}"`);
  c.header("cache-control", "no-store, no-transform");
  // The types of the routes know no answer but JSON, text and what is whole when it is sent.
  return c.body(pipe.readable, 200) as never;
}
