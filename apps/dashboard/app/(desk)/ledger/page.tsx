import { adviceRoutes } from "@pith/contract";
import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { signNow } from "../../../features/keeping/actions.ts";
import { replay, verify } from "../../../features/ledger/actions.ts";
import { Check } from "../../../features/ledger/Check.tsx";
import { Checkpoints } from "../../../features/ledger/Checkpoints.tsx";
import { instantText } from "../../../format/dates.ts";
import { call } from "../../../server/api.ts";
import { agentSeat } from "../../../server/seat.ts";
import { readerZone } from "../../../server/zone.ts";
import { Row } from "../../../ui/Row.tsx";

const PAGE = 50;

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("ledger");
  return { title: t("title") };
}

/** Everything that was issued and what became of it, in a chain anybody may check. */
export default async function LedgerPage({ searchParams }: { searchParams: Promise<{ before?: string }> }) {
  const [{ officeId, lead }, { before }, zone, t, keeping] = await Promise.all([
    agentSeat(),
    searchParams,
    readerZone(),
    getTranslations("ledger"),
    getTranslations("keeping"),
  ]);
  const { entries } = await call(adviceRoutes.listLedger, {
    params: { officeId },
    query: { limit: PAGE, before: before ? Number(before) : undefined },
  });
  const last = entries.at(-1);
  return (
    <>
      <Row notes={<p>{t("limits")}</p>}>
        <h1>{t("title")}</h1>
        <p className="decision-under">{t("lead")}</p>
        <Check action={verify} label={t("verify")} busy={t("verifying")} />
      </Row>
      <Row side={<h2>{keeping("checkpoints")}</h2>} notes={<p>{keeping("checkpointNotes")}</p>}>
        <p>{keeping("checkpointWhat")}</p>
        {!before && <Checkpoints officeId={officeId} />}
        {lead && <Check action={signNow} label={keeping("signNow")} busy={keeping("signing")} />}
      </Row>
      {entries.length === 0 && (
        <Row>
          <p>{t("empty")}</p>
        </Row>
      )}
      {entries.map((entry) => (
        <Row
          key={entry.seq}
          id={`entry-${entry.seq}`}
          className="draft"
          side={
            <>
              <strong>{entry.seq}</strong> <time dateTime={entry.at}>{instantText(entry.at, zone)}</time>
            </>
          }
          notes={
            <p className="hash faint" title={entry.hash}>
              {entry.hash}
            </p>
          }
        >
          <p className="label">{t(`kinds.${entry.kind}`)}</p>
          <p>
            {entry.advisoryId ? (
              <Link href={`/issued/${entry.advisoryId}`}>{entry.summary}</Link>
            ) : (
              entry.summary
            )}
          </p>
          {entry.kind === "issued" && (
            <Check
              action={replay.bind(null, entry.seq)}
              label={t("replay", { seq: entry.seq })}
              busy={t("replaying")}
            />
          )}
        </Row>
      ))}
      <Row>
        <p className="actions">
          {before && (
            <Link className="tap" href="/ledger">
              {t("newest")}
            </Link>
          )}
          {entries.length === PAGE && last && last.seq > 1 && (
            <Link className="tap" href={`/ledger?before=${last.seq}`}>
              {t("older")}
            </Link>
          )}
        </p>
      </Row>
    </>
  );
}
