import { type Acting, type Db, memberships, offices, type Tx, withOffice, withUser } from "@pith/db";
import { eq } from "drizzle-orm";
import { notFound, ServiceError } from "./errors.ts";
import type { ForecastSource } from "./weather/source.ts";

/** Who acts. An agent acts on every farm of the office, a farmer on the farms named. */
export interface Actor {
  userId: string;
  name: string;
  role: "agent" | "farmer";
  farmIds: "*" | string[];
}

/** What every verb is given: nothing else is read from outside. */
export interface Ctx {
  db: Db;
  officeId: string;
  actor: Actor;
  requestId: string;
  now: () => Date;
  /** Services that forecasts can be pulled from here; none where the server is not set up for it. */
  forecastSources?: readonly ForecastSource[];
}

/** The server itself, at work for an office: what it does stands in the audit under this id, which is nobody's. */
export const serverItself: Actor = {
  userId: "00000000-0000-0000-0000-000000000000",
  name: "Pith",
  role: "agent",
  farmIds: "*",
};

export type Memberships = {
  officeId: string;
  officeName: string;
  role: "agent" | "farmer";
  /** Empty for an agent, who sees every farm of the office. */
  farmIds: string[];
}[];

/** In which offices a person is, and as what. */
export async function resolveMemberships(db: Db, userId: string): Promise<Memberships> {
  const mine = await withUser(db, userId, (tx) =>
    tx.select().from(memberships).where(eq(memberships.userId, userId)).orderBy(memberships.officeId),
  );
  return Promise.all(
    mine.map(async ({ officeId, role, farmIds }) => {
      const acting: Acting = { officeId, userId, role, farmIds };
      const [office] = await withOffice(db, acting, (tx) =>
        tx.select({ name: offices.name }).from(offices).where(eq(offices.id, officeId)),
      );
      return { officeId, officeName: office?.name ?? "", role, farmIds: role === "agent" ? [] : farmIds };
    }),
  );
}

/** Refuses whoever is not an agent. */
export function requireAgent(ctx: Ctx): void {
  if (ctx.actor.role !== "agent")
    throw new ServiceError("forbidden", "Only an agent of the office may do this.");
}

/** A farm this person has nothing to do with looks like one that is not there. */
export function requireOwnFarm(ctx: Ctx, farmId: string): void {
  const { farmIds } = ctx.actor;
  if (farmIds !== "*" && !farmIds.includes(farmId)) throw notFound("farm");
}

/** One transaction in the office, as who they are. */
export const inOffice = <T>(ctx: Ctx, work: (tx: Tx) => Promise<T>): Promise<T> =>
  withOffice(ctx.db, actingAs(ctx), work);

/**
 * One transaction in the person's name and on their farms alone, but with the office's hand: what a farmer does takes
 * from the shed's stock, is written to the ledger and changes drafts, none of which a farmer may touch by themselves.
 * Whether they may do it at all is settled before.
 */
export const forOffice = <T>(ctx: Ctx, work: (tx: Tx) => Promise<T>): Promise<T> =>
  withOffice(ctx.db, { ...actingAs(ctx), role: "agent" }, work);

function actingAs({ officeId, actor: { role, farmIds, userId } }: Ctx): Acting {
  if (role === "agent") return { officeId, userId, role, farmIds };
  return { officeId, userId, role, farmIds: farmIds === "*" ? [] : farmIds };
}

/** The instant of this request, as it is stored. */
export const nowOf = (ctx: Ctx): string => ctx.now().toISOString();
