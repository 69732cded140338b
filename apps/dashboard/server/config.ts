import { z } from "zod";

/** Read when a request needs it, not while the pages are built. */
export function config() {
  const read = z.object({ API_ORIGIN: z.url() }).safeParse(process.env);
  if (!read.success) {
    throw new Error("API_ORIGIN must be set to the address of the API, e.g. http://127.0.0.1:8787");
  }
  return { apiOrigin: read.data.API_ORIGIN.replace(/\/$/, "") };
}
