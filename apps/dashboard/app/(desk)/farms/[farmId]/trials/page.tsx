import { farmRoutes, trialRoutes } from "@pith/contract";
import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { call } from "../../../../../server/api.ts";
import { agentSeat } from "../../../../../server/seat.ts";
import { Row } from "../../../../../ui/Row.tsx";
import { Saved } from "../../../../../ui/Saved.tsx";

interface Props {
  params: Promise<{ farmId: string }>;
  searchParams: Promise<Record<string, string>>;
}

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("trials");
  return { title: t("title") };
}

/** A farm's trials, with how far each has come. */
export default async function TrialsPage({ params, searchParams }: Props) {
  const [{ officeId }, { farmId }, asked, t] = await Promise.all([
    agentSeat(),
    params,
    searchParams,
    getTranslations("trials"),
  ]);
  const where = { officeId, farmId };
  const [{ farm }, { trials }] = await Promise.all([
    call(farmRoutes.getFarm, { params: where }),
    call(trialRoutes.listTrials, { params: where }),
  ]);
  return (
    <>
      <p className="crumbs">
        <Link href={`/farms/${farmId}`}>{farm.name}</Link>
      </p>
      <Saved asked={asked} />
      <Row notes={<p className="small">{t("help")}</p>}>
        <h1>{t("title")}</h1>
        {trials.length === 0 && <p className="decision-under">{t("none")}</p>}
        <ul className="listing">
          {trials.map((trial) => (
            <li key={trial.id}>
              <Link href={`/farms/${farmId}/trials/${trial.id}`}>{trial.name}</Link>{" "}
              <span className="faint">
                {t(`designs.${trial.design}`)}, {t("filled", { filled: trial.filled, wanted: trial.wanted })}
              </span>
            </li>
          ))}
        </ul>
        <Link className="tap" href={`/farms/${farmId}/trials/new`}>
          {t("new")}
        </Link>
      </Row>
    </>
  );
}
