import {
  type Db,
  deliveryPreferences,
  memberships,
  privateLinks,
  withPresentedKey,
  withUser,
} from "@pith/db";
import { and, eq, isNull } from "drizzle-orm";
import { notFound } from "../errors.ts";
import { sha256Hex } from "../ledger/canonical.ts";
import { LINK_SECRET } from "./secrets.ts";
import { ordinaryWishes, storedWishes } from "./wishes.ts";

/** Turns mail of one office off by the link that came with it. It works once; a link that was used is not there. */
export async function stopMail(db: Db, now: () => Date, secret: string): Promise<{ done: true }> {
  const link = await presentedLink(db, secret, "stop-mail");
  const at = now().toISOString();
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
    const [member] = await tx
      .select({ role: memberships.role })
      .from(memberships)
      .where(and(eq(memberships.officeId, here.officeId), eq(memberships.userId, here.userId)));
    const ordinary = storedWishes(ordinaryWishes(member?.role ?? "reader", "UTC"));
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
