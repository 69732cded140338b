import type { Draft } from "@pith/contract";
import type { getTranslations } from "next-intl/server";
import { weekdayText } from "../../format/dates.ts";
import { setAside } from "../advice/actions.ts";
import { Form } from "../forms/Form.tsx";
import type { frameWords } from "../forms/words.ts";
import { AsideForm } from "./AsideForm.tsx";

interface Props {
  draft: Pick<Draft, "id" | "setAsideUntil">;
  t: Awaited<ReturnType<typeof getTranslations<"round">>>;
  words: Awaited<ReturnType<typeof frameWords>>;
}

/** Puts a draft off until a day, or brings it back. */
export function SetAside({ draft, t, words }: Props) {
  if (draft.setAsideUntil !== null) return <BringBack {...{ draft, t, words }} />;
  return (
    <details className="no-print">
      <summary>{t("setAside")}</summary>
      <AsideForm draftId={draft.id} words={asideWords(t, words)} />
    </details>
  );
}

export const asideWords = (t: Props["t"], frame: Props["words"]) => ({
  until: t("until"),
  setAside: t("setAside"),
  frame,
});

export function BringBack({ draft, t, words }: Props) {
  return (
    <>
      <p>{draft.setAsideUntil && t("asideUntil", { day: weekdayText(draft.setAsideUntil) })}</p>
      <Form action={setAside} sections={[]} submit={t("bringBack")} words={words}>
        <input type="hidden" name="bring-back" value="yes" />
        <input type="hidden" name="draft" value={draft.id} />
      </Form>
    </>
  );
}
