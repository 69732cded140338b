import type { Role } from "@pith/contract";
import { privateLinks, pushSubscriptions } from "@pith/db";
import type { Language } from "@pith/rules";
import { and, eq, lt } from "drizzle-orm";
import { type Ctx, inOffice, nowOf } from "../context.ts";
import { sha256Hex } from "../ledger/canonical.ts";
import { mailOf } from "./mailOf.ts";
import type { DeliveryMeans } from "./means.ts";
import type { News } from "./news.ts";
import { newLinkSecret } from "./secrets.ts";
import { textOf } from "./textOf.ts";
import { linkTo, oneLine, titleOf } from "./words.ts";

/** Each way carries its news and says of each what became of it. */

export type Carried = { state: "sent" | "dropped"; outcome: string } | { state: "again"; outcome: string };

export interface Recipient {
  userId: string;
  /** Null for somebody who belongs to the office no more. */
  role: Role | null;
  farmIds: string[];
  mailTo: string | null;
  textTo: string | null;
  timeZone: string;
  language: Language;
}

const dropped = (outcome: string): Carried => ({ state: "dropped", outcome });
const SENT: Carried = { state: "sent", outcome: "sent" };
const DAY_MS = 86_400_000;

/** One letter with all of it. */
export async function carryMail(
  ctx: Ctx,
  means: DeliveryMeans,
  who: Recipient,
  news: News[],
): Promise<Carried> {
  if (!ctx.mail) return dropped("no mail is sent from here");
  if (who.mailTo === null) return dropped("no address is known");
  const secret = await newStopLink(ctx, who.userId);
  const stopUrl = `${means.dashboardUrl}/stop-mail/${secret}`;
  const mail = mailOf(news, { ...who, address: who.mailTo, dashboardUrl: means.dashboardUrl, stopUrl });
  try {
    // The same letter sent twice says that it is the same.
    await ctx.mail(mail, await sha256Hex(news.map((each) => each.id).join()));
    return SENT;
  } catch {
    return { state: "again", outcome: "the mail server did not take it" };
  }
}

async function newStopLink(ctx: Ctx, userId: string): Promise<string> {
  const secret = newLinkSecret();
  const secretSha256 = await sha256Hex(secret);
  const old = new Date(ctx.now().getTime() - 90 * DAY_MS).toISOString();
  await inOffice(ctx, async (tx) => {
    const theirs = and(eq(privateLinks.officeId, ctx.officeId), eq(privateLinks.userId, userId));
    await tx
      .delete(privateLinks)
      .where(and(theirs, eq(privateLinks.kind, "stop-mail"), lt(privateLinks.madeAt, old)));
    await tx
      .insert(privateLinks)
      .values({ officeId: ctx.officeId, userId, kind: "stop-mail", secretSha256, madeAt: nowOf(ctx) });
  });
  return secret;
}

export async function carryText(means: DeliveryMeans, who: Recipient, news: News): Promise<Carried> {
  if (!means.text) return dropped("no text messages are sent from here");
  if (who.textTo === null) return dropped("no number is known");
  try {
    await means.text.send(who.textTo, textOf(news, { ...who, dashboardUrl: means.dashboardUrl }));
    return SENT;
  } catch {
    return { state: "again", outcome: "the text service did not take it" };
  }
}

/** As a push service says that it is gone for good. */
const NO_SUCH_BROWSER = 410;

/** A key that is no point of its curve seals nothing, now or later. */
function sealedFor<T>(seal: () => T): T | undefined {
  try {
    return seal();
  } catch {
    return undefined;
  }
}

/**
 * To each browser of the person, all at once; one that is gone for good is forgotten. One that lets us wait is `silent`
 * for the rest of the errand: others wait behind it.
 */
export async function carryPush(
  ctx: Ctx,
  means: DeliveryMeans,
  who: Recipient,
  news: News,
  silent: Set<string>,
): Promise<Carried> {
  const { push, post } = means;
  if (!push?.sealed || !post) return dropped("nothing is pushed from here");
  const browsers = await inOffice(ctx, (tx) =>
    tx
      .select()
      .from(pushSubscriptions)
      .where(and(eq(pushSubscriptions.officeId, ctx.officeId), eq(pushSubscriptions.userId, who.userId))),
  );
  const words = JSON.stringify({
    title: titleOf(news, who.language),
    farm: oneLine(news.farmName, 80),
    link: linkTo("", news),
  });
  // A push service keeps it for a browser that sleeps, but not past the hour to act by.
  const left = news.actBy === null ? DAY_MS : Date.parse(news.actBy) - ctx.now().getTime();
  const aliveS = Math.round(Math.min(Math.max(left, DAY_MS / 24), 7 * DAY_MS) / 1000);
  const tell = async (browser: (typeof browsers)[number]): Promise<"sent" | "gone" | "again"> => {
    if (silent.has(browser.id)) return "again";
    const sealed = sealedFor(() => push.sealed?.(browser, words, { urgent: news.frost, aliveS }));
    const { status } = sealed ? await post(sealed) : { status: NO_SUCH_BROWSER };
    if (status === 404 || status === NO_SUCH_BROWSER) {
      await inOffice(ctx, (tx) =>
        tx
          .delete(pushSubscriptions)
          .where(and(eq(pushSubscriptions.officeId, ctx.officeId), eq(pushSubscriptions.id, browser.id))),
      );
      return "gone";
    }
    if (status === null) silent.add(browser.id);
    return status !== null && status >= 200 && status < 300 ? "sent" : "again";
  };
  const outcomes = await Promise.all(browsers.map(tell));
  // One that was told is enough: to try the others again would tell it twice.
  if (outcomes.includes("sent")) return SENT;
  if (outcomes.includes("again")) return { state: "again", outcome: "the push service did not take it" };
  return dropped("no browser lets itself be told");
}
