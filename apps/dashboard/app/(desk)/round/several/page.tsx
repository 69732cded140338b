import { adviceRoutes } from "@pith/contract";
import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { SlipBody } from "../../../../features/advice/Slip.tsx";
import { SeveralDesk } from "../../../../features/round/SeveralDesk.tsx";
import { call } from "../../../../server/api.ts";
import { agentSeat } from "../../../../server/seat.ts";
import { Row } from "../../../../ui/Row.tsx";
import { RuleName } from "../../../../ui/RuleName.tsx";

/** More than one sitting reads. */
const MOST = 30;
const ID = /^[0-9a-f-]{36}$/;

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("round");
  return { title: t("severalTitle") };
}

/** Several drafts on one page, each as its farmer will read it, to be issued together. */
export default async function SeveralPage({
  searchParams,
}: {
  searchParams: Promise<{ id?: string | string[] }>;
}) {
  const [{ officeId }, { id = [] }, t, advice] = await Promise.all([
    agentSeat(),
    searchParams,
    getTranslations("round"),
    getTranslations("advice"),
  ]);
  const asked = [...new Set([id].flat())].filter((one) => ID.test(one));
  const drafts = await Promise.all(
    asked.slice(0, MOST).map((draftId) => call(adviceRoutes.getDraft, { params: { officeId, draftId } })),
  );
  const ready = drafts.filter(({ answer }) => answer.kind === "advice");
  return (
    <>
      <p className="crumbs">
        <Link href="/round">{advice("backToRound")}</Link>
      </p>
      <Row notes={<p>{t("severalHelp")}</p>}>
        <h1>{t("severalTitle")}</h1>
        <p className="decision-under">
          {asked.length === 0 ? t("severalNone") : t("severalCount", { count: ready.length })}
        </p>
        {asked.length > MOST && <p className="refusal">{t("severalMost", { most: MOST })}</p>}
        {ready.length > 0 && (
          <SeveralDesk
            drafts={ready.map((draft) => ({
              id: draft.id,
              stateSha256: draft.stateSha256,
              needsSecond: draft.needsSecond,
              slip: (
                <section className="slip" aria-labelledby={`slip-${draft.id}`}>
                  <p className="faint">
                    <RuleName id={draft.ruleId} /> · {draft.subjectName} · {draft.farmName}
                  </p>
                  <h2 id={`slip-${draft.id}`}>{draft.said.decision}</h2>
                  <SlipBody said={draft.said} note={null} />
                  {draft.needsSecond && <p className="unknown">{t("severalSecond")}</p>}
                  <p>
                    <Link className="tap" href={`/drafts/${draft.id}`}>
                      {t("severalWorking")}
                    </Link>
                  </p>
                </section>
              ),
            }))}
            words={{
              submit: t("severalIssue", { count: ready.length }),
              busy: advice("issuing"),
              issued: t("severalIssued"),
              asked: t("severalAsked"),
              see: t("severalSee"),
              again: t("severalAgain"),
              back: advice("backToRound"),
            }}
          />
        )}
      </Row>
    </>
  );
}
