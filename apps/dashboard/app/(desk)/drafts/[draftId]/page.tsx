import { adviceRoutes, farmRoutes } from "@pith/contract";
import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { AdviceBody } from "../../../../features/advice/AdviceBody.tsx";
import { issue } from "../../../../features/advice/actions.ts";
import { IssueDesk } from "../../../../features/advice/IssueDesk.tsx";
import { readerOf } from "../../../../features/advice/reader.ts";
import { SecondDesk } from "../../../../features/advice/SecondDesk.tsx";
import { SlipBody } from "../../../../features/advice/Slip.tsx";
import { askSecond } from "../../../../features/advice/second.ts";
import { frameWords } from "../../../../features/forms/words.ts";
import { SetAside } from "../../../../features/round/SetAside.tsx";
import { instantText } from "../../../../format/dates.ts";
import { call } from "../../../../server/api.ts";
import { agentSeat } from "../../../../server/seat.ts";
import { readerZone } from "../../../../server/zone.ts";
import { Cautions } from "../../../../ui/Cautions.tsx";
import { Row } from "../../../../ui/Row.tsx";
import { RuleName } from "../../../../ui/RuleName.tsx";

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("advice");
  return { title: t("draft") };
}

/** One draft: the decision, its cautions, what to do, how it was found, and the desk to issue it from. */
export default async function DraftPage({ params }: { params: Promise<{ draftId: string }> }) {
  const [{ officeId, name }, { draftId }, zone, t, second, round, words] = await Promise.all([
    agentSeat(),
    params,
    readerZone(),
    getTranslations("advice"),
    getTranslations("second"),
    getTranslations("round"),
    frameWords(),
  ]);
  const draft = await call(adviceRoutes.getDraft, { params: { officeId, draftId } });
  const detail = await call(farmRoutes.getFarm, { params: { officeId, farmId: draft.farmId } });
  const { farm } = detail;
  const { said, answer } = draft;
  const planting = draft.plantingIds[0];
  const waiting = draft.second !== null && !draft.second.changed && draft.second.sentBack === null;

  return (
    <article>
      <p className="crumbs">
        <Link href="/round">{t("backToRound")}</Link>
      </p>
      <Row
        side={
          <>
            <p>
              <RuleName id={draft.ruleId} />
            </p>
            <p className="faint small">{t("drafted", { when: instantText(draft.madeAt, zone) })}</p>
          </>
        }
        notes={
          <>
            <p>
              <span className="label">{t("whyHere")}</span> {draft.reason}
            </p>
            <SetAside draft={draft} t={round} words={words} />
          </>
        }
      >
        <p>
          {planting ? (
            <Link href={`/farms/${farm.id}/plantings/${planting}`}>{draft.subjectName}</Link>
          ) : (
            draft.subjectName
          )}
          {" · "}
          <Link href={`/farms/${farm.id}`}>{draft.farmName}</Link>
        </p>
        <h1 className="decision">{draft.headline}</h1>
        {said.window && <p className="decision-under">{said.window}</p>}
        <Cautions cautions={said.cautions} />
        {answer.kind === "advice" && (
          <p className="actions no-print">
            <a className="tap" href="#issue">
              {t("goToIssue")}
            </a>
            <a className="tap" href="#working">
              {t("goToWorking")}
            </a>
            {(draft.ruleId === "feeding" || draft.ruleId === "shed") && (
              <Link className="tap" href={`/farms/${farm.id}/shed-sheet`}>
                {t("shedSheet")}
              </Link>
            )}
          </p>
        )}
      </Row>
      <AdviceBody answer={answer} said={said} reader={readerOf(detail)} />
      {answer.kind === "advice" && waiting && (
        <Row id="issue" side={<h2>{second("title")}</h2>} notes={<p>{second("help")}</p>}>
          <SecondDesk draft={draft} zone={zone} />
        </Row>
      )}
      {answer.kind === "advice" && !waiting && (
        <Row
          id="issue"
          side={<h2>{draft.needsSecond ? second("send") : t("issue")}</h2>}
          notes={<p>{draft.needsSecond ? second("wanted") : t("issueHelp")}</p>}
        >
          {draft.second?.changed && <p className="refusal">{second("changed")}</p>}
          {draft.second?.sentBack && (
            <p className="refusal">
              {second("sentBack", { name: draft.second.sentBack.by })} {draft.second.sentBack.reason}
            </p>
          )}
          <IssueDesk
            action={(draft.needsSecond ? askSecond : issue).bind(null, {
              id: draft.id,
              stateSha256: draft.stateSha256,
            })}
            words={{
              note: t("note"),
              noteHint: t("noteHint"),
              preview: t("preview", { farm: draft.farmName }),
              from: t("noteFrom", { name }),
              submit: draft.needsSecond ? second("sendNow") : t("issueNow"),
              busy: draft.needsSecond ? second("working") : t("issuing"),
            }}
            head={<h3>{said.decision}</h3>}
            body={<SlipBody said={said} note={null} />}
          />
        </Row>
      )}
    </article>
  );
}
