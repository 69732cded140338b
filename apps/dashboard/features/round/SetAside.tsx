import type { Draft } from "@pith/contract";
import { getTranslations } from "next-intl/server";
import { weekdayText } from "../../format/dates.ts";
import { setAside } from "../advice/actions.ts";
import { Form } from "../forms/Form.tsx";
import { frameWords } from "../forms/words.ts";

/** Puts a draft off until a day, or brings it back. */
export async function SetAside({ draft }: { draft: Pick<Draft, "id" | "setAsideUntil"> }) {
  const [t, words] = await Promise.all([getTranslations("round"), frameWords()]);
  const action = setAside.bind(null, draft.id);
  if (draft.setAsideUntil !== null) {
    return (
      <>
        <p>{t("asideUntil", { day: weekdayText(draft.setAsideUntil) })}</p>
        <Form action={action} sections={[]} submit={t("bringBack")} words={words}>
          <input type="hidden" name="bring-back" value="yes" />
        </Form>
      </>
    );
  }
  const field = {
    name: "until",
    label: t("until"),
    kind: "date" as const,
    unit: null,
    hint: null,
    required: true,
    value: "",
    choices: [],
  };
  return (
    <details className="no-print">
      <summary>{t("setAside")}</summary>
      <Form
        action={action}
        sections={[{ title: null, fields: [{ ...field, id: `until-${draft.id}` }], each: null }]}
        submit={t("setAside")}
        words={words}
      />
    </details>
  );
}
