import { farmRoutes, seasonRecordRoutes } from "@pith/contract";
import { notFound } from "next/navigation";
import { call } from "../../server/api.ts";
import { languageAsked } from "../../server/language.ts";
import type { Seat } from "../../server/seat.ts";
import { pdfFile } from "./file.ts";
import { signedTo } from "./ledger.ts";
import { seasonPdf } from "./seasonPdf.ts";
import { paperWords } from "./words.ts";

/** A farm's season record as a file, for whoever may read it. */
export async function seasonAnswer(
  { officeId, officeName }: Seat,
  farmId: string,
  season: string,
): Promise<Response> {
  if (!/^\d{4}$/.test(season)) notFound();
  const params = { officeId, farmId };
  const [record, { sites }, signed, language] = await Promise.all([
    call(seasonRecordRoutes.getSeasonRecord, { params, query: { season: Number(season) } }),
    call(farmRoutes.getFarm, { params }),
    signedTo(officeId),
    languageAsked(),
  ]);
  const beside = {
    officeName,
    signed,
    now: new Date().toISOString(),
    zone: sites[0]?.timeZone ?? "UTC",
  };
  return pdfFile(await seasonPdf(record, beside, paperWords(language)), `season-${season}.pdf`);
}
