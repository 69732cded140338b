import type { SourceRef } from "../core/working.ts";
import { classifyBy } from "./classify.ts";
import { verifiedFor } from "./register.ts";
import type { Response, SoilTestClass } from "./schema.ts";
import type { Extractant, SoilNutrient } from "./types.ts";

/** What one guide says of the crop's response. */
export interface ResponseReading {
  guideId: string;
  class: SoilTestClass;
  response: Response;
  source: SourceRef;
}

export type ResponseAnswer =
  | { response: Response; readings: ResponseReading[] }
  /** No guide read in its publication covers it; `because` names what is missing. */
  | { response: "unknown"; because: "no-extractant" | "no-guide" | "needs-cec" | "needs-ph"; readings: [] };

/**
 * Whether the crop can be expected to answer to the nutrient, by every guide of that extractant that was read in its
 * publication (SN-201 to SN-212). Where they differ the answer is `may-respond`, with both readings beside it.
 */
export function responseTo(
  nutrient: SoilNutrient,
  extractant: Extractant | undefined,
  mgPerKg: number,
  cecCmolPerKg?: number,
  waterPh?: number,
): ResponseAnswer {
  if (extractant === undefined) return { response: "unknown", because: "no-extractant", readings: [] };
  const readings: ResponseReading[] = [];
  let because: "no-guide" | "needs-cec" | "needs-ph" = "no-guide";
  for (const guide of verifiedFor(nutrient, extractant)) {
    const found = classifyBy(guide, extractant, nutrient, mgPerKg, { cecCmolPerKg, waterPh });
    if ("problem" in found) because = found.problem.field === "waterPh" ? "needs-ph" : "needs-cec";
    else {
      readings.push({
        guideId: guide.id,
        class: found.class,
        response: found.response,
        source: guide.source,
      });
    }
  }
  const first = readings[0];
  if (!first) return { response: "unknown", because, readings: [] };
  const agreed = readings.every((r) => r.response === first.response);
  return { response: agreed ? first.response : "may-respond", readings };
}
