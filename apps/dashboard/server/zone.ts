import { isTimeZone } from "@pith/rules";
import { cookies } from "next/headers";

/** The zone of the reader's clock, as their browser told it; UTC before the first page has run. */
export async function readerZone(): Promise<string> {
  const told = (await cookies()).get("zone")?.value ?? "";
  return isTimeZone(told) ? told : "UTC";
}
