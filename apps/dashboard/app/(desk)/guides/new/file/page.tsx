import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { addGuideFile } from "../../../../../features/guides/actions.ts";
import { FileForm } from "../../../../../features/guides/FileForm.tsx";
import { agentSeat } from "../../../../../server/seat.ts";
import { Row } from "../../../../../ui/Row.tsx";

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("guides");
  return { title: t("addByFile") };
}

/** A small guide with classes and rates, to start from. */
const EXAMPLE = "nj-mehlich-3";

export default async function GuideFilePage() {
  const [, t, parts] = await Promise.all([
    agentSeat(),
    getTranslations("guides.file"),
    getTranslations("guides"),
  ]);
  return (
    <Row
      notes={
        <div className="flow">
          <p>{t("help")}</p>
          <p>{parts("checked")}</p>
        </div>
      }
    >
      <p className="crumbs">
        <Link href="/guides">{parts("title")}</Link>
      </p>
      <h1>{parts("addByFile")}</h1>
      <p className="decision-under">
        {t.rich("example", {
          link: (words) => (
            <a href={`/guides/${EXAMPLE}/guide.json`} download>
              {words}
            </a>
          ),
        })}
      </p>
      <FileForm
        action={addGuideFile}
        words={{
          file: t("file"),
          hint: t("hint"),
          save: parts("save"),
          busy: parts("busy"),
          cancel: parts("cancel"),
          where: t("where"),
          field: t("field"),
          wrong: t("wrong"),
          problems: t("problems"),
        }}
      />
    </Row>
  );
}
