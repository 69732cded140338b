import { type Advisory, adviceRoutes, farmRoutes, recordRoutes } from "@pith/contract";
import { addDays } from "@pith/rules";
import { notFound } from "next/navigation";
import { todayIn } from "../../format/dates.ts";
import { localeOf } from "../../format/language.ts";
import { call } from "../../server/api.ts";
import { languageAsked } from "../../server/language.ts";
import type { Seat } from "../../server/seat.ts";
import { closedText } from "../records/closedText.ts";
import { pdfFile } from "./file.ts";
import { signedTo } from "./ledger.ts";
import { type FarmWeek, weekPdf } from "./weekPdf.ts";
import { type PaperWords, paperWords } from "./words.ts";

/** The week of these farms as a file, for whoever may read them. */
export async function weekAnswer(
  { officeId, officeName }: Seat,
  farmIds: readonly string[],
): Promise<Response> {
  const words = paperWords(await languageAsked());
  const [signed, ...weeks] = await Promise.all([
    signedTo(officeId),
    ...farmIds.map((farmId) => weekOf(officeId, farmId, words)),
  ]);
  const [first, ...others] = weeks;
  if (!first) notFound();
  const bytes = await weekPdf(
    [first, ...others],
    { officeName, signed, now: new Date().toISOString() },
    words,
  );
  return pdfFile(bytes, `week-${first.from}.pdf`);
}

/** A farmer's week: of all their farms. */
export async function weekOfMine(seat: Seat): Promise<Response> {
  const { farms } = await call(farmRoutes.listFarms, { params: { officeId: seat.officeId } });
  return weekAnswer(
    seat,
    farms.map(({ id }) => id),
  );
}

async function weekOf(
  officeId: string,
  farmId: string,
  { closed: t, language }: PaperWords,
): Promise<FarmWeek> {
  const params = { officeId, farmId };
  const [detail, { closed }, advisories] = await Promise.all([
    call(farmRoutes.getFarm, { params }),
    call(recordRoutes.getRecords, { params, query: {} }),
    openOf(officeId, farmId),
  ]);
  const zone = detail.sites[0]?.timeZone ?? "UTC";
  const from = todayIn(zone);
  return {
    farm: detail.farm.name,
    units: detail.farm.units,
    zone,
    from,
    to: addDays(from, 6),
    advisories: advisories.toSorted(byDue),
    closed: closedText(closed, detail, t, localeOf(language)).map(({ text }) => text),
  };
}

/** All that was issued to a farm and stands open now. */
async function openOf(officeId: string, farmId: string): Promise<Advisory[]> {
  const all: Advisory[] = [];
  let after: string | null = null;
  do {
    const query = { farmId, open: "yes" as const, limit: 200, ...(after !== null && { after }) };
    const page: { advisories: Advisory[]; next: string | null } = await call(adviceRoutes.listAdvisories, {
      params: { officeId },
      query,
    });
    all.push(...page.advisories);
    after = page.next;
  } while (after !== null);
  return all;
}

/** What is due soonest first; what has no last day is last, the newest of it first. */
const byDue = (a: Advisory, b: Advisory): number =>
  (a.windowTo ?? "9999").localeCompare(b.windowTo ?? "9999") ||
  (a.windowFrom ?? "").localeCompare(b.windowFrom ?? "") ||
  b.ledgerSeq - a.ledgerSeq;
