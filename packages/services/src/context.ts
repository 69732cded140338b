import type { Role } from "@pith/contract";
import { type Acting, type Db, memberships, offices, type Tx, withOffice, withUser } from "@pith/db";
import type { Language } from "@pith/rules";
import { eq } from "drizzle-orm";
import type { DeliveryMeans } from "./delivery/means.ts";
import { notFound, ServiceError } from "./errors.ts";
import type { LedgerTools } from "./ledger/tools.ts";
import type { Mail } from "./mail/mail.ts";
import type { ForecastSource } from "./weather/source.ts";

/** Who acts. Lead and agent act on every farm of the office, a farmer on the farms named; a reader reads those. */
export interface Actor {
  userId: string;
  name: string;
  role: Role;
  farmIds: "*" | string[];
}

/** What every verb is given: nothing else is read from outside. */
export interface Ctx {
  db: Db;
  officeId: string;
  actor: Actor;
  requestId: string;
  now: () => Date;
  /** In which language the caller reads; English unless said. */
  language?: Language;
  /** What the caller has read of the thing to be changed, as the tags of `If-Match`. */
  ifMatch?: string;
  /** Services that forecasts can be pulled from here; none where the server is not set up for it. */
  forecastSources?: readonly ForecastSource[];
  /** What the ledger is signed with and replayed by; none where the server is not set up for it. */
  ledger?: LedgerTools;
  /** Sends a letter; under the same id it is the same letter. Only where the worker runs: a request wants a job that does. */
  mail?: (mail: Mail, id?: string) => Promise<void>;
  /** What there is here to reach people and other systems with. */
  delivery?: DeliveryMeans;
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
  role: Role;
  /** Empty for lead and agent, who see every farm of the office. */
  farmIds: string[];
  /** The office asks its staff, and this person is of it, for a second step at sign-in. */
  asksSecondStep: boolean;
}[];

/** In which offices a person is, and as what. */
export async function resolveMemberships(db: Db, userId: string): Promise<Memberships> {
  const mine = await withUser(db, userId, (tx) =>
    tx.select().from(memberships).where(eq(memberships.userId, userId)).orderBy(memberships.officeId),
  );
  return Promise.all(
    mine.map(async ({ officeId, role, farmIds }) => {
      const acting: Acting = { officeId, userId, role, farmIds, readOnly: true };
      const [office] = await withOffice(db, acting, (tx) =>
        tx
          .select({ name: offices.name, secondStepForStaff: offices.secondStepForStaff })
          .from(offices)
          .where(eq(offices.id, officeId)),
      );
      return {
        officeId,
        officeName: office?.name ?? "",
        role,
        farmIds: isStaff(role) ? [] : farmIds,
        asksSecondStep: isStaff(role) && office?.secondStepForStaff === true,
      };
    }),
  );
}

/** Lead and agent belong to the office and act on all of its farms. */
export const isStaff = (role: Role): role is "lead" | "agent" => role === "lead" || role === "agent";

/** Refuses whoever is not staff of the office. */
export function requireAgent(ctx: Ctx): void {
  if (!isStaff(ctx.actor.role))
    throw new ServiceError("forbidden", "Only an agent of the office may do this.");
}

/** Refuses whoever does not lead the office. */
export function requireLead(ctx: Ctx): void {
  if (ctx.actor.role !== "lead")
    throw new ServiceError("forbidden", "Only a lead of the office may do this.");
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
 * Whether they may do it at all is settled before. A reader's transaction writes nothing.
 */
export const forOffice = <T>(ctx: Ctx, work: (tx: Tx) => Promise<T>): Promise<T> =>
  withOffice(ctx.db, { ...actingAs(ctx), role: "agent", readOnly: ctx.actor.role === "reader" }, work);

function actingAs({ officeId, actor: { role, farmIds, userId } }: Ctx): Acting {
  if (isStaff(role)) return { officeId, userId, role, farmIds };
  return { officeId, userId, role, farmIds: farmIds === "*" ? [] : farmIds };
}

/** The instant of this request, as it is stored. */
export const nowOf = (ctx: Ctx): string => ctx.now().toISOString();
