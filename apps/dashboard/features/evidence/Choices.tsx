import type { Office } from "@pith/contract";
import { type ChoiceId, choices, optionOf } from "@pith/rules";
import { getTranslations } from "next-intl/server";
import { ChoiceForm } from "./ChoiceForm.tsx";
import { followReading } from "./choices.ts";

/** Every place where published sources conflict, with the reading that is in force. */
export async function Choices({ settings }: { settings: Office["settings"] }) {
  const t = await getTranslations("evidence.choices");
  return (
    <div className="flow">
      {choices.map((choice) => (
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
