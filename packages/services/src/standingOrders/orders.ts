import type { IssuingSettings, StandingOrder, StandingOrderTerms } from "@pith/contract";
import { advisories, memberships, sites, standingOrders, type Tx } from "@pith/db";
import { localDay, rules } from "@pith/rules";
import { and, asc, desc, eq, inArray, sql } from "drizzle-orm";
import { orderWantsSecond, readIssuingSettings } from "../advice/issuingSettings.ts";
import { peopleIn, readNames } from "../advice/names.ts";
import { type Ctx, isStaff, nowOf } from "../context.ts";
import { found, notFound } from "../errors.ts";

export type OrderRow = typeof standingOrders.$inferSelect;

/** The version of an order that is or was the last, if this person may see its farm. */
export async function requireOrder(tx: Tx, ctx: Ctx, orderId: string): Promise<OrderRow> {
  const [row] = await tx
    .select()
    .from(standingOrders)
    .where(and(eq(standingOrders.officeId, ctx.officeId), eq(standingOrders.id, orderId)))
    .orderBy(desc(standingOrders.version))
    .limit(1);
  const { farmIds } = ctx.actor;
  if (!row || (farmIds !== "*" && !farmIds.includes(row.farmId))) throw notFound("standing order");
  return row;
}

export const thisOrder = ({ officeId, id, version }: OrderRow) =>
  and(eq(standingOrders.officeId, officeId), eq(standingOrders.id, id), eq(standingOrders.version, version));

/** The newest version of each order, those that stand first. */
export async function readOrders(
  tx: Tx,
  ctx: Ctx,
  which: { farmId?: string | undefined; orderId?: string; ended?: boolean },
): Promise<StandingOrder[]> {
  const { officeId } = ctx;
  const rows = await tx
    .selectDistinctOn([standingOrders.id])
    .from(standingOrders)
    .where(
      and(
        eq(standingOrders.officeId, officeId),
        which.farmId === undefined ? undefined : eq(standingOrders.farmId, which.farmId),
        which.orderId === undefined ? undefined : eq(standingOrders.id, which.orderId),
      ),
    )
    .orderBy(asc(standingOrders.id), desc(standingOrders.version));
  const shown = rows.filter((row) => which.orderId !== undefined || which.ended || row.endedAt === null);
  if (shown.length === 0) return [];
  const farmIds = [...new Set(shown.map((row) => row.farmId))];
  const names = await readNames(tx, ctx, farmIds);
  const people = await peopleIn(
    tx,
    officeId,
    shown.flatMap((row) => [row.signedBy, row.confirmedBy ?? []].flat()),
  );
  const nameOf = (userId: string) => people.get(userId) ?? "a former member";
  const judge = await readJudge(tx, ctx, farmIds, shown);
  return shown
    .map((row): StandingOrder => {
      const terms = row.terms as unknown as StandingOrderTerms;
      return {
        id: row.id,
        version: row.version,
        farmId: row.farmId,
        farmName: names.farm(row.farmId).name,
        ruleId: row.ruleId,
        ruleVersion: row.ruleVersion,
        terms,
        signedBy: nameOf(row.signedBy),
        signedAt: row.signedAt,
        confirmedBy: row.confirmedBy === null ? null : nameOf(row.confirmedBy),
        confirmedAt: row.confirmedAt,
        state: judge.stateOf(row),
        mine: row.signedBy === ctx.actor.userId,
        ...judge.issuedOn(row.id),
      };
    })
    .sort((a, b) => order(a) - order(b) || a.farmName.localeCompare(b.farmName, "en"));
}

const order = ({ state }: StandingOrder) => (state === "ended" ? 2 : state === "in-force" ? 0 : 1);

export async function readOrder(tx: Tx, ctx: Ctx, orderId: string): Promise<StandingOrder> {
  return found((await readOrders(tx, ctx, { orderId }))[0], "standing order");
}

/** What tells whether an order issues now, read once for many. */
export async function readJudge(tx: Tx, ctx: Ctx, farmIds: string[], orders: OrderRow[]) {
  const { officeId } = ctx;
  const now = nowOf(ctx);
  const settings = await readIssuingSettings(tx, officeId);
  const zones = await tx
    .selectDistinctOn([sites.farmId], { farmId: sites.farmId, timeZone: sites.timeZone })
    .from(sites)
    .where(and(eq(sites.officeId, officeId), inArray(sites.farmId, farmIds)))
    .orderBy(sites.farmId, sites.id);
  const signers = await tx
    .select({ userId: memberships.userId, role: memberships.role })
    .from(memberships)
    .where(
      and(
        eq(memberships.officeId, officeId),
        inArray(
          memberships.userId,
          orders.flatMap((o) => [o.signedBy, o.confirmedBy ?? []].flat()),
        ),
      ),
    );
  const staff = new Set(signers.filter(({ role }) => isStaff(role)).map(({ userId }) => userId));
  const weekAgo = new Date(ctx.now().getTime() - WEEK_MS).toISOString();
  const counts = await tx
    .select({
      orderId: advisories.standingOrderId,
      issued: sql<number>`count(*)::int`,
      issuedThisWeek: sql<number>`(count(*) filter (where ${advisories.issuedAt} > ${weekAgo}::timestamptz))::int`,
    })
    .from(advisories)
    .where(
      and(
        eq(advisories.officeId, officeId),
        inArray(
          advisories.standingOrderId,
          orders.map((o) => o.id),
        ),
      ),
    )
    .groupBy(advisories.standingOrderId);
  return {
    settings,
    stateOf: (row: OrderRow): StandingOrder["state"] =>
      stateOf(row, {
        settings,
        signersAreStaff: staff.has(row.signedBy) && (row.confirmedBy === null || staff.has(row.confirmedBy)),
        today: localDay(now, zones.find((z) => z.farmId === row.farmId)?.timeZone ?? "UTC"),
      }),
    issuedOn: (orderId: string): { issued: number; issuedThisWeek: number } => {
      const { issued = 0, issuedThisWeek = 0 } = counts.find((c) => c.orderId === orderId) ?? {};
      return { issued, issuedThisWeek };
    },
  };
}

const WEEK_MS = 7 * 86_400_000;

/** Whether an order issues, and if not, why: it must be signed by who is still staff, for this version of the rule. */
function stateOf(
  row: OrderRow,
  {
    settings,
    signersAreStaff,
    today,
  }: { settings: IssuingSettings; signersAreStaff: boolean; today: string },
): StandingOrder["state"] {
  if (row.endedAt !== null) return "ended";
  if (row.endsOn < today) return "past";
  if (!signersAreStaff) return "signer-gone";
  if (rules.find((rule) => rule.id === row.ruleId)?.version !== row.ruleVersion) return "outdated";
  if (orderWantsSecond(settings, row.ruleId) && row.confirmedBy === null) return "waiting";
  return row.pausedAt === null ? "in-force" : "paused";
}
