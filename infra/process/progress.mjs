// @ts-check

/** @param {number} sinceMs */
const seconds = (sinceMs) => `${((Date.now() - sinceMs) / 1000).toFixed(1)} s`;

/**
 * Prints one line a step: what is being done while it is done (with a running clock on a terminal), what came of
 * it and how long it took when it is over.
 *
 * @param {NodeJS.WriteStream} [out]
 */
export function openProgress(out = process.stdout) {
  // The terminal may be gone when the last lines are written: closing it is one of the ways to stop.
  out.on("error", () => {});
  /** @type {NodeJS.Timeout | undefined} */
  let clock;
  /** @param {string} text */
  const line = (text) => void out.write(`${clock ? "\r\x1b[2K" : ""}${text}\n`);

  return {
    line,
    /**
     * @template T
     * @param {string} name
     * @param {string} doing
     * @param {(tell: (done: string) => void) => Promise<T>} work may tell what came of it
     * @returns {Promise<T>}
     */
    async step(name, doing, work) {
      const began = Date.now();
      const label = `  ${name.padEnd(10)}`;
      let done = "ready";
      const show = () => out.write(`\r\x1b[2K${label} ${doing}, ${seconds(began)}`);
      clock = out.isTTY ? setInterval(show, 500) : undefined;
      if (clock) show();
      else line(`${label} ${doing} ...`);
      try {
        const result = await work((words) => {
          done = words;
        });
        line(`${label} ${done} (${seconds(began)})`);
        return result;
      } catch (error) {
        if (clock) out.write("\r\x1b[2K");
        throw error;
      } finally {
        clearInterval(clock);
        clock = undefined;
      }
    },
  };
}

/** @typedef {ReturnType<typeof openProgress>} Progress */
