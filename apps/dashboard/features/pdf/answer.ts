import { adviceRoutes, farmRoutes } from "@pith/contract";
import { call } from "../../server/api.ts";
import { languageAsked } from "../../server/language.ts";
import { readerZone } from "../../server/zone.ts";
import { readerOf } from "../advice/reader.ts";
import { advicePdf } from "./advicePdf.ts";
import { pdfFile } from "./file.ts";
import { paperWords } from "./words.ts";

/** An issued advice as a file, for whoever may read it. */
export async function pdfAnswer(officeId: string, advisoryId: string): Promise<Response> {
  const advisory = await call(adviceRoutes.getAdvisory, { params: { officeId, advisoryId } });
  const { farmId, ledgerSeq, said } = advisory;
  const [farm, zone, language] = await Promise.all([
    call(farmRoutes.getFarm, { params: { officeId, farmId } }),
    readerZone(),
    languageAsked(),
  ]);
  const beside = {
    zone,
    reader: readerOf(farm, said.units, language),
  };
  return pdfFile(await advicePdf(advisory, beside, paperWords(language)), `advice-${ledgerSeq}.pdf`);
}
