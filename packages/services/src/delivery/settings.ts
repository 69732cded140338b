import { type DeliverySettings, deliveryRoutes, type Wishes } from "@pith/contract";
import { deliveries, deliveryPreferences, pushSubscriptions, type Tx, withUser } from "@pith/db";
import { refuse } from "@pith/rules";
import { and, asc, desc, eq } from "drizzle-orm";
import { type Ctx, nowOf } from "../context.ts";
import { notFound, ServiceError } from "../errors.ts";
import { sha256Hex } from "../ledger/canonical.ts";
import { bodyOf } from "../wellFormed.ts";
import { outwardProblem } from "./outward.ts";
import { ordinaryWishes, storedWishes, wishesOf } from "./wishes.ts";
import { zoneOf } from "./zone.ts";

/** A person's own settings in one office. They are theirs, whatever their role: nobody else's hand changes them. */

const BROWSERS = 10;
const SENT = 30;

const asOneself = <T>(ctx: Ctx, work: (tx: Tx) => Promise<T>): Promise<T> =>
  withUser(ctx.db, ctx.actor.userId, work);
const mine = (ctx: Ctx, t: typeof deliveryPreferences | typeof pushSubscriptions | typeof deliveries) =>
  and(eq(t.officeId, ctx.officeId), eq(t.userId, ctx.actor.userId));

/** How one wants to be told, and what was sent last. */
export async function getDelivery(ctx: Ctx, email: string): Promise<DeliverySettings> {
  const means = ctx.delivery;
  const timeZone = await zoneOf(ctx);
  return asOneself(ctx, async (tx) => {
    const [said] = await tx.select().from(deliveryPreferences).where(mine(ctx, deliveryPreferences));
    const browsers = await tx
      .select()
      .from(pushSubscriptions)
      .where(mine(ctx, pushSubscriptions))
      .orderBy(asc(pushSubscriptions.addedAt));
    const sent = await tx
      .select()
      .from(deliveries)
      .where(mine(ctx, deliveries))
      .orderBy(desc(deliveries.madeAt), asc(deliveries.channel))
      .limit(SENT);
    return {
      wishes: said ? wishesOf(said) : ordinaryWishes(ctx.actor.role, timeZone, ctx.language ?? "en"),
      chosen: said !== undefined,
      mailTo: said?.mailTo ?? email,
      offered: {
        mail: means?.mail ?? false,
        text: means?.text !== undefined,
        pushKey: means?.push?.publicKey ?? null,
      },
      browsers: browsers.map(({ id, endpoint, endpointSha256, addedAt }) => ({
        id,
        service: new URL(endpoint).hostname,
        endpointSha256,
        addedAt,
      })),
      sent: sent.map(({ advisoryId, channel, about, dueAt, state, sentAt, outcome }) => ({
        advisoryId,
        channel,
        about,
        dueAt,
        state,
        sentAt,
        outcome,
      })),
    };
  });
}

/** Says how one wants to be told. Mail goes to the address one signs in with, never to one that is typed in. */
export async function changeDelivery(ctx: Ctx, email: string, raw: unknown): Promise<DeliverySettings> {
  const wishes = bodyOf(deliveryRoutes.changeDelivery, raw);
  if (wishes.text !== "off" && !ctx.delivery?.text) {
    refuse("text", "is not offered: no text messages are sent from here", "off", wishes.text);
  }
  if (wishes.text !== "off" && wishes.textTo === null) {
    refuse("textTo", "must be given for text messages", "a number with the country's code", null);
  }
  if (wishes.quiet?.from === wishes.quiet?.to && wishes.quiet !== null) {
    refuse("quiet", "must end at another time than it begins, or be left out", "null", wishes.quiet.to);
  }
  await asOneself(ctx, (tx) => keepWishes(tx, ctx, email, wishes));
  return getDelivery(ctx, email);
}

async function keepWishes(tx: Tx, ctx: Ctx, email: string, wishes: Wishes): Promise<void> {
  const row = { ...storedWishes(wishes), mailTo: email, changedAt: nowOf(ctx) };
  await tx
    .insert(deliveryPreferences)
    .values({ officeId: ctx.officeId, userId: ctx.actor.userId, ...row })
    .onConflictDoUpdate({ target: [deliveryPreferences.officeId, deliveryPreferences.userId], set: row });
}

/** Lets a browser be told. The first one turns the way on: whoever asks a phone to tell them wants to be told. */
export async function addBrowser(ctx: Ctx, email: string, raw: unknown): Promise<{ id: string }> {
  const { endpoint, keys } = bodyOf(deliveryRoutes.addBrowser, raw);
  if (!ctx.delivery?.push) throw new ServiceError("invalid", "Nothing is pushed from here.");
  const problem = outwardProblem(endpoint, false);
  if (problem) refuse("endpoint", problem, "an https address of a push service", endpoint);
  const endpointSha256 = await sha256Hex(endpoint);
  const timeZone = await zoneOf(ctx);
  return asOneself(ctx, async (tx) => {
    const known = await tx
      .select({ id: pushSubscriptions.id, endpointSha256: pushSubscriptions.endpointSha256 })
      .from(pushSubscriptions)
      .where(mine(ctx, pushSubscriptions));
    if (known.length >= BROWSERS && !known.some((row) => row.endpointSha256 === endpointSha256)) {
      throw new ServiceError("conflict", `At most ${BROWSERS} browsers are told; take one away first.`);
    }
    const [row] = await tx
      .insert(pushSubscriptions)
      .values({
        officeId: ctx.officeId,
        userId: ctx.actor.userId,
        endpoint,
        endpointSha256,
        ...keys,
        addedAt: nowOf(ctx),
      })
      .onConflictDoUpdate({
        target: [pushSubscriptions.officeId, pushSubscriptions.userId, pushSubscriptions.endpointSha256],
        set: keys,
      })
      .returning({ id: pushSubscriptions.id });
    const [said] = await tx.select().from(deliveryPreferences).where(mine(ctx, deliveryPreferences));
    const wishes = said ? wishesOf(said) : ordinaryWishes(ctx.actor.role, timeZone, ctx.language ?? "en");
    if (wishes.push === "off") await keepWishes(tx, ctx, email, { ...wishes, push: "at-once" });
    return { id: row?.id ?? "" };
  });
}

/** Tells this browser no more. */
export async function removeBrowser(ctx: Ctx, browserId: string): Promise<{ done: true }> {
  const gone = await asOneself(ctx, (tx) =>
    tx
      .delete(pushSubscriptions)
      .where(and(mine(ctx, pushSubscriptions), eq(pushSubscriptions.id, browserId)))
      .returning({ id: pushSubscriptions.id }),
  );
  if (gone.length === 0) throw notFound("browser");
  return { done: true };
}
