import { choiceIn, claimIn, sourceIn, sourcePage } from "@pith/rules";
import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { ClaimFacts } from "../../../../../features/evidence/ClaimFacts.tsx";
import { languageAsked } from "../../../../../server/language.ts";
import { agentSeat } from "../../../../../server/seat.ts";
import { Row } from "../../../../../ui/Row.tsx";
import { RuleName } from "../../../../../ui/RuleName.tsx";

interface Props {
  params: Promise<{ sourceId: string }>;
}

const readSource = async (params: Props["params"]) => sourcePage(decodeURIComponent((await params).sourceId));

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const page = await readSource(params);
  return page ? { title: page.source.id } : {};
}

/** One source: what it is, what is drawn from it, what speaks against that, and where the office may choose. */
export default async function SourcePage({ params }: Props) {
  await agentSeat();
  const [page, t, language] = await Promise.all([
    readSource(params),
    getTranslations("evidence"),
    languageAsked(),
  ]);
  if (!page) notFound();
  const source = sourceIn(page.source, language);
  const claims = page.claims.map((claim) => claimIn(claim, language));
  const conflicts = page.conflicts.map(({ claim, with: other }) => ({
    claim,
    other: claimIn(other, language),
  }));
  const choices = page.choices.map(({ choice }) => choiceIn(choice, language));
  return (
    <>
      <p className="crumbs">
        <Link href="/evidence">{t("title")}</Link>
      </p>
      <Row
        notes={
          <dl className="facts">
            <dt>{t("kind")}</dt>
            <dd>{t(`kinds.${source.kind}`)}</dd>
            {source.year !== undefined && (
              <>
                <dt>{t("year")}</dt>
                <dd>{source.year}</dd>
              </>
            )}
            <dt>{t("read")}</dt>
            <dd className={source.status === "memory" ? "unknown" : undefined}>
              {t(`statuses.${source.status}`)}
            </dd>
          </dl>
        }
      >
        <h1>{source.id}</h1>
        <p className="decision-under">{source.cite}</p>
        {(source.doi ?? source.url) && (
          <p>
            <a
              href={source.doi ? `https://doi.org/${source.doi}` : source.url}
              rel="noreferrer"
              className="tap"
            >
              {source.doi ? `doi:${source.doi}` : new URL(source.url ?? "").hostname}
            </a>
          </p>
        )}
      </Row>
      <Row id="claims" side={<h2>{t("drawn")}</h2>}>
        {claims.length === 0 ? (
          <p>{t("noClaims")}</p>
        ) : (
          <ul className="listing">
            {claims.map((claim) => (
              <li key={claim.id} id={claim.id} className="flow">
                <p>
                  <strong>{claim.finding}</strong>{" "}
                  <Link href={`/evidence#${claim.id}`}>
                    <RuleName id={claim.rule} />
                    <span className="unseen">: {claim.finding}</span>
                  </Link>
                </p>
                <ClaimFacts claim={claim} />
              </li>
            ))}
          </ul>
        )}
      </Row>
      {conflicts.length > 0 && (
        <Row id="against" side={<h2>{t("conflicts")}</h2>}>
          <ul className="listing">
            {conflicts.map(({ claim, other }) => (
              <li key={`${claim} ${other.id}`} className="flow">
                <p>
                  <strong>{other.finding}</strong>{" "}
                  <Link href={`/evidence#${other.id}`}>
                    {t("readMore")}
                    <span className="unseen">: {other.finding}</span>
                  </Link>
                </p>
                <ClaimFacts claim={other} />
              </li>
            ))}
          </ul>
        </Row>
      )}
      {choices.length > 0 && (
        <Row id="choices" side={<h2>{t("choices.title")}</h2>}>
          <ul className="listing">
            {choices.map((choice) => (
              <li key={choice.id}>
                <Link href={`/evidence#choice-${choice.id}`}>{choice.question}</Link>
              </li>
            ))}
          </ul>
        </Row>
      )}
    </>
  );
}
