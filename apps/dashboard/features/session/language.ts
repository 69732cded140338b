"use server";

import { deliveryRoutes } from "@pith/contract";
import { LANGUAGES } from "@pith/rules";
import { cookies } from "next/headers";
import { z } from "zod";
import { attempt } from "../../server/api.ts";
import { LANGUAGE_COOKIE } from "../../server/language.ts";
import { seat } from "../../server/seat.ts";
import { YEAR_S } from "./year.ts";

/** Keeps the reader's language in this browser; signed in, what is sent to them speaks it too. */
export async function chooseLanguage(data: FormData): Promise<void> {
  const language = z.enum(LANGUAGES).parse(data.get("language"));
  (await cookies()).set(LANGUAGE_COOKIE, language, {
    maxAge: YEAR_S,
    sameSite: "lax",
    path: "/",
    httpOnly: true,
  });
  if (data.get("signedIn") !== "yes") return;
  const mine = await seat();
  if (!mine) return;
  const params = { officeId: mine.officeId };
  await attempt(async (client) => {
    const { wishes } = await client.call(deliveryRoutes.getDelivery, { params });
    return client.call(deliveryRoutes.changeDelivery, { params, json: { ...wishes, language } });
  });
}
