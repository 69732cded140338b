import {
  type Advisory,
  type AdvisoryDetail,
  adviceRoutes,
  type Draft,
  type FarmDetail,
  farmRoutes,
  type Records,
} from "@pith/contract";
import { todayIn } from "../../format/dates.ts";
import { call } from "../../server/api.ts";
import type { Seat } from "../../server/seat.ts";
import { allAdvisories } from "../advice/allAdvisories.ts";
import { wholeRecords } from "../records/wholeRecords.ts";

/** What the shed sheet is put together from: each planting's feed, each bed's lime and ash, and the shed's own advice. */
export interface SheetSource {
  ruleId: string;
  subjectName: string;
  plantingIds: string[];
  said: AdvisoryDetail["said"];
  answer: AdvisoryDetail["answerOfRule"];
  /** Null for a draft, which nobody has put their name to yet. */
  issued: Pick<Advisory, "issuedBy" | "issuedAt" | "ledgerSeq" | "status"> | null;
  madeAt: string;
  /** Where the whole advice can be read. */
  href: string;
}

export interface Sheet {
  detail: FarmDetail;
  records: Records;
  today: string;
  sources: SheetSource[];
  /** Plantings whose feeding cannot be said yet, with the reason. */
  unsaid: Draft[];
}

const ON_THE_SHEET = ["feeding", "containers", "wood-ash", "lime", "shed"];
/** Spread once and not by the week. */
const SPREAD_ONCE = new Set(["wood-ash", "lime"]);
/** Their answers that ask for something to be spread; the others say no, or not yet. */
const ASKS = new Set(["spread", "wait", "lime", "lime-wait", "lime-next-part", "lime-after-crop", "sulfur"]);
const GONE = new Set(["withdrawn", "superseded"]);
const SETTLED = new Set(["done", "cannot"]);
/** Issued advice whose week lasts goes first; for the agent a draft stands in where there is none. */
export async function gatherSheet({ officeId, role }: Seat, farmId: string): Promise<Sheet> {
  const params = { officeId, farmId };
  const [detail, records, advisories, drafts] = await Promise.all([
    call(farmRoutes.getFarm, { params }),
    wholeRecords(params, ["deliveries"]),
    Promise.all(ON_THE_SHEET.map((ruleId) => allAdvisories(officeId, { farmId, ruleId }))).then((all) =>
      all.flat(),
    ),
    role === "agent" ? openDrafts(officeId, farmId) : [],
  ]);
  const today = todayIn(detail.sites[0]?.timeZone);
  const standing = new Set(detail.plantings.filter((p) => p.endedOn === null).map((p) => p.id));
  // Lime is a bed's, which may stand empty.
  const concerns = (one: { ruleId: string; plantingIds: string[] }) =>
    one.ruleId === "shed" || one.ruleId === "lime" || one.plantingIds.some((id) => standing.has(id));
  const issued = newestOfEach(advisories.filter((one) => !GONE.has(one.status) && concerns(one))).filter(
    (one) => (role === "farmer" || one.windowTo === null || one.windowTo >= today) && !hasLapsed(one),
  );
  const told = new Set(issued.map(keyOf));
  const advice = drafts.filter(
    (one) =>
      one.kind === "advice" &&
      !told.has(keyOf(one)) &&
      (!SPREAD_ONCE.has(one.ruleId) || ASKS.has(one.decisionCode ?? "")),
  );
  const toDo = issued.filter(
    (one) =>
      !SPREAD_ONCE.has(one.ruleId) || (one.expected?.kind === "application" && !SETTLED.has(one.status)),
  );
  const sources = await Promise.all([
    ...toDo.map((one) => sourceOfAdvisory(officeId, one, role)),
    ...advice.map((one) => sourceOfDraft(officeId, one)),
  ]);
  return {
    detail,
    records,
    today,
    sources: sources.sort(
      (a, b) => a.ruleId.localeCompare(b.ruleId) || a.subjectName.localeCompare(b.subjectName),
    ),
    unsaid: drafts.filter(
      (one) =>
        (one.ruleId === "feeding" || one.ruleId === "containers") &&
        (one.kind === "needs-more" || one.kind === "refused"),
    ),
  };
}

/** Rule by rule: a farm's drafts of all rules are more than one page. What was put off for the round is due all the same. */
async function openDrafts(officeId: string, farmId: string): Promise<Draft[]> {
  const rounds = await Promise.all(
    ON_THE_SHEET.map((ruleId) =>
      call(adviceRoutes.getRound, {
        params: { officeId },
        query: { farmId, ruleId, all: "yes", setAside: "yes", limit: 1000 },
      }),
    ),
  );
  return rounds.flatMap(({ drafts }) => drafts);
}

/** What is spread once and was not by its day is not to be spread any more; a feed goes on until the next says otherwise. */
const hasLapsed = ({ ruleId, status }: Advisory) => SPREAD_ONCE.has(ruleId) && status === "expired";

/** The API names the newest first. */
const newestOfEach = (advisories: Advisory[]) =>
  advisories.filter((one, i) => advisories.findIndex((other) => keyOf(other) === keyOf(one)) === i);

/** A shed is one; the rest is a planting's or, as lime, a bed's. */
const keyOf = ({ ruleId, subjectId }: Pick<Advisory, "ruleId" | "subjectId">): string =>
  ruleId === "shed" ? ruleId : `${ruleId} ${subjectId}`;

async function sourceOfAdvisory(
  officeId: string,
  { id }: Advisory,
  role: Seat["role"],
): Promise<SheetSource> {
  const advisory = await call(adviceRoutes.getAdvisory, { params: { officeId, advisoryId: id } });
  return {
    ...advisory,
    answer: advisory.answerOfRule,
    issued: advisory,
    madeAt: advisory.issuedAt,
    href: `${role === "agent" ? "/issued" : "/today"}/${id}`,
  };
}

async function sourceOfDraft(officeId: string, { id }: Draft): Promise<SheetSource> {
  const draft = await call(adviceRoutes.getDraft, { params: { officeId, draftId: id } });
  return { ...draft, issued: null, href: `/drafts/${id}` };
}
