import { openRoutes, type Role } from "@pith/contract";
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
}

/** The signed-in person's place; null for somebody who belongs to no office. */
export const seat = cache(async (): Promise<Seat | null> => {
  const { user, memberships } = await call(openRoutes.me, {});
  const membership = memberships.find((m) => isStaff(m.role)) ?? memberships[0];
  if (!membership) return null;
  const { officeId, officeName, role } = membership;
  return {
    name: user.name,
    officeId,
    officeName,
    role: isStaff(role) ? "agent" : "farmer",
    lead: role === "lead",
    mayWrite: role !== "reader",
  };
});

const isStaff = (role: Role) => role === "lead" || role === "agent";

export const homeOf = (role: Seat["role"]) => (role === "agent" ? "/round" : "/today");

/** For an agent's page: others are led to their own. */
export const agentSeat = () => seatAs("agent");
/** For a farmer's page: others are led to their own. */
export const farmerSeat = () => seatAs("farmer");

/** For a farmer's page that is there to write: a reader is led to the record instead. */
export async function writingSeat(): Promise<Seat> {
  const mine = await farmerSeat();
  if (!mine.mayWrite) redirect("/record");
  return mine;
}

async function seatAs(role: Seat["role"]): Promise<Seat> {
  const mine = await seat();
  if (!mine) redirect("/");
  if (mine.role !== role) redirect(homeOf(mine.role));
  return mine;
}
