import { farmRoutes } from "@pith/contract";
import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { saveThing } from "../../../../../../../features/farm/actions.ts";
import { isThing, planOf, schemas, startOf } from "../../../../../../../features/farm/plans.ts";
import { Form } from "../../../../../../../features/forms/Form.tsx";
import { viewOf } from "../../../../../../../features/forms/view.ts";
import { formWords, frameWords } from "../../../../../../../features/forms/words.ts";
import { call, callTagged } from "../../../../../../../server/api.ts";
import { agentSeat } from "../../../../../../../server/seat.ts";
import { Row } from "../../../../../../../ui/Row.tsx";

interface Props {
  params: Promise<{ farmId: string; thing: string; id: string }>;
  searchParams: Promise<Record<string, string>>;
}

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const { thing, id } = await params;
  if (!isThing(thing)) return {};
  const t = await getTranslations("things");
  return { title: t(id === "new" ? `${thing}.add` : `${thing}.change`) };
}

/** Adds or changes a site, valve, bed, house, planting or material: one page for all of them. */
export default async function EditPage({ params, searchParams }: Props) {
  const [{ officeId }, { farmId, thing, id }, asked, t] = await Promise.all([
    agentSeat(),
    params,
    searchParams,
    getTranslations("things"),
  ]);
  if (!isThing(thing)) notFound();
  const fresh = id === "new";
  const [farm, read] = await Promise.all([
    call(farmRoutes.getFarm, { params: { officeId, farmId } }),
    fresh ? null : callTagged(farmRoutes[thing].get, { params: { officeId, farmId, id } }),
  ]);
  const stored = read?.value;
  const plan = planOf(thing, farm);
  const [words, frame] = await Promise.all([formWords(thing), frameWords()]);
  const units = farm.farm.units;
  // A valve, a bed and a planting stand in something that must be there first.
  const needed = {
    valves: "sites",
    beds: "sites",
    structures: "sites",
    plantings: "beds",
    sites: null,
    materials: null,
  } as const;
  const first = needed[thing];

  return (
    <>
      <p className="crumbs">
        <Link href={`/farms/${farmId}`}>{farm.farm.name}</Link>
      </p>
      <Row notes={<p>{t(`${thing}.help`)}</p>}>
        <h1>{t(fresh ? `${thing}.add` : `${thing}.change`)}</h1>
        {first && farm[first].length === 0 ? (
          <p className="decision-under">
            {t(`${first}.first`)} <Link href={`/farms/${farmId}/edit/${first}/new`}>{t(`${first}.add`)}</Link>
          </p>
        ) : (
          <Form
            action={saveThing.bind(null, {
              farmId,
              thing,
              id: fresh ? null : id,
              tag: read?.tag ?? null,
              units,
            })}
            sections={viewOf(
              plan,
              schemas[thing],
              { ...(stored ?? startOf(thing, farm, asked)) },
              units,
              words,
            )}
            submit={t("save")}
            cancel={{ href: `/farms/${farmId}#${thing}`, label: t("cancel") }}
            words={frame}
          />
        )}
      </Row>
    </>
  );
}
