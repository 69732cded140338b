import { openRoutes, peopleRoutes } from "@pith/contract";
import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { changePassword, endSecondStep, leave, rename } from "../../../features/account/actions.ts";
import { NewCodes } from "../../../features/account/SecondStep.tsx";
import { Sessions } from "../../../features/account/Sessions.tsx";
import { secondStepWords } from "../../../features/account/words.ts";
import { LineForm } from "../../../features/session/LineForm.tsx";
import { call } from "../../../server/api.ts";
import { readerZone } from "../../../server/zone.ts";
import { Row } from "../../../ui/Row.tsx";
import { Saved } from "../../../ui/Saved.tsx";

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("account");
  return { title: t("title") };
}

/** A person's own affairs, whatever their offices. */
export default async function AccountPage({
  searchParams,
}: {
  searchParams: Promise<Record<string, string>>;
}) {
  const [{ user, memberships }, { sessions }, asked, zone, t, delivery, words] = await Promise.all([
    call(openRoutes.me, {}),
    call(peopleRoutes.listSessions, {}),
    searchParams,
    readerZone(),
    getTranslations("account"),
    getTranslations("delivery"),
    secondStepWords(),
  ]);
  return (
    <>
      <Saved asked={asked} />
      <Row>
        <h1>{t("title")}</h1>
        <p className="decision-under">{user.email}</p>
        <LineForm
          action={rename}
          lines={[{ name: "name", label: t("name"), type: "text", autoComplete: "name", value: user.name }]}
          submit={t("keepName")}
          busy={t("busy")}
          id="rename"
        />
      </Row>
      <Row side={<h2>{delivery("title")}</h2>}>
        <p>
          <Link className="tap" href="/account/delivery">
            {delivery("link")}
          </Link>
        </p>
      </Row>
      <Row side={<h2>{t("passwordHead")}</h2>} notes={<p>{t("passwordNotes")}</p>}>
        <LineForm
          action={changePassword}
          lines={[
            { name: "password", label: t("password"), type: "password", autoComplete: "current-password" },
            {
              name: "newPassword",
              label: t("newPassword"),
              type: "password",
              autoComplete: "new-password",
              hint: t("passwordHint"),
            },
          ]}
          submit={t("keepPassword")}
          busy={t("busy")}
          id="change"
        />
      </Row>
      <Row side={<h2>{t("secondStepHead")}</h2>} notes={<p>{t("secondStep.notes")}</p>}>
        {user.secondStep ? (
          <>
            <p>{t("secondStep.on")}</p>
            <NewCodes words={words} />
            <LineForm
              action={endSecondStep}
              lines={[
                {
                  name: "password",
                  label: t("password"),
                  type: "password",
                  autoComplete: "current-password",
                },
              ]}
              submit={t("secondStep.end")}
              busy={t("busy")}
              id="end"
            />
          </>
        ) : (
          <>
            <p>{t("secondStep.off")}</p>
            <p>
              <Link className="tap" href="/account/second-step">
                {t("secondStep.setUp")}
              </Link>
            </p>
          </>
        )}
      </Row>
      <Row side={<h2>{t("sessionsHead")}</h2>} notes={<p>{t("sessionsNotes")}</p>}>
        <Sessions sessions={sessions} zone={zone} />
      </Row>
      <Row side={<h2>{t("officesHead")}</h2>} notes={<p>{t("leaveNotes")}</p>}>
        {memberships.map(({ officeId, officeName, role }) => (
          <div key={officeId} className="person">
            <p>{t("inOffice", { office: officeName, role: t(`roles.${role}`) })}</p>
            <details>
              <summary className="tap">{t("leaveAsk")}</summary>
              <LineForm
                action={leave.bind(null, officeId)}
                lines={[]}
                submit={t("leave", { office: officeName })}
                busy={t("busy")}
                id={`leave-${officeId}`}
              />
            </details>
          </div>
        ))}
      </Row>
    </>
  );
}
