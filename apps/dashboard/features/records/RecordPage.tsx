import { type FarmDetail, farmRoutes, recordRoutes } from "@pith/contract";
import { notFound } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { todayIn } from "../../format/dates.ts";
import { call } from "../../server/api.ts";
import { type Seat, whoOf } from "../../server/seat.ts";
import { Row } from "../../ui/Row.tsx";
import { Form } from "../forms/Form.tsx";
import { viewOf } from "../forms/view.ts";
import { formWords, frameWords } from "../forms/words.ts";
import { PhotoPick } from "../signs/PhotoPick.tsx";
import { pickWords } from "../signs/words.ts";
import { addRecord } from "./actions.ts";
import { ClosedNotice } from "./ClosedNotice.tsx";
import { isRecordKind, type RecordKind, recordPlan, recordSchemas } from "./plans.ts";

/** What a label's intervals may forbid for now. */
const CLOSABLE: ReadonlySet<RecordKind> = new Set(["harvests", "applications"]);

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
  const params = { officeId: seat.officeId, farmId };
  const [detail, { closed }] = await Promise.all([
    call(farmRoutes.getFarm, { params }),
    call(recordRoutes.getRecords, { params, query: {} }),
  ]);
  const plan = recordPlan(kind, detail);
  const [t, words, frame] = await Promise.all([getTranslations("records"), formWords(kind), frameWords()]);
  const { units } = detail.farm;
  const start = {
    on: todayIn(detail.sites[0]?.timeZone),
    sampledOn: todayIn(detail.sites[0]?.timeZone),
    receivedOn: todayIn(detail.sites[0]?.timeZone),
    materialId: plan.choices?.materialId?.[0]?.value,
    at: new Date().toISOString(),
    siteId: plan.choices?.siteId?.[0]?.value,
    bedId: detail.plantings.find((p) => p.id === plantingId)?.bedId ?? plan.choices?.bedId?.[0]?.value,
    plantingId: plantingId ?? plan.choices?.plantingId?.[0]?.value,
    season: Number(todayIn(detail.sites[0]?.timeZone).slice(0, 4)) - 1,
    // A water test may be of every valve; a watering is of one.
    valveId: kind === "waterTests" ? null : plan.choices?.valveId?.[0]?.value,
  };
  const lacks = lacking(kind, detail);
  return (
    <Row notes={<p>{t(`help.${kind}`)}</p>}>
      <h1>{t(`add.${kind}`)}</h1>
      <p className="faint">{detail.farm.name}</p>
      {CLOSABLE.has(kind) && <ClosedNotice closed={closed} detail={detail} />}
      {lacks ? (
        <p className="decision-under">{t(lacks)}</p>
      ) : (
        <Form
          action={addRecord.bind(null, { farmId, kind, units, back })}
          sections={viewOf(plan, recordSchemas[kind], start, units, words)}
          submit={t("save")}
          cancel={{ href: back, label: t("cancel") }}
          words={frame}
          {...(kind === "signs" &&
            seat.role === "farmer" && { photos: <PhotoPick who={whoOf(seat)} words={await pickWords()} /> })}
          {...(seat.role === "farmer" && {
            offline: {
              url: `/record/${farmId}/${kind}/send?units=${units}`,
              page: `/record/${farmId}/${kind}`,
              next: `/record?saved=${kind}`,
              label: `${t(`add.${kind}`)}, ${detail.farm.name}`,
              who: whoOf(seat),
            },
          })}
        />
      )}
    </Row>
  );
}

/** What must be there before a record of that kind can be written; null where it is. */
function lacking(kind: RecordKind, { valves, plantings, materials, sites, beds }: FarmDetail) {
  switch (kind) {
    case "waterings":
      return valves.length === 0 ? "noValve" : null;
    case "waterTests":
      return sites.length === 0 ? "noSite" : null;
    case "deliveries":
      return materials.length === 0 ? "noMaterial" : null;
    case "soilWater":
    case "sprays":
    case "works":
    case "bedHistory":
      return beds.length === 0 ? "noBed" : null;
    default:
      if (plantings.every((p) => p.endedOn !== null)) return "noPlanting";
      return kind === "applications" && materials.length === 0 ? "noMaterial" : null;
  }
}
