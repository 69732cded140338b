import type { Said } from "@pith/contract";
import { advisories, deliveries, farms, warnings } from "@pith/db";
import type { Answer, Language } from "@pith/rules";
import { and, eq, inArray } from "drizzle-orm";
import { type Ctx, inOffice } from "../context.ts";
import { saidIn } from "../ledger/rendered.ts";
import { warnsOfFrost } from "./frost.ts";

/** One row of the outbox with everything its words are made of, read when it is sent. */
export interface News {
  id: string;
  channel: "mail" | "push" | "text";
  about: "advice" | "unread";
  advisoryId: string;
  farmId: string;
  attempts: number;
  farmName: string;
  phone: string | null;
  said: Said;
  frost: boolean;
  actBy: string | null;
  /** It still waits to be done; for the office, that nobody has read it. */
  stands: boolean;
}

/** @param language in which the advice is said, as it was issued */
export async function readNews(ctx: Ctx, ids: string[], language: Language): Promise<News[]> {
  const rows = await inOffice(ctx, (tx) =>
    tx
      .select({
        row: deliveries,
        farm: { name: farms.name, phone: farms.phone },
        advisory: {
          status: advisories.status,
          expiresAt: advisories.expiresAt,
          rendered: advisories.rendered,
          answer: advisories.answer,
        },
        calledAt: warnings.calledAt,
      })
      .from(deliveries)
      .innerJoin(
        advisories,
        and(eq(advisories.officeId, deliveries.officeId), eq(advisories.id, deliveries.advisoryId)),
      )
      .innerJoin(farms, and(eq(farms.officeId, deliveries.officeId), eq(farms.id, deliveries.farmId)))
      .leftJoin(
        warnings,
        and(eq(warnings.officeId, deliveries.officeId), eq(warnings.advisoryId, deliveries.advisoryId)),
      )
      .where(and(eq(deliveries.officeId, ctx.officeId), inArray(deliveries.id, ids)))
      .orderBy(deliveries.dueAt, deliveries.madeAt),
  );
  return rows.map(({ row, farm, advisory, calledAt }) => {
    const answer = advisory.answer as unknown as Extract<Answer, { kind: "advice" }>;
    const lapsed = advisory.expiresAt !== null && Date.parse(advisory.expiresAt) <= ctx.now().getTime();
    const waits = row.about === "advice" ? ["issued", "read"] : ["issued"];
    return {
      id: row.id,
      channel: row.channel,
      about: row.about,
      advisoryId: row.advisoryId,
      farmId: row.farmId,
      attempts: row.attempts,
      farmName: farm.name,
      phone: farm.phone,
      said: saidIn(advisory.rendered, language),
      frost: warnsOfFrost(answer),
      actBy: answer.stakes.actBy,
      stands: waits.includes(advisory.status) && !lapsed && calledAt === null,
    };
  });
}
