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
import "../styles/print.css";
import { GeistSans } from "geist/font/sans";
import type { Metadata, Viewport } from "next";
import { cookies } from "next/headers";
import { getLocale, getTranslations } from "next-intl/server";
import type { ReactNode } from "react";
import { readerZone } from "../server/zone.ts";
import { BrokenWordsProvider } from "../ui/BrokenWords.tsx";
import { ZoneCookie } from "../ui/ZoneCookie.tsx";

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("site");
  return { title: { default: "Pith", template: "%s · Pith" }, description: t("description") };
}

export const viewport: Viewport = { width: "device-width", initialScale: 1 };

export default async function RootLayout({ children }: { children: ReactNode }) {
  const [locale, t, broken, jar, zone] = await Promise.all([
    getLocale(),
    getTranslations("site"),
    getTranslations("broken"),
    cookies(),
    readerZone(),
  ]);
  const theme = jar.get("theme")?.value;
  return (
    <html
      lang={locale}
      data-theme={theme === "light" || theme === "dark" ? theme : undefined}
      className={GeistSans.variable}
    >
      <head>
        {/* Stands in the first bytes: metadata may stream later, and a browser that has seen no icon asks for another. */}
        <link rel="icon" href="/icon.svg" type="image/svg+xml" />
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
          {children}
        </BrokenWordsProvider>
        <ZoneCookie known={zone} />
      </body>
    </html>
  );
}
