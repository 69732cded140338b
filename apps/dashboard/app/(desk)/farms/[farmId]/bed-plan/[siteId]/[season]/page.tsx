import type { Metadata } from "next";
import Link from "next/link";
import { redirect } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { Desk } from "../../../../../../../features/bedPlan/Desk.tsx";
import { gatherPlan } from "../../../../../../../features/bedPlan/gather.ts";
import { ReadPlan } from "../../../../../../../features/bedPlan/ReadPlan.tsx";
import { seat } from "../../../../../../../server/seat.ts";
import { PrintButton } from "../../../../../../../ui/PrintButton.tsx";

interface Props {
  params: Promise<{ farmId: string; siteId: string; season: string }>;
}

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("bedPlan");
  return { title: t("page") };
}

/** A season's plantings on the beds of one site: for the agent to arrange, for the farmer to read. */
export default async function BedPlanPage({ params }: Props) {
  const [mine, { farmId, siteId, season }, t] = await Promise.all([
    seat(),
    params,
    getTranslations("bedPlan"),
  ]);
  if (!mine) redirect("/");
  const { farm, site, ...props } = await gatherPlan(mine, { farmId, siteId, season: Number(season) });
  const agent = mine.role === "agent";
  const { plan } = props;
  return (
    <article className="bed-plan">
      <p className="crumbs">
        <Link href={agent ? `/farms/${farmId}` : "/today"}>{farm}</Link> ·{" "}
        <Link href={`/farms/${farmId}/bed-plan`}>{t("crumb")}</Link>
      </p>
      <header className="plan-head">
        <h1>{t("title", { site, season })}</h1>
        <PrintButton label={t("print")} />
      </header>
      {plan.id === null && plan.blocks.length > 0 && <p className="faint no-print">{t("neverKept")}</p>}
      {plan.state.beds.length === 0 ? (
        <div className="flow">
          <p>{t("noBeds")}</p>
          {agent && (
            <Link className="tap" href={`/farms/${farmId}/edit/beds/new`}>
              {t("addBeds")}
            </Link>
          )}
        </div>
      ) : agent ? (
        <Desk {...props} />
      ) : (
        <ReadPlan {...props} />
      )}
    </article>
  );
}
