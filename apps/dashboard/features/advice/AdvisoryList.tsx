import type { Advisory } from "@pith/contract";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { dayAt, dayText } from "../../format/dates.ts";
import { RuleName } from "../../ui/RuleName.tsx";

interface Props {
  advisories: Advisory[];
  base: string;
  /** Whether each names its farm too: where they are of several. */
  farms?: "named";
}

/** What was issued, newest first, and what became of it. */
export async function AdvisoryList({ advisories, base, farms }: Props) {
  const t = await getTranslations("advice");
  if (advisories.length === 0) return <p>{t("noneIssued")}</p>;
  return (
    <ul className="listing">
      {advisories.map((one) => (
        <li key={one.id}>
          <Link className="listing-head" href={`${base}/${one.id}`}>
            {one.said.decision}
          </Link>
          <p className="faint">
            <RuleName id={one.ruleId} /> · {one.subjectName} ·{farms && ` ${one.farmName} ·`}{" "}
            {dayText(dayAt(one.issuedAt))} ·{" "}
            <span className={one.answer || one.status === "withdrawn" ? "" : "unknown"}>
              {t(`statuses.${one.status}`)}
            </span>
          </p>
        </li>
      ))}
    </ul>
  );
}
