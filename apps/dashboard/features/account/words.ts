import { getTranslations } from "next-intl/server";

const KEYS = [
  "password",
  "begin",
  "busy",
  "scan",
  "picture",
  "typed",
  "keep",
  "print",
  "code",
  "turnOn",
  "newCodes",
] as const;

/** The words of the second step, for the parts that run in the browser. */
export async function secondStepWords(): Promise<Record<(typeof KEYS)[number], string>> {
  const t = await getTranslations("account.secondStep");
  return Object.fromEntries(KEYS.map((key) => [key, t(key)])) as Record<(typeof KEYS)[number], string>;
}
