"use server";

import { cookies } from "next/headers";
import { redirect } from "next/navigation";
import { z } from "zod";
import { OFFICE_COOKIE } from "../../server/seat.ts";

const YEAR_S = 365 * 24 * 3600;

/** Turns to another of one's offices. Whether one is in it, the API judges with each call. */
export async function chooseOffice(data: FormData): Promise<void> {
  const office = z.uuid().parse(data.get("office"));
  (await cookies()).set(OFFICE_COOKIE, office, {
    maxAge: YEAR_S,
    sameSite: "lax",
    path: "/",
    httpOnly: true,
  });
  redirect("/");
}
