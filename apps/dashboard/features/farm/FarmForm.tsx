import type { Farm } from "@pith/contract";
import { getTranslations } from "next-intl/server";
import { Row } from "../../ui/Row.tsx";
import { Form } from "../forms/Form.tsx";
import { viewOf } from "../forms/view.ts";
import { formWords, frameWords } from "../forms/words.ts";
import { saveFarm } from "./actions.ts";
import { farmPlan, schemas } from "./plans.ts";

/** The page that adds or changes a client farm. */
export async function FarmForm({ farm, tag }: { farm: Farm | null; tag: string | null }) {
  const [t, words, frame] = await Promise.all([
    getTranslations("farms"),
    formWords(farmPlan.labels),
    frameWords(),
  ]);
  const values = farm ? { ...farm } : { units: "us" };
  return (
    <Row>
      <h1>{farm ? t("changeTitle", { name: farm.name }) : t("addTitle")}</h1>
      <Form
        action={saveFarm.bind(null, farm?.id ?? null, tag)}
        sections={viewOf(farmPlan, schemas.farms, values, "metric", words)}
        submit={t("save")}
        cancel={{ href: farm ? `/farms/${farm.id}` : "/farms", label: t("cancel") }}
        words={frame}
      />
    </Row>
  );
}
