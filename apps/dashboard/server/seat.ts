import { openRoutes } from "@pith/contract";
import { redirect } from "next/navigation";
import { cache } from "react";
import { call } from "./api.ts";

/** Who sits here: the person in their office. */
export interface Seat {
  name: string;
  officeId: string;
  officeName: string;
  role: "agent" | "farmer";
}

/** The signed-in person's place; null for somebody who belongs to no office. */
export const seat = cache(async (): Promise<Seat | null> => {
  const { user, memberships } = await call(openRoutes.me, {});
  const membership = memberships.find((m) => m.role === "agent") ?? memberships[0];
  if (!membership) return null;
  return { name: user.name, ...membership };
});

export const homeOf = (role: Seat["role"]) => (role === "agent" ? "/round" : "/today");

/** For an agent's page: others are led to their own. */
export const agentSeat = () => seatAs("agent");
/** For a farmer's page: others are led to their own. */
export const farmerSeat = () => seatAs("farmer");

async function seatAs(role: Seat["role"]): Promise<Seat> {
  const mine = await seat();
  if (!mine) redirect("/");
  if (mine.role !== role) redirect(homeOf(mine.role));
  return mine;
}
