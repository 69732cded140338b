import { appendFile } from "node:fs/promises";
import type { TextSender } from "./means.ts";

/** Sends nothing and writes down what would have been sent, a line each: for a try, and for tests. */
export const recordingTexts = (file: string): TextSender => ({
  send: (to, text) => appendFile(file, `${JSON.stringify({ to, text })}\n`, { mode: 0o600 }),
});
