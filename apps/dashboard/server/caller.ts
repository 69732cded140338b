import { headers } from "next/headers";

/** Who calls, for the API: it limits attempts and requests by where they come from, and that is not the dashboard. */
export async function callerHeader(): Promise<Record<string, string>> {
  // One address, true since it came in: see instrumentation.ts.
  const caller = (await headers()).get("x-forwarded-for");
  return caller === null ? {} : { "x-forwarded-for": caller };
}
