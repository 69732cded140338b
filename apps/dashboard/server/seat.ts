import { openRoutes, type Role } from "@pith/contract";
import { cookies } from "next/headers";
import { redirect } from "next/navigation";
import { cache } from "react";
import { call } from "./api.ts";

/** Who sits here: the person in their office. */
export interface Seat {
  name: string;
  officeId: string;
  officeName: string;
  /** Whose pages they see: the office's or the farm's. */
  role: "agent" | "farmer";
  lead: boolean;
  /** A reader sees a farm's pages without what writes. */
  mayWrite: boolean;
  /** Every office they belong to, where there are several to choose from. */
  offices: { id: string; name: string }[];
  /** The office asks for a second step at sign-in that this person has not set up: until then they see nothing of it. */
  needsSecondStep: boolean;
}

/** Which office was chosen last. */
export const OFFICE_COOKIE = "office";

/** The signed-in person's place; null for somebody who belongs to no office. */
export const seat = cache(async (): Promise<Seat | null> => {
  const [{ user, memberships }, jar] = await Promise.all([call(openRoutes.me, {}), cookies()]);
  const chosen = jar.get(OFFICE_COOKIE)?.value;
  const membership =
    memberships.find((m) => m.officeId === chosen) ??
    memberships.find((m) => isStaff(m.role)) ??
    memberships[0];
  if (!membership) return null;
  const { officeId, officeName, role, needsSecondStep } = membership;
  return {
    name: user.name,
    officeId,
    officeName,
    role: isStaff(role) ? "agent" : "farmer",
    lead: role === "lead",
    mayWrite: role !== "reader",
    offices: memberships.map((m) => ({ id: m.officeId, name: m.officeName })),
    needsSecondStep,
  };
});

/** Whose what a phone keeps is: it never leaves the phone. */
export const whoOf = ({ officeId, name }: Pick<Seat, "officeId" | "name">): string => `${officeId} ${name}`;

const isStaff = (role: Role) => role === "lead" || role === "agent";

export const homeOf = (role: Seat["role"]) => (role === "agent" ? "/round" : "/today");

/** For an agent's page: others are led to their own. */
export const agentSeat = () => seatAs("agent");
/** For a farmer's page: others are led to their own. */
export const farmerSeat = () => seatAs("farmer");

/** For a lead's page: others are led to the office's. */
export async function leadSeat(): Promise<Seat> {
  const mine = await agentSeat();
  if (!mine.lead) redirect("/office");
  return mine;
}

/** For a farmer's page that is there to write: a reader is led to the record instead. */
export async function writingSeat(): Promise<Seat> {
  const mine = await farmerSeat();
  if (!mine.mayWrite) redirect("/record");
  return mine;
}

async function seatAs(role: Seat["role"]): Promise<Seat> {
  const mine = await seat();
  if (!mine) redirect("/");
  if (mine.needsSecondStep) redirect("/account/second-step");
  if (mine.role !== role) redirect(homeOf(mine.role));
  return mine;
}
