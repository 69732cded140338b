import { farmRoutes, importRoutes } from "@pith/contract";
import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { named } from "../../../../../features/farm/plans.ts";
import { discard, preview, save } from "../../../../../features/imports/actions.ts";
import { ImportDesk } from "../../../../../features/imports/ImportDesk.tsx";
import { importWords } from "../../../../../features/imports/words.ts";
import { toSi, unitLabel } from "../../../../../format/units.ts";
import { call } from "../../../../../server/api.ts";
import { agentSeat } from "../../../../../server/seat.ts";
import { Row } from "../../../../../ui/Row.tsx";

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("imports");
  return { title: t("title") };
}

/** Files in: chosen, read, shown, and only then saved. */
export default async function ImportPage({ params }: { params: Promise<{ farmId: string }> }) {
  const [{ officeId }, { farmId }, t, words] = await Promise.all([
    agentSeat(),
    params,
    getTranslations("imports"),
    importWords(),
  ]);
  const { farm, sites, beds } = await call(farmRoutes.getFarm, { params: { officeId, farmId } });
  return (
    <>
      <p className="crumbs">
        <Link href={`/farms/${farmId}#imports`}>{farm.name}</Link>
      </p>
      <Row wide>
        <h1>{t("title")}</h1>
        <p className="decision-under">{t("lead")}</p>
        <ImportDesk
          sites={named(sites)}
          beds={named(beds)}
          mostBytes={importRoutes.MOST_CSV_LETTERS}
          units={{ depth: unitLabel("cm", farm.units), toCm: toSi(1, "cm", farm.units) }}
          preview={preview.bind(null, farmId)}
          save={save.bind(null, farmId)}
          discard={discard.bind(null, farmId)}
          words={words}
        />
      </Row>
    </>
  );
}
