import { farmRoutes } from "@pith/contract";
import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { designTrial } from "../../../../../../features/trials/actions.ts";
import { DesignForm } from "../../../../../../features/trials/DesignForm.tsx";
import { DESIGNS, KINDS } from "../../../../../../features/trials/design.ts";
import { inText } from "../../../../../../format/units.ts";
import { call } from "../../../../../../server/api.ts";
import { agentSeat } from "../../../../../../server/seat.ts";
import { Row } from "../../../../../../ui/Row.tsx";

interface Props {
  params: Promise<{ farmId: string }>;
}

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("trials");
  return { title: t("new") };
}

const WORDS = [
  "what",
  "name",
  "design",
  "factor",
  "levels",
  "factor2",
  "levels2",
  "measured",
  "response",
  "responseMore",
  "unit",
  "kind",
  "better",
  "where",
  "beds",
  "plotLength",
  "gap",
  "blocks",
  "howMany",
  "howManyHelp",
  "cv",
  "difference",
  "ask",
  "save",
  "busy",
] as const;

/** Designs a trial: it is laid out at random as soon as it is kept, and can be drawn again until it begins. */
export default async function NewTrialPage({ params }: Props) {
  const [{ officeId }, { farmId }, t, form] = await Promise.all([
    agentSeat(),
    params,
    getTranslations("trials"),
    getTranslations("trials.form"),
  ]);
  const { farm, beds } = await call(farmRoutes.getFarm, { params: { officeId, farmId } });
  return (
    <>
      <p className="crumbs">
        <Link href={`/farms/${farmId}`}>{farm.name}</Link>,{" "}
        <Link href={`/farms/${farmId}/trials`}>{t("title")}</Link>
      </p>
      <Row notes={<p className="small">{t("help")}</p>}>
        <h1>{t("new")}</h1>
        {beds.length === 0 ? (
          <p>{t("noBeds")}</p>
        ) : (
          <DesignForm
            action={designTrial.bind(null, farmId)}
            designs={DESIGNS.map((value) => ({
              value,
              label: t(`designs.${value}`),
              help: t(`designHelp.${value}`),
            }))}
            kinds={KINDS.map((value) => ({ value, label: t(`kinds.${value}`) }))}
            better={(["more", "less", "neither"] as const).map((value) => ({
              value,
              label: t(`betters.${value}`),
            }))}
            beds={beds.map((bed) => ({
              value: bed.id,
              label: t("bedLength", { bed: bed.name, length: inText(bed.lengthM, "m", farm.units) }),
            }))}
            words={Object.fromEntries(WORDS.map((word) => [word, form(word)]))}
          />
        )}
      </Row>
    </>
  );
}
