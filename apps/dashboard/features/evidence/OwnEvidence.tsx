import { evidenceRoutes } from "@pith/contract";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { call } from "../../server/api.ts";
import { RuleName } from "../../ui/RuleName.tsx";
import { ActButton } from "../forms/ActButton.tsx";
import { putSourceAway } from "./actions.ts";
import { ClaimFacts } from "./ClaimFacts.tsx";

/** What the office itself holds as evidence, with the same particulars as the published. */
export async function OwnEvidence({ officeId }: { officeId: string }) {
  const [{ sources }, t] = await Promise.all([
    call(evidenceRoutes.listOwnEvidence, { params: { officeId } }),
    getTranslations("evidence.own"),
  ]);
  return (
    <>
      {sources.length === 0 ? (
        <p>{t("none")}</p>
      ) : (
        <ul className="listing">
          {sources.map(({ id, source }) => (
            <li key={id} id={source.id} className="flow">
              <p>
                <strong>{source.finding}</strong> <RuleName id={source.rule} />
              </p>
              <ClaimFacts claim={source} />
              <p className="small">
                {source.cite}{" "}
                {source.url && (
                  <a href={source.url} rel="noreferrer">
                    {new URL(source.url).hostname}
                    <span className="unseen">: {source.id}</span>
                  </a>
                )}
              </p>
              <ActButton
                action={putSourceAway.bind(null, id)}
                label={t("putAway")}
                busy={t("busy")}
                weight="quiet"
              />
            </li>
          ))}
        </ul>
      )}
      <Link className="tap" href="/evidence/new">
        {t("add")}
      </Link>
    </>
  );
}
