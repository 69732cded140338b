import { LANGUAGES } from "@pith/rules";
import { cookies } from "next/headers";
import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import { signOut } from "../features/session/actions.ts";
import { chooseLanguage } from "../features/session/language.ts";
import { chooseTheme } from "../features/session/theme.ts";
import type { Seat } from "../server/seat.ts";
import { LANGUAGE_NAMES } from "./languageNames.ts";

/** The foot of every page: light or dark, the language, who is signed in, the way out. */
export async function Colophon({ seat }: { seat: Seat | null }) {
  const [t, locale] = await Promise.all([getTranslations("colophon"), getLocale()]);
  const theme = (await cookies()).get("theme")?.value ?? "system";
  return (
    <footer className="colophon">
      <div className="colophon-inner">
        <form action={chooseTheme}>
          <span>{t("paper")}</span>
          {(["system", "light", "dark"] as const).map((choice) => (
            <button
              key={choice}
              type="submit"
              name="theme"
              value={choice}
              className="quiet"
              aria-pressed={theme === choice}
            >
              {t(choice)}
            </button>
          ))}
        </form>
        <form action={chooseLanguage}>
          <span>{t("language")}</span>
          <input type="hidden" name="signedIn" value={seat ? "yes" : "no"} />
          {LANGUAGES.map((language) => (
            <button
              key={language}
              type="submit"
              name="language"
              value={language}
              lang={language}
              className="quiet"
              aria-pressed={locale === language}
            >
              {LANGUAGE_NAMES[language]}
            </button>
          ))}
        </form>
        {seat && (
          <form action={signOut}>
            <span>
              {t.rich("signedInAs", {
                name: seat.name,
                account: (chunks) => <Link href="/account">{chunks}</Link>,
              })}
            </span>
            <button type="submit" className="quiet">
              {t("signOut")}
            </button>
          </form>
        )}
      </div>
    </footer>
  );
}
