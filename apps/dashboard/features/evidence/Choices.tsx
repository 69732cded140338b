import type { Office } from "@pith/contract";
import { type ChoiceId, choiceIn, choices, optionOf } from "@pith/rules";
import { getTranslations } from "next-intl/server";
import { languageAsked } from "../../server/language.ts";
import { ChoiceForm } from "./ChoiceForm.tsx";
import { followReading } from "./choices.ts";

/** Every place where published sources conflict, with the reading that is in force. */
export async function Choices({ settings }: { settings: Office["settings"] }) {
  const [t, language] = await Promise.all([getTranslations("evidence.choices"), languageAsked()]);
  return (
    <div className="flow">
      {choices
        .map((one) => choiceIn(one, language))
        .map((choice) => (
          <ChoiceForm
            key={choice.id}
            action={followReading.bind(null, choice.id)}
            id={choice.id}
            question={choice.question}
            options={choice.options.map(({ id, says }) => ({
              id,
              says,
              mark: id === choice.default ? t("default") : null,
            }))}
            chosen={optionOf(choice.id as ChoiceId, settings)}
            save={t("save")}
            busy={t("busy")}
          />
        ))}
    </div>
  );
}
