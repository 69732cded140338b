import type { StandingOrderTerms } from "@pith/contract";
import { type Db, ledgerEntries } from "@pith/db";
import { adviseAgain, type Ctx, getDraft, getRound, signStandingOrder } from "@pith/services";
import { desc, eq } from "drizzle-orm";
import { asOffice, makeAgent } from "../support/factories.ts";
import { makeSeason } from "./season.ts";

/** The season's farm with a lead and a second agent beside its agent. */
export async function makeStaffedSeason(db: Db) {
  const season = await makeSeason(db);
  const { office, agent } = season;
  const join = async (name: string, role: "lead" | "agent"): Promise<Ctx> => {
    const { userId } = await makeAgent(db, office, { name, role });
    return { ...agent, actor: { userId, name, role, farmIds: "*" } };
  };
  return { ...season, lead: await join("Hild Sandpiper", "lead"), second: await join("Bo Dunlin", "agent") };
}

export type StaffedSeason = Awaited<ReturnType<typeof makeStaffedSeason>>;

/** The draft of one rule, with the state that it names. */
export async function draftOf({ agent }: StaffedSeason, ruleId: string) {
  await adviseAgain(agent, {});
  const draft = (await getRound(agent, {})).drafts.find((d) => d.ruleId === ruleId);
  if (!draft) throw new Error(`no advice of ${ruleId} is drafted`);
  return getDraft(agent, draft.id);
}

/** What the newest entry of the ledger says. */
export async function newestEntry({ office, agent }: StaffedSeason) {
  const [row] = await asOffice(agent.db, office.id, (tx) =>
    tx
      .select()
      .from(ledgerEntries)
      .where(eq(ledgerEntries.officeId, office.id))
      .orderBy(desc(ledgerEntries.seq))
      .limit(1),
  );
  return { seq: row?.seq ?? 0, kind: row?.kind, body: JSON.parse(row?.body ?? "{}") };
}

/** A watering order that nothing but its decision bounds. */
export const terms = (over: Partial<StandingOrderTerms> = {}): StandingOrderTerms => ({
  decisionCodes: ["water-now"],
  mostPerWeek: 7,
  leastGrade: null,
  measuredOnly: false,
  hours: null,
  mostAmounts: {},
  endsOn: "2026-09-30",
  ...over,
});
export const sign = ({ agent, farm }: StaffedSeason, over: Partial<StandingOrderTerms> = {}) =>
  signStandingOrder(agent, farm.id, { ruleId: "irrigate", terms: terms(over) });
