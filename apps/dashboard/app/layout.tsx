import "@fontsource-variable/source-serif-4/wght.css";
import "@fontsource-variable/source-serif-4/wght-italic.css";
import "../styles/tokens.css";
import "../styles/base.css";
import "../styles/frame.css";
import "../styles/bulletin.css";
import "../styles/tables.css";
import "../styles/forms.css";
import "../styles/round.css";
import "../styles/charts.css";
import "../styles/sheet.css";
import "../styles/bedPlan.css";
import "../styles/timeline.css";
import "../styles/trials.css";
import "../styles/people.css";
import "../styles/sensors.css";
import "../styles/whatIf.css";
import "../styles/print.css";
import type { Metadata, Viewport } from "next";
import localFont from "next/font/local";
import { cookies } from "next/headers";
import { getTranslations } from "next-intl/server";
import type { ReactNode } from "react";
import { languageAsked } from "../server/language.ts";
import { readerZone } from "../server/zone.ts";
import { BrokenWordsProvider } from "../ui/BrokenWords.tsx";
import { LanguageProvider } from "../ui/Language.tsx";
import { ZoneCookie } from "../ui/ZoneCookie.tsx";

/** Not loaded ahead, as the package's own entry would: on a poor link its 70 kB would hold up the text, and it sets labels alone. */
const geist = localFont({
  src: "../../../node_modules/geist/dist/fonts/geist-sans/Geist-Variable.woff2",
  variable: "--font-geist-sans",
  weight: "100 900",
  preload: false,
});

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("site");
  return { title: { default: "Pith", template: "%s · Pith" }, description: t("description") };
}

/** The paper's colour (`--paper` in tokens.css), for the bars that a phone draws around the page. */
const PAPER = { light: "#f4f3ed", dark: "#161918" } as const;

export async function generateViewport(): Promise<Viewport> {
  const theme = themeOf((await cookies()).get("theme")?.value);
  return {
    width: "device-width",
    initialScale: 1,
    themeColor: theme
      ? PAPER[theme]
      : (["light", "dark"] as const).map((scheme) => ({
          media: `(prefers-color-scheme: ${scheme})`,
          color: PAPER[scheme],
        })),
  };
}

const themeOf = (word: string | undefined) => (word === "light" || word === "dark" ? word : undefined);

export default async function RootLayout({ children }: { children: ReactNode }) {
  const [locale, t, broken, jar, zone] = await Promise.all([
    languageAsked(),
    getTranslations("site"),
    getTranslations("broken"),
    cookies(),
    readerZone(),
  ]);
  return (
    <html lang={locale} data-theme={themeOf(jar.get("theme")?.value)} className={geist.variable}>
      <head>
        {/* Stands in the first bytes: metadata may stream later, and a browser that has seen no icon asks for another. */}
        <link rel="icon" href="/icon.svg" type="image/svg+xml" />
        <link rel="apple-touch-icon" href="/apple-touch-icon.png" />
      </head>
      <body>
        <a className="skip" href="#main">
          {t("skip")}
        </a>
        <BrokenWordsProvider
          words={{
            title: broken("title"),
            help: broken("help"),
            quote: broken("quote"),
            again: broken("again"),
          }}
        >
          <LanguageProvider language={locale}>{children}</LanguageProvider>
        </BrokenWordsProvider>
        <ZoneCookie known={zone} />
      </body>
    </html>
  );
}
