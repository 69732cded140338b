import type { Advisory, FarmDetail } from "@pith/contract";
import { getTranslations } from "next-intl/server";
import { instantText, longDayText } from "../../format/dates.ts";
import { inText } from "../../format/units.ts";

interface Props {
  advisory: Advisory;
  farm: FarmDetail;
  zone: string;
}

/** What the farmer answered, with what was really done. Nothing answered means unknown, and says so. */
export async function AnswerGiven({ advisory, farm, zone }: Props) {
  const t = await getTranslations("answer");
  const { answer } = advisory;
  if (!answer) return <p className="unknown">{t("unanswered")}</p>;
  const { actual } = answer;
  const units = farm.farm.units;
  const material = farm.materials.find((m) => m.id === actual?.materialId)?.name;
  return (
    <div className="flow">
      <p className="listing-head">{t(`kinds.${answer.kind}`)}</p>
      {actual && (
        <dl className="facts">
          <dt>{t("on")}</dt>
          <dd>{longDayText(actual.on)}</dd>
          {material && (
            <>
              <dt>{t("material")}</dt>
              <dd>{material}</dd>
            </>
          )}
          {actual.amountKg !== null && (
            <>
              <dt>{t("amount")}</dt>
              <dd className="number">{inText(actual.amountKg, "kg", units)}</dd>
            </>
          )}
          {actual.areaM2 !== null && (
            <>
              <dt>{t("area")}</dt>
              <dd className="number">{inText(actual.areaM2, "m2", units)}</dd>
            </>
          )}
          {actual.minutes !== null && (
            <>
              <dt>{t("minutes")}</dt>
              <dd className="number">{inText(actual.minutes, "minutes", units)}</dd>
            </>
          )}
          {actual.litres !== null && (
            <>
              <dt>{t("litres")}</dt>
              <dd className="number">{inText(actual.litres, "L", units)}</dd>
            </>
          )}
        </dl>
      )}
      {answer.reason && <p>{t("because", { reason: answer.reason })}</p>}
      <p className="faint">
        {t("by", { name: answer.answeredBy, when: instantText(answer.answeredAt, zone) })}{" "}
        {t("entry", { seq: answer.ledgerSeq })}
      </p>
    </div>
  );
}
