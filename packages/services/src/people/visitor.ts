import type { Ctx } from "../context.ts";

/** A person who acts outside any office: at its door, or on their own account. */
export interface Visitor {
  db: Ctx["db"];
  userId: string;
  requestId: string;
  now: () => Date;
}

/**
 * What the office does in the person's name where they have no hand of their own: it lets them in or go, keeps what they
 * are called, and writes down that they signed in. Whether they may is settled before.
 */
export const byTheOffice = ({ db, userId, requestId, now }: Visitor, officeId: string): Ctx => ({
  db,
  officeId,
  requestId,
  now,
  actor: { userId, name: "", role: "lead", farmIds: "*" },
});
