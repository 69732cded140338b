import {
  advisories,
  type Db,
  deliveryPreferences,
  farms,
  privateLinks,
  sites,
  type Tx,
  withOffice,
  withUser,
} from "@pith/db";
import type { Answer, Language } from "@pith/rules";
import { and, asc, eq, gte, inArray, isNull, or } from "drizzle-orm";
import { isStaff, resolveMemberships } from "../context.ts";
import { presentedLink } from "../delivery/stopMail.ts";
import { notFound } from "../errors.ts";
import { saidIn } from "../ledger/rendered.ts";
import { calendarText, type Dated } from "./calendarText.ts";

const DAY_MS = 86_400_000;
/** What was taken back is shown as cancelled so long, for programs that ask seldom (common practice). */
const CANCELLED_DAYS = 30;

/**
 * The calendar behind an address, as its person may read it today: whoever left the office, or the farm, has none any more.
 */
export async function readCalendar(
  { db, now, dashboardUrl }: { db: Db; now: () => Date; dashboardUrl: string },
  secret: string,
): Promise<string> {
  const link = await presentedLink(db, secret, "calendar");
  const { officeId, userId, farmId } = link;
  const membership = (await resolveMemberships(db, userId)).find((m) => m.officeId === officeId);
  if (!membership || farmId === null) throw notFound("link");
  if (!isStaff(membership.role) && !membership.farmIds.includes(farmId)) throw notFound("link");
  await withUser(db, userId, (tx) =>
    tx
      .update(privateLinks)
      .set({ lastUsedAt: now().toISOString() })
      .where(and(eq(privateLinks.officeId, officeId), eq(privateLinks.id, link.id))),
  );
  // As a reader of this one farm, whoever they are: the address opens nothing else.
  const reading = { officeId, userId, role: "reader" as const, farmIds: [farmId] };
  const language = await languageOf(db, officeId, userId);
  const { farm, dated } = await withOffice(db, reading, (tx) =>
    gather(tx, officeId, farmId, now(), language),
  );
  const role = isStaff(membership.role) ? "issued" : "today";
  return calendarText(farm, dated, (id) => `${dashboardUrl}/${role}/${id}`, language);
}

/** As the person said that they want to be told. */
const languageOf = async (db: Db, officeId: string, userId: string): Promise<Language> => {
  const [said] = await withUser(db, userId, (tx) =>
    tx
      .select({ language: deliveryPreferences.language })
      .from(deliveryPreferences)
      .where(and(eq(deliveryPreferences.officeId, officeId), eq(deliveryPreferences.userId, userId))),
  );
  return said?.language ?? "en";
};

async function gather(tx: Tx, officeId: string, farmId: string, now: Date, language: Language) {
  const [farm] = await tx
    .select({ name: farms.name })
    .from(farms)
    .where(and(eq(farms.officeId, officeId), eq(farms.id, farmId), isNull(farms.archivedAt)));
  if (!farm) throw notFound("link");
  const [site] = await tx
    .select({ timeZone: sites.timeZone })
    .from(sites)
    .where(and(eq(sites.officeId, officeId), eq(sites.farmId, farmId)))
    .orderBy(asc(sites.id))
    .limit(1);
  const since = new Date(now.getTime() - CANCELLED_DAYS * DAY_MS).toISOString();
  const rows = await tx
    .select()
    .from(advisories)
    .where(
      and(
        eq(advisories.officeId, officeId),
        eq(advisories.farmId, farmId),
        or(
          inArray(advisories.status, ["issued", "read"]),
          and(eq(advisories.status, "withdrawn"), gte(advisories.withdrawnAt, since)),
          and(eq(advisories.status, "superseded"), gte(advisories.supersededAt, since)),
        ),
      ),
    )
    .orderBy(asc(advisories.issuedAt), asc(advisories.ledgerSeq));
  const dated = rows.map((row): Dated => {
    const { window, stakes } = row.answer as unknown as Extract<Answer, { kind: "advice" }>;
    const endedAt = row.withdrawnAt ?? row.supersededAt;
    return {
      id: row.id,
      said: saidIn(row.rendered, language),
      from: window.from,
      to: window.to,
      actBy: stakes.actBy,
      issuedAt: row.issuedAt,
      cancelledAt: row.status === "withdrawn" || row.status === "superseded" ? endedAt : null,
    };
  });
  return { farm: { name: farm.name, timeZone: site?.timeZone ?? "UTC" }, dated };
}
