import type { Call } from "@pith/contract";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { instantText } from "../../format/dates.ts";
import { Row } from "../../ui/Row.tsx";
import { ActButton } from "../forms/ActButton.tsx";
import { markCalled } from "./actions.ts";

/** Farms to call before all else: nobody there has read a warning, and its hour is near or past. */
export async function Calls({ calls, zone }: { calls: Call[]; zone: string }) {
  const t = await getTranslations("round.calls");
  if (calls.length === 0) return null;
  return (
    <Row side={<h2>{t("title")}</h2>} notes={<p>{t("why")}</p>}>
      <ul className="listing">
        {calls.map(({ farmId, farmName, contactName, phone, warnings }) => (
          <li key={farmId} className="flow">
            <p>
              <Link href={`/farms/${farmId}`}>{farmName}</Link>
              {contactName && <> · {contactName}</>} ·{" "}
              {phone ? (
                <a className="tap" href={`tel:${phone.replace(/[^\d+]/g, "")}`}>
                  {phone}
                </a>
              ) : (
                <span className="unknown">{t("noPhone")}</span>
              )}
            </p>
            {warnings.map(({ advisoryId, decision, frost, issuedAt, actBy }) => (
              <p key={advisoryId}>
                {frost && <strong>{t("frost")} </strong>}
                <Link href={`/issued/${advisoryId}`} prefetch={false}>
                  {decision}
                </Link>{" "}
                <span className="faint">
                  {t("unread", { issued: instantText(issuedAt, zone), by: instantText(actBy, zone) })}
                </span>
              </p>
            ))}
            <ActButton
              action={markCalled.bind(
                null,
                farmId,
                warnings.map((one) => one.advisoryId),
              )}
              label={t("called", { farm: farmName })}
              busy={t("saving")}
              weight="quiet"
            />
          </li>
        ))}
      </ul>
    </Row>
  );
}
