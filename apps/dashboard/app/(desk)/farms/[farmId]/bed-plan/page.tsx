import { farmRoutes } from "@pith/contract";
import type { Metadata } from "next";
import Link from "next/link";
import { redirect } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { seasonsOf } from "../../../../../features/bedPlan/seasons.ts";
import { todayIn } from "../../../../../format/dates.ts";
import { call } from "../../../../../server/api.ts";
import { seat } from "../../../../../server/seat.ts";
import { Row } from "../../../../../ui/Row.tsx";

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("bedPlan");
  return { title: t("page") };
}

/** Which site's beds, and for which season. */
export default async function BedPlans({ params }: { params: Promise<{ farmId: string }> }) {
  const [mine, { farmId }, t] = await Promise.all([seat(), params, getTranslations("bedPlan")]);
  if (!mine) redirect("/");
  const detail = await call(farmRoutes.getFarm, { params: { officeId: mine.officeId, farmId } });
  const agent = mine.role === "agent";
  return (
    <>
      <p className="crumbs">
        <Link href={agent ? `/farms/${farmId}` : "/today"}>{detail.farm.name}</Link>
      </p>
      <Row>
        <h1>{t("chooserTitle", { farm: detail.farm.name })}</h1>
        {detail.sites.length === 0 && (
          <>
            <p>{t("noSites")}</p>
            {agent && (
              <Link className="tap" href={`/farms/${farmId}/edit/sites/new`}>
                {t("addSite")}
              </Link>
            )}
          </>
        )}
      </Row>
      {detail.sites.map((site) => (
        <Row key={site.id} side={<h2>{site.name}</h2>}>
          <ul className="plain">
            {seasonsOf(detail, site.id, Number(todayIn(site.timeZone).slice(0, 4))).map((season) => (
              <li key={season}>
                <Link className="tap" href={`/farms/${farmId}/bed-plan/${site.id}/${season}`}>
                  {t("planOf", { site: site.name, season: String(season) })}
                </Link>
              </li>
            ))}
          </ul>
        </Row>
      ))}
    </>
  );
}
