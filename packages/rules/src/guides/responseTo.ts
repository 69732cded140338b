import { DomainError } from "../core/errors.ts";
import type { SourceRef } from "../core/working.ts";
import { classify } from "./classify.ts";
import { verifiedGuides } from "./register.ts";
import type { Extractant, Response, SoilNutrient, SoilTestClass } from "./types.ts";

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
  for (const guide of verifiedGuides()) {
    if (guide.nutrients[nutrient]?.extractant !== extractant) continue;
    try {
      const found = classify(guide.id, extractant, nutrient, mgPerKg, { cecCmolPerKg, waterPh });
      readings.push({
        guideId: guide.id,
        class: found.class,
        response: found.response,
        source: guide.source,
      });
    } catch (error) {
      const field = error instanceof DomainError ? error.problems[0]?.field : undefined;
      if (field === "cecCmolPerKg") because = "needs-cec";
      else if (field === "waterPh") because = "needs-ph";
      else throw error;
    }
  }
  const first = readings[0];
  if (!first) return { response: "unknown", because, readings: [] };
  const agreed = readings.every((r) => r.response === first.response);
  return { response: agreed ? first.response : "may-respond", readings };
}
