import { getTranslations } from "next-intl/server";
import { problemWords } from "../forms/words.ts";

interface Problem {
  status: number;
  detail?: string | undefined;
  title: string;
}

/** Why a draft could not be sent on, as its reader reads it; without a reason of its own a conflict is a change since. */
export async function refusalOf({ status, detail, title }: Problem): Promise<string> {
  const [t, words] = await Promise.all([getTranslations("advice"), problemWords()]);
  if (status === 503) return words.unreachable;
  return detail ?? (status === 409 ? t("changedSince") : title);
}
