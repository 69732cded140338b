import { farmRoutes, recordRoutes } from "@pith/contract";
import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { Checkpoints } from "../../../features/ledger/Checkpoints.tsx";
import { WaitingHere } from "../../../features/offline/WaitingHere.tsx";
import { ClosedNotice } from "../../../features/records/ClosedNotice.tsx";
import { RecordLinks } from "../../../features/records/RecordLinks.tsx";
import { RecordsList, recordsQuery } from "../../../features/records/RecordsList.tsx";
import { OrdersOfFarm } from "../../../features/standingOrders/OrdersOfFarm.tsx";
import { TrialLinks } from "../../../features/trials/TrialLinks.tsx";
import { call } from "../../../server/api.ts";
import { farmerSeat, whoOf } from "../../../server/seat.ts";
import { Row } from "../../../ui/Row.tsx";
import { Saved } from "../../../ui/Saved.tsx";

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("records");
  return { title: t("title") };
}

/** What is written down in the field, far from any signal. */
const AT_HAND = ["notes", "waterings", "applications", "harvests", "works", "signs"] as const;

/** The farmer's own record: write down what was seen and done, and read it again. */
export default async function RecordHome({
  searchParams,
}: {
  searchParams: Promise<Record<string, string>>;
}) {
  const [mine, asked, t, keeping] = await Promise.all([
    farmerSeat(),
    searchParams,
    getTranslations("records"),
    getTranslations("keeping"),
  ]);
  const { officeId, mayWrite } = mine;
  const { farms } = await call(farmRoutes.listFarms, { params: { officeId } });
  const books = await Promise.all(
    farms.map(async ({ id: farmId }) => ({
      detail: await call(farmRoutes.getFarm, { params: { officeId, farmId } }),
      records: await call(recordRoutes.getRecords, {
        params: { officeId, farmId },
        query: recordsQuery(asked),
      }),
    })),
  );
  return (
    <>
      <Saved asked={asked} />
      <WaitingHere
        who={whoOf(mine)}
        pages={[
          "/record",
          "/today",
          ...(mayWrite ? farms.flatMap(({ id }) => AT_HAND.map((kind) => `/record/${id}/${kind}`)) : []),
        ]}
      />
      <Row>
        <h1>{t("title")}</h1>
        {farms.length === 0 && <p className="decision-under">{t("noFarm")}</p>}
      </Row>
      {books.map(({ detail, records }) => (
        <Row key={detail.farm.id} side={<h2>{detail.farm.name}</h2>}>
          <ClosedNotice closed={records.closed} detail={detail} />
          <p className="actions">
            <Link className="tap" href={`/season-record/${detail.farm.id}`} prefetch={false}>
              {t("seasonRecord")}
            </Link>
            <Link className="tap" href={`/sensors/${detail.farm.id}`} prefetch={false}>
              {t("sensors")}
            </Link>
          </p>
          {mayWrite && <RecordLinks base={`/record/${detail.farm.id}`} />}
          {mayWrite && <TrialLinks officeId={officeId} farmId={detail.farm.id} />}
          <RecordsList records={records} detail={detail} back="/record" who="farmer" mayWrite={mayWrite} />
          <OrdersOfFarm officeId={officeId} farmId={detail.farm.id} />
        </Row>
      ))}
      <Row side={<h2>{keeping("recordCheckpoint")}</h2>}>
        <p>{keeping("recordCheckpointWhat")}</p>
        <Checkpoints officeId={officeId} most={1} />
      </Row>
    </>
  );
}
