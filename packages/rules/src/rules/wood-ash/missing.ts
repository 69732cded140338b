import type { NeedsMoreBody } from "../../core/rule.ts";
import type { Working } from "../../core/working.ts";
import type { AcidSoil } from "../../soil-acidity/soil.ts";
import type { PlantingState } from "../../states/states.ts";
import { STRICTEST_CAP } from "../../tables/woodAsh.ts";
import { measure, say } from "../../text/message.ts";
import { bedAreaM2 } from "../../water/ground.ts";
import type { Ash } from "./ash.ts";
import type { Lacks } from "./judge.ts";

const body = (missing: NeedsMoreBody["missing"], w?: Working): NeedsMoreBody => ({
  kind: "needs-more",
  missing,
  working: w?.lines ?? [],
  estimated: w?.estimated ?? [],
});

/** Whatever is missing, the answer lies between nothing and the strictest cap on this bed. */
const moves = (state: PlantingState) =>
  say("wood-ash.missing.moves", {
    most: measure((STRICTEST_CAP.kgPerHa * bedAreaM2(state.bed)) / 10_000, "kg"),
  });

export const needsPh = (state: PlantingState): NeedsMoreBody =>
  body([
    {
      field: state.soilTests.length > 0 ? "soilTests.0.waterPh" : "soilTests",
      measure: say("wood-ash.missing.ph", { first: "yes" }),
      couldMove: moves(state),
    },
  ]);

/** All that is missing at once, so that it is asked for only once. */
export function needsMore(
  state: PlantingState,
  ash: Ash,
  soil: AcidSoil,
  lacks: Lacks[],
  w: Working,
): NeedsMoreBody {
  const fieldOf = (lack: Lacks): [string, string] => {
    if (lack === "origin") return [`shed.${ash.index}.ashOf`, "wood-ash.missing.origin"];
    if (lack === "goal") return ["planting.yieldGoalTPerHa", "wood-ash.missing.goal"];
    if (lack === "set-out") return ["planting.plannedSetOutOn", "wood-ash.missing.set-out"];
    if (lack === "potash") return [`${soil.path}.values`, "wood-ash.missing.potash"];
    const buffer = lack.lacks === "buffer" ? "wood-ash.missing.buffer" : "wood-ash.missing.other-buffer";
    return [`${soil.path}.bufferPh`, buffer];
  };
  return body(
    lacks.map((lack, i) => {
      const [field, key] = fieldOf(lack);
      return { field, measure: say(key, { first: i === 0 ? "yes" : "no" }), couldMove: moves(state) };
    }),
    w,
  );
}
