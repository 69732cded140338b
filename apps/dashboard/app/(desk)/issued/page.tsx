import { adviceRoutes, farmRoutes } from "@pith/contract";
import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { AdvisoryList } from "../../../features/advice/AdvisoryList.tsx";
import { call } from "../../../server/api.ts";
import { agentSeat } from "../../../server/seat.ts";
import { Choose } from "../../../ui/Choose.tsx";
import { Row } from "../../../ui/Row.tsx";
import { RULES } from "../../../ui/ruleNames.ts";

const PAGE = 50;

interface Props {
  searchParams: Promise<{ farm?: string; planting?: string; rule?: string; open?: string; after?: string }>;
}

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("issuedList");
  return { title: t("title") };
}

/** Everything that was issued, newest first, of all farms or of one, and what became of it. */
export default async function IssuedPage({ searchParams }: Props) {
  const [{ officeId }, asked, t, round, rules] = await Promise.all([
    agentSeat(),
    searchParams,
    getTranslations("issuedList"),
    getTranslations("round"),
    getTranslations("rules"),
  ]);
  const filters = {
    farmId: asked.farm || undefined,
    plantingId: asked.planting || undefined,
    ruleId: asked.rule || undefined,
    open: asked.open === "yes" ? ("yes" as const) : undefined,
  };
  const [{ advisories, next }, { farms }] = await Promise.all([
    call(adviceRoutes.listAdvisories, {
      params: { officeId },
      query: { ...filters, after: asked.after || undefined, limit: PAGE },
    }),
    call(farmRoutes.listFarms, { params: { officeId } }),
  ]);
  const { farm, planting, rule, open } = asked;
  const address = (after?: string) =>
    `/issued?${new URLSearchParams(
      Object.entries({ farm, planting, rule, open, after }).flatMap(([name, value]) =>
        value ? [[name, value]] : [],
      ),
    )}`;
  return (
    <>
      <Row>
        <h1>{t("title")}</h1>
        <p className="decision-under">{planting ? t("leadPlanting") : t("lead")}</p>
        <form className="filters" method="get">
          {planting && <input type="hidden" name="planting" value={planting} />}
          <Choose
            name="farm"
            label={round("farm")}
            chosen={farm}
            options={[["", round("allFarms")], ...farms.map(({ id, name }) => [id, name] as const)]}
          />
          <Choose
            name="rule"
            label={round("rule")}
            chosen={rule}
            options={[["", round("allRules")], ...RULES.map((id) => [id, rules(id)] as const)]}
          />
          <Choose
            name="open"
            label={round("show")}
            chosen={open}
            options={[
              ["", t("all")],
              ["yes", t("open")],
            ]}
          />
          <button type="submit" className="quiet">
            {round("apply")}
          </button>
        </form>
      </Row>
      <Row wide>
        <AdvisoryList advisories={advisories} base="/issued" farms={farm ? undefined : "named"} />
        {(next !== null || asked.after) && (
          <p className="actions">
            {asked.after && (
              <Link className="tap" href={address()}>
                {t("newest")}
              </Link>
            )}
            {next !== null && (
              <Link className="tap" href={address(next)}>
                {t("older")}
              </Link>
            )}
          </p>
        )}
      </Row>
    </>
  );
}
