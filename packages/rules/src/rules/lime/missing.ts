import type { NeedsMoreBody } from "../../core/rule.ts";
import type { Working } from "../../core/working.ts";
import { limeRequirement } from "../../quantities/soil/limeRequirement.ts";
import { methodTarget, type NoRelation } from "../../soil-acidity/limeNeed.ts";
import type { AcidSoil } from "../../soil-acidity/soil.ts";
import { measure, say } from "../../text/message.ts";

type Missing = NeedsMoreBody["missing"];
const needs = (missing: Missing, w?: Working): NeedsMoreBody => ({
  kind: "needs-more",
  missing,
  working: w?.lines ?? [],
  estimated: w?.estimated ?? [],
});

/** Mehlich buffer pH of a sandy soil with little acidity and of a heavy one with much (common practice). */
const BUFFERS = { light: 6.5, heavy: 5.6 } as const;

export const needsPh = (hasTest: boolean): NeedsMoreBody =>
  needs([
    {
      field: hasTest ? "soilTests.0.waterPh" : "soilTests",
      measure: say("lime.missing.ph"),
      couldMove: say("lime.missing.ph-moves"),
    },
  ]);

export const needsTexture = (w: Working): NeedsMoreBody =>
  needs(
    [
      {
        field: "bed.soil.texture",
        measure: say("lime.missing.texture"),
        couldMove: say("lime.missing.texture-moves"),
      },
    ],
    w,
  );

/** What a laboratory can measure for which a relation is held, and between what the lime would lie. */
export function needsRelation(soil: AcidSoil, wantedPh: number, why: NoRelation, w: Working): NeedsMoreBody {
  const at = (bufferPh: number) =>
    limeRequirement({
      method: "mehlich",
      bufferPh,
      waterPh: soil.waterPh,
      targetPh: methodTarget("mehlich", wantedPh),
      depthCm: soil.depthCm,
    }).caco3KgPerHa;
  return needs(
    [
      {
        field: `${soil.path}.bufferPh`,
        measure:
          why.lacks === "coefficients"
            ? say(`lime.missing.buffer-${why.method}`)
            : say("lime.missing.buffer"),
        couldMove: say("lime.missing.buffer-moves", {
          low: measure(at(BUFFERS.light), "kg/ha"),
          high: measure(at(BUFFERS.heavy), "kg/ha"),
        }),
      },
    ],
    w,
  );
}
