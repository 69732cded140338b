import { farmRoutes, recordRoutes } from "@pith/contract";
import { addDays } from "@pith/rules";
import { notFound } from "next/navigation";
import { todayIn } from "../../format/dates.ts";
import { localeOf } from "../../format/language.ts";
import { call } from "../../server/api.ts";
import { languageAsked } from "../../server/language.ts";
import type { Seat } from "../../server/seat.ts";
import { allAdvisories, byDue } from "../advice/allAdvisories.ts";
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
    allAdvisories(officeId, { farmId, open: "yes" }),
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
