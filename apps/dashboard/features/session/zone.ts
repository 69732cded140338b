"use server";

import { isTimeZone } from "@pith/rules";
import { cookies } from "next/headers";
import { YEAR_S } from "./year.ts";

export async function keepZone(zone: string): Promise<void> {
  if (typeof zone !== "string" || !isTimeZone(zone)) return;
  (await cookies()).set("zone", zone, { maxAge: YEAR_S, sameSite: "lax", path: "/", httpOnly: true });
}
