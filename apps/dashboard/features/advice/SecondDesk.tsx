import type { DraftDetail } from "@pith/contract";
import { getTranslations } from "next-intl/server";
import { instantText } from "../../format/dates.ts";
import { ActButton } from "../forms/ActButton.tsx";
import { Form } from "../forms/Form.tsx";
import { frameWords } from "../forms/words.ts";
import { SlipBody } from "./Slip.tsx";
import { confirmSecond, sendBack, takeBackAsking } from "./second.ts";

/** Where a draft waits for a second agent: who asked takes it back; anybody else says yes, which issues it, or no, and why. */
export async function SecondDesk({ draft, zone }: { draft: DraftDetail; zone: string }) {
  const [t, words] = await Promise.all([getTranslations("second"), frameWords()]);
  const { second, said } = draft;
  if (!second) return null;
  const asked = <p>{t("asked", { name: second.askedBy, when: instantText(second.askedAt, zone) })}</p>;
  if (second.mine) {
    return (
      <>
        {asked}
        <p>{t("notYours")}</p>
        <ActButton
          action={takeBackAsking.bind(null, draft.id)}
          label={t("takeBack")}
          busy={t("working")}
          weight="quiet"
        />
      </>
    );
  }
  return (
    <>
      {asked}
      <p className="label">{t("preview", { farm: draft.farmName })}</p>
      <div className="slip">
        <h3>{said.decision}</h3>
        {second.note && (
          <p>
            <span className="label">{t("noteFrom", { name: second.askedBy })}</span> {second.note}
          </p>
        )}
        <SlipBody said={said} note={null} />
      </div>
      <ActButton
        action={confirmSecond.bind(null, { id: draft.id, stateSha256: draft.stateSha256 })}
        label={t("confirm")}
        busy={t("working")}
      />
      <details>
        <summary>{t("no")}</summary>
        <Form
          action={sendBack.bind(null, draft.id)}
          sections={[
            {
              title: null,
              each: null,
              fields: [
                {
                  name: "reason",
                  label: t("reason"),
                  kind: "long",
                  unit: null,
                  hint: t("reasonHint", { name: second.askedBy }),
                  required: true,
                  value: "",
                  choices: [],
                },
              ],
            },
          ]}
          submit={t("sendBack")}
          words={words}
        />
      </details>
    </>
  );
}
