import {
  type Db,
  deliveryPreferences,
  memberships,
  privateLinks,
  withPresentedKey,
  withUser,
} from "@pith/db";
import { and, eq, isNull } from "drizzle-orm";
import type { Ctx } from "../context.ts";
import { notFound } from "../errors.ts";
import { sha256Hex } from "../ledger/canonical.ts";
import { LINK_SECRET } from "./secrets.ts";
import { ordinaryWishes, storedWishes } from "./wishes.ts";
import { zoneOf } from "./zone.ts";

/** Turns mail of one office off by the link that came with it. It works once; a link that was used is not there. */
export async function stopMail(db: Db, now: () => Date, secret: string): Promise<{ done: true }> {
  const link = await presentedLink(db, secret, "stop-mail");
  const at = now().toISOString();
  const ordinary = storedWishes(await untilTheySay(db, now, link));
  await withUser(db, link.userId, async (tx) => {
    const used = await tx
      .update(privateLinks)
      .set({ revokedAt: at, lastUsedAt: at })
      .where(
        and(
          eq(privateLinks.officeId, link.officeId),
          eq(privateLinks.id, link.id),
          isNull(privateLinks.revokedAt),
        ),
      )
      .returning({ id: privateLinks.id });
    if (used.length === 0) throw notFound("link");
    const here = { officeId: link.officeId, userId: link.userId };
    await tx
      .insert(deliveryPreferences)
      .values({ ...here, ...ordinary, mail: "off", changedAt: at })
      .onConflictDoUpdate({
        target: [deliveryPreferences.officeId, deliveryPreferences.userId],
        set: { mail: "off", changedAt: at },
      });
  });
  return { done: true };
}

/** What holds for the person while they have chosen nothing: their night is their farm's, and what is pushed later keeps to it. */
async function untilTheySay(db: Db, now: Ctx["now"], { officeId, userId }: Link) {
  const [member] = await withUser(db, userId, (tx) =>
    tx
      .select({ role: memberships.role, farmIds: memberships.farmIds })
      .from(memberships)
      .where(and(eq(memberships.officeId, officeId), eq(memberships.userId, userId))),
  );
  const { role, farmIds } = member ?? { role: "reader" as const, farmIds: [] };
  const actor = { userId, name: "", role, farmIds };
  return ordinaryWishes(role, await zoneOf({ db, officeId, actor, requestId: "stop-mail", now }));
}

type Link = Awaited<ReturnType<typeof presentedLink>>;

/** The link that was presented, if it stands. Any other looks like one that never was. */
export async function presentedLink(db: Db, secret: string, kind: "calendar" | "stop-mail") {
  if (!LINK_SECRET.test(secret)) throw notFound("link");
  const sha256 = await sha256Hex(secret);
  const [link] = await withPresentedKey(db, sha256, (tx) =>
    tx
      .select()
      .from(privateLinks)
      .where(
        and(
          eq(privateLinks.secretSha256, sha256),
          eq(privateLinks.kind, kind),
          isNull(privateLinks.revokedAt),
        ),
      ),
  );
  if (!link) throw notFound("link");
  return link;
}
