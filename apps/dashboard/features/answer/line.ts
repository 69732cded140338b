import type { Actual, Advisory, FarmDetail } from "@pith/contract";
import { getTranslations } from "next-intl/server";
import { longDayText } from "../../format/dates.ts";
import { inText } from "../../format/units.ts";

type Given = Pick<NonNullable<Advisory["answer"]>, "kind" | "actual" | "reason">;

/** An answer in one line, to be held against another. */
export async function answerLine({ kind, actual, reason }: Given, farm: FarmDetail): Promise<string> {
  const t = await getTranslations("answer");
  const parts = [t(`kinds.${kind}`), ...(actual ? doneIn(actual, farm) : [])].join(", ");
  return reason ? `${parts}. ${t("because", { reason })}` : `${parts}.`;
}

function doneIn(actual: Actual, { farm: { units }, materials }: FarmDetail): string[] {
  const measure = (value: number | null, unit: "kg" | "m2" | "minutes" | "L") =>
    value === null || value === undefined ? "" : inText(value, unit, units);
  return [
    actual.on ? longDayText(actual.on) : "",
    materials.find(({ id }) => id === actual.materialId)?.name ?? "",
    measure(actual.amountKg, "kg"),
    measure(actual.areaM2, "m2"),
    measure(actual.minutes, "minutes"),
    measure(actual.litres, "L"),
  ].filter((part) => part !== "");
}
