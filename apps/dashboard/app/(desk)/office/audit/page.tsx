import { peopleRoutes } from "@pith/contract";
import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { instantText } from "../../../../format/dates.ts";
import { call } from "../../../../server/api.ts";
import { leadSeat } from "../../../../server/seat.ts";
import { readerZone } from "../../../../server/zone.ts";
import { Row } from "../../../../ui/Row.tsx";
import { ToOffice } from "../../../../ui/ToOffice.tsx";

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("audit");
  return { title: t("title") };
}

const ONLY = ["sign-in", "person", "invitation", "second-step", "session", "password"] as const;

/** An action's name as the catalogue has it, whose keys hold no dots and no spaces. */
const slug = (name: string) => name.replaceAll(/[^a-z]+/g, "-");

/** Who signed in and who did what: for whoever answers for the office. */
export default async function AuditPage({
  searchParams,
}: {
  searchParams: Promise<{ after?: string; action?: string }>;
}) {
  const [{ officeId }, { after, action }, zone, t] = await Promise.all([
    leadSeat(),
    searchParams,
    readerZone(),
    getTranslations("audit"),
  ]);
  const { lines, next } = await call(peopleRoutes.listAudit, {
    params: { officeId },
    query: { after, action, limit: 50 },
  });
  type Action = "actions.sign-in";
  const said = (what: string) => {
    const key = `actions.${slug(what)}` as Action;
    if (t.has(key)) return t(key);
    // What is kept for each thing alike: a bed is added, changed and taken back as a harvest is.
    const dot = what.lastIndexOf(".");
    const did = `did.${what.slice(dot + 1)}` as "did.add";
    const thing = `things.${slug(what.slice(0, dot))}` as "things.bed";
    return t.has(did) && t.has(thing) ? t(did, { thing: t(thing) }) : what;
  };
  type Reason = "reasons.wrong-code";
  const more = ({ reason, from, to }: Record<string, unknown>) => {
    const key = `reasons.${reason}` as Reason;
    if (typeof reason === "string" && t.has(key)) return t(key);
    return typeof from === "string" && typeof to === "string" ? t("fromTo", { from, to }) : null;
  };
  const link = (query: Record<string, string | undefined>) =>
    `/office/audit?${new URLSearchParams(Object.entries(query).filter((e): e is [string, string] => !!e[1]))}`;
  return (
    <>
      <ToOffice />
      <Row notes={<p>{t("notes")}</p>}>
        <h1>{t("title")}</h1>
        <p className="decision-under">{t("what")}</p>
        <nav aria-label={t("only")} className="actions">
          <Link className="tap" href="/office/audit" aria-current={action ? undefined : "page"}>
            {t("all")}
          </Link>
          {ONLY.map((one) => (
            <Link
              key={one}
              className="tap"
              href={link({ action: one })}
              aria-current={action === one ? "page" : undefined}
            >
              {t(`onlyOf.${one}`)}
            </Link>
          ))}
        </nav>
      </Row>
      <Row>
        {lines.length === 0 ? (
          <p>{t("empty")}</p>
        ) : (
          <ul className="listing">
            {lines.map(({ id, at, who, action: what, detail }) => (
              <li key={id}>
                <p>
                  <strong>{who ?? t("nobody")}</strong> {said(what)}{" "}
                  <span className="faint">{more(detail)}</span>
                </p>
                <p className="faint">
                  <time dateTime={at}>{instantText(at, zone)}</time>
                </p>
              </li>
            ))}
          </ul>
        )}
        <p className="actions">
          {after && (
            <Link className="tap" href={link({ action })}>
              {t("newest")}
            </Link>
          )}
          {next && (
            <Link className="tap" href={link({ action, after: next })}>
              {t("older")}
            </Link>
          )}
        </p>
      </Row>
    </>
  );
}
