import { farmRoutes } from "@pith/contract";
import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { Choices } from "../../../features/evidence/Choices.tsx";
import { ClaimFacts } from "../../../features/evidence/ClaimFacts.tsx";
import { OwnEvidence } from "../../../features/evidence/OwnEvidence.tsx";
import { claimsById, register } from "../../../features/evidence/register.ts";
import { call } from "../../../server/api.ts";
import { agentSeat } from "../../../server/seat.ts";
import { Row } from "../../../ui/Row.tsx";
import { RuleName } from "../../../ui/RuleName.tsx";
import { Saved } from "../../../ui/Saved.tsx";

interface Props {
  searchParams: Promise<Record<string, string>>;
}

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("evidence");
  return { title: t("title") };
}

const STATUSES = ["seen", "secondary", "memory", "practice"] as const;

/** What every rule leans on: the claims with how far they carry, and the sources by how they were read. */
export default async function EvidencePage({ searchParams }: Props) {
  const { officeId } = await agentSeat();
  const [{ rules, sources }, claims, office, asked, t] = await Promise.all([
    register(),
    claimsById(),
    call(farmRoutes.getOffice, { params: { officeId } }),
    searchParams,
    getTranslations("evidence"),
  ]);
  return (
    <>
      <Saved asked={asked} />
      <Row
        notes={
          <dl className="flow">
            {(["strong", "moderate", "weak", "practice"] as const).map((grade) => (
              <div key={grade}>
                <dt>{t(`grades.${grade}`)}</dt>
                <dd>{t(`gradeMeans.${grade}`)}</dd>
              </div>
            ))}
          </dl>
        }
      >
        <h1>{t("title")}</h1>
        <p className="decision-under">{t("lead")}</p>
        <ul className="actions plain">
          {rules.map((rule) => (
            <li key={rule.id}>
              <a className="tap" href={`#rule-${rule.id}`}>
                <RuleName id={rule.id} />
              </a>
            </li>
          ))}
          <li>
            <a className="tap" href="#choices">
              {t("choices.title")}
            </a>
          </li>
          <li>
            <a className="tap" href="#own">
              {t("own.title")}
            </a>
          </li>
          <li>
            <a className="tap" href="#sources">
              {t("sources")}
            </a>
          </li>
        </ul>
      </Row>
      {rules.map((rule) => (
        <Row
          key={rule.id}
          id={`rule-${rule.id}`}
          side={
            <>
              <h2>
                <RuleName id={rule.id} />
              </h2>
              <p className="faint small">{t("version", { version: rule.version })}</p>
            </>
          }
          notes={
            <>
              <p className="label">{t("needs")}</p>
              <ul className="plain">
                {rule.needs.map((need) => (
                  <li key={need}>{need}</li>
                ))}
              </ul>
            </>
          }
        >
          <p className="listing-head">{rule.question}</p>
          <ul className="listing">
            {rule.claims.map((claim) => (
              <li key={claim.id} id={claim.id} className="flow">
                <p>
                  <strong>{claim.finding}</strong>
                </p>
                <ClaimFacts claim={claim} />
                <dl className="facts small">
                  {claim.conflicts.length > 0 && (
                    <>
                      <dt>{t("conflicts")}</dt>
                      <dd>
                        <ul className="plain sources">
                          {claim.conflicts.map((id) => (
                            <li key={id}>
                              <a href={`#${id}`}>{claims.get(id)?.finding ?? id}</a>
                            </li>
                          ))}
                        </ul>
                      </dd>
                    </>
                  )}
                  <dt>{t("sources")}</dt>
                  <dd>
                    <ul className="plain sources">
                      {claim.sources.map(({ key, locator }) => (
                        <li key={`${key} ${locator}`}>
                          <Link href={`/evidence/sources/${encodeURIComponent(key)}`}>{key}</Link>
                          {locator && ` (${locator})`}
                        </li>
                      ))}
                    </ul>
                  </dd>
                </dl>
              </li>
            ))}
          </ul>
        </Row>
      ))}
      <Row id="choices" side={<h2>{t("choices.title")}</h2>} notes={<p>{t("choices.help")}</p>}>
        <Choices settings={office.settings} />
      </Row>
      <Row id="own" side={<h2>{t("own.title")}</h2>}>
        <OwnEvidence officeId={officeId} />
      </Row>
      <Row id="sources" side={<h2>{t("sources")}</h2>}>
        {STATUSES.map((status) => (
          <div key={status}>
            <h3>{t(`statuses.${status}`)}</h3>
            <ul className="listing small">
              {sources
                .filter((source) => source.status === status)
                .map((source) => (
                  <li key={source.id} id={`source-${source.id}`}>
                    <Link href={`/evidence/sources/${encodeURIComponent(source.id)}`}>{source.id}</Link>{" "}
                    {source.cite}{" "}
                    {source.doi ? (
                      <a href={`https://doi.org/${source.doi}`} rel="noreferrer">
                        doi:{source.doi}
                      </a>
                    ) : (
                      source.url && (
                        <a href={source.url} rel="noreferrer">
                          {new URL(source.url).hostname}
                          <span className="unseen">: {source.id}</span>
                        </a>
                      )
                    )}
                  </li>
                ))}
            </ul>
          </div>
        ))}
      </Row>
    </>
  );
}
