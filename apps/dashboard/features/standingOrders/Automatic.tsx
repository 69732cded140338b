import type { Advisory } from "@pith/contract";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { instantText } from "../../format/dates.ts";
import { RuleName } from "../../ui/RuleName.tsx";
import { ActButton } from "../forms/ActButton.tsx";
import { takeBack } from "./actions.ts";

/** What standing orders issued, marked as such, each to be taken back with one tap while nobody has answered it. */
export async function Automatic({ advisories, zone }: { advisories: Advisory[]; zone: string }) {
  const [t, advice] = await Promise.all([getTranslations("standingOrders"), getTranslations("advice")]);
  return (
    <ul className="listing">
      {advisories.map((one) => (
        <li key={one.id}>
          <Link className="listing-head" href={`/issued/${one.id}`} prefetch={false}>
            {one.said.decision}
          </Link>
          <p className="faint">
            <RuleName id={one.ruleId} /> · {one.subjectName} · {one.farmName} ·{" "}
            {t("issuedBy", { name: one.issuedBy, when: instantText(one.issuedAt, zone) })} ·{" "}
            {advice(`statuses.${one.status}`)}
          </p>
          {(one.status === "issued" || one.status === "read") && (
            <ActButton
              action={takeBack.bind(null, one.id)}
              label={t("takeBack")}
              busy={t("takingBack")}
              weight="quiet"
            />
          )}
        </li>
      ))}
    </ul>
  );
}
