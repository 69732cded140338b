import { farmRoutes, peopleRoutes } from "@pith/contract";
import type { Metadata } from "next";
import { getTranslations } from "next-intl/server";
import {
  askForSecondStep,
  changePerson,
  invite,
  removePerson,
  resend,
  revoke,
} from "../../../../features/people/actions.ts";
import { PlaceButton, PlaceForm } from "../../../../features/people/PlaceForm.tsx";
import { instantText } from "../../../../format/dates.ts";
import { call } from "../../../../server/api.ts";
import { agentSeat } from "../../../../server/seat.ts";
import { readerZone } from "../../../../server/zone.ts";
import { Row } from "../../../../ui/Row.tsx";
import { ToOffice } from "../../../../ui/ToOffice.tsx";

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("people");
  return { title: t("title") };
}

/** Who belongs to the office, who is asked in, and what the office asks of its staff. */
export default async function PeoplePage() {
  const [{ officeId, lead }, zone, t] = await Promise.all([
    agentSeat(),
    readerZone(),
    getTranslations("people"),
  ]);
  const params = { officeId };
  const [{ people, secondStepForStaff }, { invitations }, { farms }] = await Promise.all([
    call(peopleRoutes.listPeople, { params }),
    call(peopleRoutes.listInvitations, { params }),
    call(farmRoutes.listFarms, { params }),
  ]);
  const farmNames = new Map(farms.map((farm) => [farm.id, farm.name]));
  const farmChoices = farms.map(({ id, name }) => ({ value: id, label: name }));
  const roles = (
    lead ? (["farmer", "reader", "agent", "lead"] as const) : (["farmer", "reader"] as const)
  ).map((role) => ({ value: role, label: t(`roles.${role}`) }));
  const words = (submit: string) => ({
    email: t("email"),
    name: t("name"),
    role: t("role"),
    farms: t("farms"),
    busy: t("busy"),
    submit,
  });
  const farmsOf = (ids: string[]) => ids.map((id) => farmNames.get(id) ?? "").join(", ");
  return (
    <>
      <ToOffice />
      <Row>
        <h1>{t("title")}</h1>
        <p className="decision-under">{t("what")}</p>
      </Row>
      <Row side={<h2>{t("membersHead")}</h2>} notes={<p>{t("membersNotes")}</p>}>
        {people.map(({ id, name, email, role, farmIds }) => (
          <div key={id} className="person">
            <p>
              <strong>{name}</strong>, {t(`roles.${role}`)}
            </p>
            <p className="faint">{[email, farmsOf(farmIds)].filter(Boolean).join(" · ")}</p>
            {(lead || role === "farmer" || role === "reader") && (
              <details>
                <summary className="tap">{t("change", { name })}</summary>
                <PlaceForm
                  action={changePerson.bind(null, id)}
                  words={words(t("keep"))}
                  roles={roles}
                  farms={farmChoices}
                  now={{ role, farmIds }}
                />
                <PlaceButton
                  action={removePerson.bind(null, id)}
                  label={t("remove", { name })}
                  busy={t("busy")}
                />
              </details>
            )}
          </div>
        ))}
      </Row>
      <Row side={<h2>{t("askedHead")}</h2>} notes={<p>{t("askedNotes")}</p>}>
        {invitations.length === 0 && <p>{t("nobodyAsked")}</p>}
        {invitations.map(({ id, name, email, role, farmIds, invitedBy, expiresAt, expired }) => (
          <div key={id} className="person">
            <p>
              <strong>{name}</strong>, {t(`roles.${role}`)}
            </p>
            <p className="faint">{[email, farmsOf(farmIds)].filter(Boolean).join(" · ")}</p>
            <p>
              {t(expired ? "askedExpired" : "askedUntil", {
                by: invitedBy,
                at: instantText(expiresAt, zone),
              })}
            </p>
            <div className="actions">
              <PlaceButton
                action={resend.bind(null, id)}
                label={t("resend")}
                named={t("resendNamed", { name })}
                busy={t("busy")}
              />
              <PlaceButton
                action={revoke.bind(null, id)}
                label={t("revoke")}
                named={t("revokeNamed", { name })}
                busy={t("busy")}
              />
            </div>
          </div>
        ))}
      </Row>
      <Row side={<h2>{t("askHead")}</h2>} notes={<p>{t("askNotes")}</p>}>
        <PlaceForm
          action={invite}
          words={words(t("ask"))}
          roles={roles}
          farms={farmChoices}
          asksWho
          now={{ role: "farmer", farmIds: [] }}
        />
      </Row>
      {lead && (
        <Row side={<h2>{t("stepHead")}</h2>} notes={<p>{t("stepNotes")}</p>}>
          <p>{t(secondStepForStaff ? "stepIsAsked" : "stepIsNotAsked")}</p>
          <PlaceButton
            action={askForSecondStep.bind(null, !secondStepForStaff)}
            label={t(secondStepForStaff ? "stepEnd" : "stepAsk")}
            busy={t("busy")}
          />
        </Row>
      )}
    </>
  );
}
