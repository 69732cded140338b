import type { Alarm } from "@pith/contract";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { instantText } from "../../format/dates.ts";
import { Row } from "../../ui/Row.tsx";

/** What is wrong with weather and sensors that come in, before anything that rests on them. Each ends by itself with its cause. */
export async function Alarms({ alarms, zone }: { alarms: Alarm[]; zone: string }) {
  const t = await getTranslations("round.alarms");
  if (alarms.length === 0) return null;
  return (
    <Row className="alarms" side={<h2 className="label">{t("title")}</h2>}>
      <ul className="plain">
        {alarms.map(({ siteId, siteName, farmId, farmName, kind, since, message }) => (
          <li key={`${siteId} ${kind} ${message}`} className="alarm">
            <p>
              <strong>{t(kind)}</strong> {siteName} ·{" "}
              <Link href={kind === "silent" ? `/sensors/${farmId}` : `/farms/${farmId}#sites`}>
                {farmName}
              </Link>
            </p>
            <p>{message}</p>
            {since !== null && (
              <p className="faint">
                {t(kind === "stale" ? "issued" : "since")}{" "}
                <time dateTime={since}>{instantText(since, zone)}</time>
              </p>
            )}
          </li>
        ))}
      </ul>
    </Row>
  );
}
