import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { GuideList, listings } from "../../../features/guides/GuideList.tsx";
import { guidesOfOffice } from "../../../features/guides/guides.ts";
import { Row } from "../../../ui/Row.tsx";
import { Saved } from "../../../ui/Saved.tsx";
import { ToOffice } from "../../../ui/ToOffice.tsx";

interface Props {
  searchParams: Promise<Record<string, string>>;
}

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("guides");
  return { title: t("title") };
}

/** The tables that soil tests are read by: the office's own, those held here, and which one is in use. */
export default async function GuidesPage({ searchParams }: Props) {
  const [{ held, own, chosen }, asked, t] = await Promise.all([
    guidesOfOffice(),
    searchParams,
    getTranslations("guides"),
  ]);
  const mine = listings(own);
  const inUse = [...mine, ...held].find(({ id }) => id === chosen);
  return (
    <>
      <ToOffice />
      <Saved asked={asked} />
      <Row
        notes={
          <div className="flow">
            <p>{t("help")}</p>
            <p>{t("statusHelp")}</p>
          </div>
        }
      >
        <h1>{t("title")}</h1>
        <p className="decision-under">
          {inUse
            ? t.rich("inUseNow", {
                title: inUse.title,
                link: (words) => <Link href={`/guides/${inUse.id}`}>{words}</Link>,
              })
            : chosen === undefined
              ? t("noneChosen")
              : t("chosenIsGone", { id: chosen })}
        </p>
        <ul className="actions plain">
          <li>
            <Link className="tap" href="/guides/new/form">
              {t("addByForm")}
            </Link>
          </li>
          <li>
            <Link className="tap" href="/guides/new/file">
              {t("addByFile")}
            </Link>
          </li>
        </ul>
      </Row>
      <Row id="own" wide side={<h2>{t("own")}</h2>}>
        {mine.length === 0 ? (
          <p className="faint">{t("noOwn")}</p>
        ) : (
          <GuideList guides={mine} chosen={chosen} caption={t("own")} />
        )}
      </Row>
      <Row id="held" wide side={<h2>{t("held")}</h2>}>
        <GuideList guides={held} chosen={chosen} caption={t("held")} />
      </Row>
    </>
  );
}
