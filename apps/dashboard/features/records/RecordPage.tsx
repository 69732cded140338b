import { farmRoutes } from "@pith/contract";
import { notFound } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { todayIn } from "../../format/dates.ts";
import { call } from "../../server/api.ts";
import type { Seat } from "../../server/seat.ts";
import { Row } from "../../ui/Row.tsx";
import { Form } from "../forms/Form.tsx";
import { viewOf } from "../forms/view.ts";
import { formWords, frameWords } from "../forms/words.ts";
import { addRecord } from "./actions.ts";
import { isRecordKind, recordPlan, recordSchemas } from "./plans.ts";

interface Props {
  seat: Seat;
  farmId: string;
  kind: string;
  back: string;
  plantingId?: string;
}

/** Writes down one thing seen or done, for agent and farmer alike. */
export async function RecordPage({ seat, farmId, kind, back, plantingId }: Props) {
  if (!isRecordKind(kind)) notFound();
  const detail = await call(farmRoutes.getFarm, { params: { officeId: seat.officeId, farmId } });
  const plan = recordPlan(kind, detail);
  const [t, words, frame] = await Promise.all([getTranslations("records"), formWords(kind), frameWords()]);
  const { units } = detail.farm;
  const start = {
    on: todayIn(detail.sites[0]?.timeZone),
    plantingId: plantingId ?? plan.choices?.plantingId?.[0]?.value,
    valveId: plan.choices?.valveId?.[0]?.value,
  };
  const lacks =
    kind === "waterings"
      ? detail.valves.length === 0 && t("noValve")
      : plan.choices?.plantingId?.length === 0
        ? t("noPlanting")
        : kind === "applications" && detail.materials.length === 0 && t("noMaterial");
  return (
    <Row notes={<p>{t(`help.${kind}`)}</p>}>
      <h1>{t(`add.${kind}`)}</h1>
      <p className="faint">{detail.farm.name}</p>
      {lacks ? (
        <p className="decision-under">{lacks}</p>
      ) : (
        <Form
          action={addRecord.bind(null, { farmId, kind, units, back })}
          sections={viewOf(plan, recordSchemas[kind], start, units, words)}
          submit={t("save")}
          cancel={{ href: back, label: t("cancel") }}
          words={frame}
        />
      )}
    </Row>
  );
}
