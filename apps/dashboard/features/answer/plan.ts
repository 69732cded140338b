import { type Advisory, adviceRoutes, type FarmDetail } from "@pith/contract";
import { todayIn } from "../../format/dates.ts";
import { named } from "../farm/plans.ts";
import type { Plan } from "../forms/plan.ts";

export const actualSchema = adviceRoutes.ActualSchema;

/** What "done" asks: only what the advice was about, and always the day. */
export function actualPlan(advisory: Advisory, farm: FarmDetail): Plan {
  const kind = advisory.expected?.kind;
  const asks: Record<string, string[]> = {
    application: ["materialId", "amountKg", "areaM2"],
    watering: ["minutes", "litres"],
  };
  return {
    labels: "actual",
    zone: farm.sites[0]?.timeZone,
    ...(!advisory.answer?.actual && { startNow: ["on"] }),
    choices: { materialId: named(farm.materials), "alongside.materialId": named(farm.materials) },
    sections: [
      {
        fields: ["on", ...(asks[kind ?? ""] ?? [])],
        ...(kind === "application" && {
          each: { path: "alongside", fields: ["materialId", "amountKg"], add: "addMaterial" },
        }),
      },
    ],
  };
}

/** What "done" starts from: the earlier answer, else what was advised, on today's day. */
export function actualStart(advisory: Advisory, farm: FarmDetail): Record<string, unknown> {
  if (advisory.answer?.actual) return { ...advisory.answer.actual };
  const { expected } = advisory;
  return {
    on: todayIn(farm.sites[0]?.timeZone),
    materialId: expected?.materialId ?? null,
    amountKg: expected?.amountKg ?? null,
    areaM2: expected?.areaM2 ?? null,
    minutes: expected?.minutes ?? null,
    litres: null,
    alongside: expected?.alongside ?? [],
  };
}
