"use server";

import { peopleRoutes, type Role } from "@pith/contract";
import { revalidatePath } from "next/cache";
import { getTranslations } from "next-intl/server";
import { attempt } from "../../server/api.ts";
import { agentSeat } from "../../server/seat.ts";
import type { PlaceState } from "./place.ts";

/** Asking in, changing and taking out the people of an office. */

type Call = Parameters<typeof attempt>[0];

const placeOf = (data: FormData) => {
  const role = String(data.get("role")) as Role;
  // Farms that were ticked before the role became a staff's are no slip of the pen.
  const staff = role === "lead" || role === "agent";
  return { role, farmIds: staff ? [] : data.getAll("farm").map(String) };
};

async function settle(before: PlaceState, work: Call, done: string): Promise<PlaceState> {
  const tried = await attempt(work);
  const next = { attempt: before.attempt + 1, message: null, done: null };
  if (tried.done) {
    revalidatePath("/office/people");
    return { ...next, done };
  }
  const t = await getTranslations("people");
  const { errors, detail, status } = tried.problem;
  if (errors?.[0]?.field === "farmIds") return { ...next, message: t("farmNeeded") };
  if (errors?.[0]?.field === "email") return { ...next, message: t("emailNeeded") };
  if (errors?.[0]?.field === "name") return { ...next, message: t("nameNeeded") };
  return { ...next, message: status === 503 ? t("unreachable") : (detail ?? t("unreachable")) };
}

export async function invite(before: PlaceState, data: FormData): Promise<PlaceState> {
  const [{ officeId }, t] = await Promise.all([agentSeat(), getTranslations("people")]);
  const [email, name] = [String(data.get("email") ?? "").trim(), String(data.get("name") ?? "").trim()];
  const json = { email, name, ...placeOf(data) };
  const state = await settle(
    before,
    (client) => client.call(peopleRoutes.invite, { params: { officeId }, json }),
    t("invited", { email }),
  );
  return state.message ? { ...state, kept: { email, name } } : state;
}

export async function changePerson(id: string, before: PlaceState, data: FormData): Promise<PlaceState> {
  const [{ officeId }, t] = await Promise.all([agentSeat(), getTranslations("people")]);
  return settle(
    before,
    (client) => client.call(peopleRoutes.changePerson, { params: { officeId, id }, json: placeOf(data) }),
    t("changed"),
  );
}

export async function removePerson(id: string, before: PlaceState): Promise<PlaceState> {
  const [{ officeId }, t] = await Promise.all([agentSeat(), getTranslations("people")]);
  return settle(
    before,
    (client) => client.call(peopleRoutes.removePerson, { params: { officeId, id } }),
    t("removed"),
  );
}

export async function resend(id: string, before: PlaceState): Promise<PlaceState> {
  const [{ officeId }, t] = await Promise.all([agentSeat(), getTranslations("people")]);
  return settle(
    before,
    (client) => client.call(peopleRoutes.resendInvitation, { params: { officeId, id } }),
    t("resent"),
  );
}

export async function revoke(id: string, before: PlaceState): Promise<PlaceState> {
  const [{ officeId }, t] = await Promise.all([agentSeat(), getTranslations("people")]);
  return settle(
    before,
    (client) => client.call(peopleRoutes.revokeInvitation, { params: { officeId, id } }),
    t("revoked"),
  );
}

export async function askForSecondStep(asked: boolean, before: PlaceState): Promise<PlaceState> {
  const [{ officeId }, t] = await Promise.all([agentSeat(), getTranslations("people")]);
  return settle(
    before,
    (client) => client.call(peopleRoutes.askForSecondStep, { params: { officeId }, json: { asked } }),
    t(asked ? "stepAsked" : "stepNotAsked"),
  );
}
