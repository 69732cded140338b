import { farmRoutes } from "@pith/contract";
import { SettingsSchema } from "@pith/rules";
import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { Form } from "../../../features/forms/Form.tsx";
import { viewOf } from "../../../features/forms/view.ts";
import { formWords, frameWords } from "../../../features/forms/words.ts";
import { guidesOfOffice } from "../../../features/guides/guides.ts";
import { guideChoices } from "../../../features/guides/words.ts";
import { saveSettings } from "../../../features/settings/actions.ts";
import { settingsPlan } from "../../../features/settings/plan.ts";
import { callTagged } from "../../../server/api.ts";
import { agentSeat } from "../../../server/seat.ts";
import { Row } from "../../../ui/Row.tsx";
import { Saved } from "../../../ui/Saved.tsx";
import { ToOffice } from "../../../ui/ToOffice.tsx";

interface Props {
  searchParams: Promise<Record<string, string>>;
}

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("settings");
  return { title: t("title") };
}

/** The office's floors and accepted risks. An empty field means the rule's own stated default. */
export default async function SettingsPage({ searchParams }: Props) {
  const [{ officeId }, asked, t, words, frame] = await Promise.all([
    agentSeat(),
    searchParams,
    getTranslations("settings"),
    formWords(settingsPlan().labels),
    frameWords(),
  ]);
  const [{ value: office, tag }, guides] = await Promise.all([
    callTagged(farmRoutes.getOffice, { params: { officeId } }),
    guidesOfOffice(),
  ]);
  const plan = settingsPlan(await guideChoices(guides));
  return (
    <>
      <ToOffice />
      <Saved asked={asked} />
      <Row
        notes={
          <div className="flow">
            <p>{t("help")}</p>
            <p>
              <Link href="/guides">{t("guides")}</Link>
            </p>
          </div>
        }
      >
        <h1>{t("title")}</h1>
        <p className="decision-under">{t("under", { office: office.name, county: office.county })}</p>
        <Form
          action={saveSettings.bind(null, tag)}
          sections={viewOf(plan, SettingsSchema, office.settings, "metric", words)}
          submit={t("save")}
          words={frame}
        />
      </Row>
    </>
  );
}
