import { farmRoutes, importRoutes } from "@pith/contract";
import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { named } from "../../../../../features/farm/plans.ts";
import { discard, statusOf } from "../../../../../features/imports/actions.ts";
import { ImportDesk } from "../../../../../features/imports/ImportDesk.tsx";
import { Laboratories } from "../../../../../features/imports/Laboratories.tsx";
import { importWords } from "../../../../../features/imports/words.ts";
import { toSi, unitLabel } from "../../../../../format/units.ts";
import { call } from "../../../../../server/api.ts";
import { agentSeat } from "../../../../../server/seat.ts";
import { readerZone } from "../../../../../server/zone.ts";
import { Row } from "../../../../../ui/Row.tsx";
import { Saved } from "../../../../../ui/Saved.tsx";

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("imports");
  return { title: t("title") };
}

interface Props {
  params: Promise<{ farmId: string }>;
  searchParams: Promise<Record<string, string>>;
}

/** Files in: chosen, read, shown, and only then saved. */
export default async function ImportPage({ params, searchParams }: Props) {
  const [{ officeId }, { farmId }, asked, zone, t, words] = await Promise.all([
    agentSeat(),
    params,
    searchParams,
    readerZone(),
    getTranslations("imports"),
    importWords(),
  ]);
  const [{ farm, sites, beds }, { labs }] = await Promise.all([
    call(farmRoutes.getFarm, { params: { officeId, farmId } }),
    call(importRoutes.listLabMappings, { params: { officeId } }),
  ]);
  return (
    <>
      <p className="crumbs">
        <Link href={`/farms/${farmId}#imports`}>{farm.name}</Link>
      </p>
      <Row wide>
        <h1>{t("title")}</h1>
        <p className="decision-under">{t("lead")}</p>
        <Saved asked={asked} />
        <ImportDesk
          imports={`/farms/${farmId}/imports`}
          labs={labs.map(({ lab }) => lab)}
          sites={named(sites)}
          beds={named(beds)}
          mostBytes={importRoutes.MOST_CSV_LETTERS}
          units={{ depth: unitLabel("cm", farm.units), toCm: toSi(1, "cm", farm.units) }}
          statusOf={statusOf.bind(null, farmId)}
          discard={discard.bind(null, farmId)}
          words={words}
        />
        <Laboratories labs={labs} farmId={farmId} zone={zone} />
      </Row>
    </>
  );
}
