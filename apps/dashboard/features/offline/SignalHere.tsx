import { cookies } from "next/headers";
import { getLocale, getTranslations } from "next-intl/server";
import { Signal } from "./Signal.tsx";

/** At the head of a farmer's page: whether there is signal, and of when the page is where it was kept. */
export async function SignalHere({ office }: { office: string }) {
  const [t, locale, jar] = await Promise.all([getTranslations("signal"), getLocale(), cookies()]);
  return (
    <Signal
      look={`${locale} ${jar.get("theme")?.value ?? ""} ${office}`}
      words={{ offline: t("offline"), kept: t.raw("kept") as string }}
    />
  );
}
