import { Working } from "../core/working.ts";
import {
  chooseDepth,
  DEEPEST_STEM_CM,
  UNION_ABOVE_SOIL_CM,
  WARM_SOIL_C,
} from "../rules/setting-depth/choose.ts";
import { readingInForce } from "../rules/setting-depth/reading.ts";
import type { PlantingState } from "../states/states.ts";
import { measure, say } from "../text/message.ts";
import { type Saying, saying } from "./saying.ts";
import { todayOf } from "./subjects.ts";

/** What the rule for depth holds of burying so much stem, and why. */
export function sayDepth(state: PlantingState, buriedStemCm: number): Saying {
  const choice = chooseDepth(state, todayOf(state), readingInForce(state).option);
  const code =
    buriedStemCm > DEEPEST_STEM_CM
      ? "too-deep"
      : buriedStemCm > choice.buriedStemCm
        ? "deeper"
        : buriedStemCm < choice.buriedStemCm
          ? "less"
          : "as-ruled";
  const w = new Working();
  w.line("z tried", "stem buried, as tried", "choice", buriedStemCm, "cm");
  w.line("z", "stem to bury by the rule", `because: ${choice.reason}`, choice.buriedStemCm, "cm", {
    key: "common-practice",
  });
  w.line("z_max", "most stem to bury", "to the first true leaf at most", DEEPEST_STEM_CM, "cm", {
    key: "depth-guides",
  });
  return saying(
    [
      say(`what-if.depth.${code}`, {
        tried: measure(buriedStemCm, "cm"),
        ruled: measure(choice.buriedStemCm, "cm"),
        most: measure(DEEPEST_STEM_CM, "cm"),
      }),
      say(`setting-depth.because.${choice.reason}`, {
        warm: measure(WARM_SOIL_C, "C"),
        soil: choice.soil ? measure(choice.soil.morningC, "C") : "",
        union: measure(UNION_ABOVE_SOIL_CM, "cm"),
      }),
    ],
    { working: w },
  );
}
