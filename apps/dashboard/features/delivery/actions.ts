"use server";

import { calendarRoutes, deliveryRoutes } from "@pith/contract";
import { revalidatePath } from "next/cache";
import { headers } from "next/headers";
import { redirect } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { attempt, call } from "../../server/api.ts";
import { agentSeat, type Seat, seat } from "../../server/seat.ts";

const HERE = "/account/delivery";

async function seated(): Promise<Seat> {
  const mine = await seat();
  if (!mine) redirect("/");
  return mine;
}

/** What the API says is wrong, or that it did not answer. */
async function said(problem: { status: number; detail?: string }): Promise<string> {
  const t = await getTranslations("delivery");
  return problem.status === 503 ? t("unreachable") : (problem.detail ?? t("unreachable"));
}

export async function saveWishes(_before: string | null, data: FormData): Promise<string | null> {
  const { officeId } = await seated();
  const text = (name: string) => String(data.get(name) ?? "").trim();
  const quiet = data.get("isQuiet") === "on" ? { from: text("quietFrom"), to: text("quietTo") } : null;
  const saved = await attempt((client) =>
    client.call(deliveryRoutes.changeDelivery, {
      params: { officeId },
      // The API judges what was typed.
      json: {
        mail: text("mail"),
        push: text("push"),
        text: text("text") || "off",
        textTo: text("textTo").replace(/[\s()-]/g, "") || null,
        dailyAt: text("dailyAt"),
        quiet,
        timeZone: text("timeZone"),
        language: text("language"),
      } as never,
    }),
  );
  if (!saved.done) return said(saved.problem);
  redirect(`${HERE}?saved=delivery`);
}

export async function addBrowser(subscription: {
  endpoint: string;
  keys: { p256dh: string; auth: string };
}): Promise<string | null> {
  const { officeId } = await seated();
  const added = await attempt((client) =>
    client.call(deliveryRoutes.addBrowser, { params: { officeId }, json: subscription }),
  );
  if (!added.done) return said(added.problem);
  revalidatePath(HERE);
  return null;
}

export async function removeBrowser(browserId: string): Promise<string> {
  const { officeId } = await seated();
  const gone = await attempt((client) =>
    client.call(deliveryRoutes.removeBrowser, { params: { officeId, browserId } }),
  );
  if (!gone.done && gone.problem.status !== 404) return said(gone.problem);
  revalidatePath(HERE);
  return "";
}

export interface Shown {
  address: string | null;
  problem: string | null;
}

/** A new address of a farm's calendar. It is answered here once and is nowhere to be read again. */
export async function makeCalendar(farmId: string): Promise<Shown> {
  const { officeId } = await seated();
  const made = await attempt((client) =>
    client.call(calendarRoutes.makeCalendarLink, { params: { officeId, farmId } }),
  );
  if (!made.done) return { address: null, problem: await said(made.problem) };
  const asked = await headers();
  const origin = `${asked.get("x-forwarded-proto") ?? "http"}://${asked.get("x-forwarded-host") ?? asked.get("host")}`;
  return { address: `${origin}${made.value.path.replace("/v1", "")}`, problem: null };
}

export async function stopCalendar(farmId: string): Promise<string> {
  const { officeId } = await seated();
  const gone = await attempt((client) =>
    client.call(calendarRoutes.revokeCalendarLink, { params: { officeId, farmId } }),
  );
  if (!gone.done && gone.problem.status !== 404) return said(gone.problem);
  revalidatePath(HERE);
  return "";
}

export async function markCalled(farmId: string, advisoryIds: string[]): Promise<string> {
  const { officeId } = await agentSeat();
  await call(deliveryRoutes.markCalled, { params: { officeId, farmId }, json: { advisoryIds } });
  revalidatePath("/round");
  return "";
}
