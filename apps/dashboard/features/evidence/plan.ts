import { OfficeSourceSchema, rules } from "@pith/rules";
import { getTranslations } from "next-intl/server";
import type { Plan } from "../forms/plan.ts";

export const ownSourceSchema = OfficeSourceSchema;

/** What the form asks that takes evidence of the office's own. */
export async function ownSourcePlan(): Promise<Plan> {
  const t = await getTranslations("rules");
  return {
    labels: "ownEvidence",
    choices: {
      rule: rules.map(({ id }) => ({ value: id, label: t(id as "set-out") })),
    },
    sections: [
      { title: "source", fields: ["id", "cite", "kind", "year", "url"] },
      { title: "finding", fields: ["rule", "finding", "effect", "grade"] },
      { title: "weight", fields: ["design", "size", "limits", "wouldChange"] },
    ],
    long: ["cite", "finding", "effect", "limits", "wouldChange"],
  };
}
