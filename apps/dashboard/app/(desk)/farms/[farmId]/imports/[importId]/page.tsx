import { farmRoutes, importRoutes } from "@pith/contract";
import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { named } from "../../../../../../features/farm/plans.ts";
import { discard, statusOf } from "../../../../../../features/imports/actions.ts";
import { Preview } from "../../../../../../features/imports/Preview.tsx";
import { Settle } from "../../../../../../features/imports/Settle.tsx";
import { importWords } from "../../../../../../features/imports/words.ts";
import { instantText } from "../../../../../../format/dates.ts";
import { call } from "../../../../../../server/api.ts";
import { agentSeat } from "../../../../../../server/seat.ts";
import { readerZone } from "../../../../../../server/zone.ts";
import { Row } from "../../../../../../ui/Row.tsx";

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("imports");
  return { title: t("one") };
}

/** One import: what became of it, and while it only waits, the choice to save it or put it away. */
export default async function ImportedPage({
  params,
}: {
  params: Promise<{ farmId: string; importId: string }>;
}) {
  const [{ officeId }, { farmId, importId }, zone, t, words] = await Promise.all([
    agentSeat(),
    params,
    readerZone(),
    getTranslations("imports"),
    importWords(),
  ]);
  const [read, { beds }] = await Promise.all([
    call(importRoutes.getImport, { params: { officeId, farmId, importId } }),
    call(farmRoutes.getFarm, { params: { officeId, farmId } }),
  ]);
  const page = `/farms/${farmId}/imports/${importId}`;
  const counts = {
    accepted: read.acceptedCount,
    refused: read.refusedCount,
    duplicates: read.duplicateCount,
  };
  return (
    <>
      <p className="crumbs">
        <Link href={`/farms/${farmId}#imports`}>{t("backToFarm")}</Link>
      </p>
      <Row side={<p className="label">{instantText(read.createdAt, zone)}</p>} wide>
        <h1>{read.fileName}</h1>
        <p className="decision-under" role={read.status === "saved" ? "status" : undefined}>
          {t(`outcome.${read.status}`, counts)}
        </p>
        {read.status === "saved" && (
          <p className="actions">
            <Link className="tap" href={`/round?farm=${farmId}`}>
              {t("seeRound")}
            </Link>
            <Link className="tap" href={`/farms/${farmId}/import`}>
              {t("another")}
            </Link>
          </p>
        )}
        {read.status === "staged" &&
          (read.questions.length > 0 ? (
            <p>
              {t("questionsOpen")} <Link href={`/farms/${farmId}/import`}>{t("chooseAgain")}</Link>
            </p>
          ) : (
            <Settle
              page={page}
              statusOf={statusOf.bind(null, farmId, importId)}
              discard={discard.bind(null, farmId, importId)}
              nothing={read.acceptedCount === 0}
              words={words}
            />
          ))}
        <Preview read={read} page={page} beds={named(beds)} words={words} />
      </Row>
    </>
  );
}
