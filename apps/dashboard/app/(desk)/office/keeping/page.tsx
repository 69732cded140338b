import { exportRoutes, farmRoutes, ledgerRoutes } from "@pith/contract";
import type { Metadata } from "next";
import { redirect } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { erase, verifyHistory } from "../../../../features/keeping/actions.ts";
import { EraseForm } from "../../../../features/keeping/EraseForm.tsx";
import { TakeIn } from "../../../../features/keeping/TakeIn.tsx";
import { Check } from "../../../../features/ledger/Check.tsx";
import { instantText } from "../../../../format/dates.ts";
import { call } from "../../../../server/api.ts";
import { agentSeat } from "../../../../server/seat.ts";
import { readerZone } from "../../../../server/zone.ts";
import { Row } from "../../../../ui/Row.tsx";
import { ToOffice } from "../../../../ui/ToOffice.tsx";

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("keeping");
  return { title: t("title") };
}

/** Everything the office owns, out and in; farms that move; people who asked to be erased. */
export default async function KeepingPage() {
  const { officeId, lead } = await agentSeat();
  if (!lead) redirect("/office");
  const params = { officeId };
  const [{ farms }, { histories }, { people }, zone, t] = await Promise.all([
    call(farmRoutes.listFarms, { params }),
    call(ledgerRoutes.listHistories, { params }),
    call(exportRoutes.listErasable, { params }),
    readerZone(),
    getTranslations("keeping"),
  ]);
  const nameOf = new Map(farms.map((farm) => [farm.id, farm.name]));
  const sending = {
    file: t("file"),
    sending: t("sending"),
    choose: t("choose"),
    unreachable: t("unreachable"),
  };
  return (
    <>
      <ToOffice />
      <Row notes={<p>{t("notes")}</p>}>
        <h1>{t("title")}</h1>
        <p className="decision-under">{t("lead")}</p>
      </Row>
      <Row side={<h2>{t("out")}</h2>} notes={<p>{t("leftOut")}</p>}>
        <ul className="listing">
          <li>
            <a className="tap" href="/office/keeping/out" download>
              {t("outLines")}
            </a>
            <p className="faint">{t("outLinesWhat")}</p>
          </li>
          <li>
            <a className="tap" href="/office/keeping/out?as=csv" download>
              {t("outCsv")}
            </a>
            <p className="faint">{t("outCsvWhat")}</p>
          </li>
        </ul>
      </Row>
      <Row side={<h2>{t("in")}</h2>}>
        <p>{t("inWhat")}</p>
        <TakeIn what="office" words={{ ...sending, send: t("takeInOffice"), done: t("officeTaken") }} />
      </Row>
      <Row side={<h2>{t("move")}</h2>} notes={<p>{t("moveNotes")}</p>}>
        <p>{t("moveWhat")}</p>
        {farms.length > 0 && (
          <ul className="listing">
            {farms.map(({ id, name }) => (
              <li key={id}>
                <a className="tap" href={`/office/keeping/out?farm=${id}`} download>
                  {t("moveOut", { farm: name })}
                </a>
              </li>
            ))}
          </ul>
        )}
        <TakeIn what="farm" words={{ ...sending, send: t("takeInFarm"), done: t("farmTaken") }} />
      </Row>
      {histories.length > 0 && (
        <Row side={<h2>{t("histories")}</h2>}>
          <ul className="listing">
            {histories.map(({ id, farmId, fromOfficeName, takenInAt, entries }) => (
              <li key={id}>
                <p>
                  {t("history", {
                    farm: nameOf.get(farmId) ?? farmId,
                    office: fromOfficeName,
                    at: instantText(takenInAt, zone),
                    entries,
                  })}
                </p>
                <Check
                  action={verifyHistory.bind(null, id)}
                  label={t("verifyHistory")}
                  busy={t("verifying")}
                />
              </li>
            ))}
          </ul>
        </Row>
      )}
      <Row side={<h2>{t("erase")}</h2>} notes={<p>{t("kept")}</p>}>
        <p>{t("eraseWhat")}</p>
        {people.length === 0 && <p>{t("nobody")}</p>}
        {people.length > 0 && (
          <ul className="listing">
            {people.map(({ userId, name, cameWithFarm, role, texts, photos }) => (
              <li key={userId}>
                <p>{cameWithFarm ? t("cameWith", { name }) : t("person", { name, role: role ?? "left" })}</p>
                <EraseForm
                  action={erase}
                  userId={userId}
                  words={{
                    open: cameWithFarm ? t("eraseCame") : t("erasePerson", { name }),
                    goes: t("goes", { texts, photos }),
                    name: t("typeName", { name }),
                    erase: t("eraseNow"),
                    erasing: t("erasing"),
                  }}
                />
              </li>
            ))}
          </ul>
        )}
      </Row>
    </>
  );
}
