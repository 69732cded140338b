import type { NeedsMoreBody } from "../../core/rule.ts";
import { PEPPER_SALT_TOLERANCE } from "../../tables/saltTolerance.ts";
import { WATER_LIMITS } from "../../tables/waterLimits.ts";
import { type Message, measure, say } from "../../text/message.ts";
import { type Judged, lossPctAt } from "./judge.ts";
import { type SoilSaltReading, widestPaste } from "./soil.ts";
import { settledEce } from "./water.ts";

type Missing = NeedsMoreBody["missing"][number];

const [maas, fao56] = PEPPER_SALT_TOLERANCE;
const pct = (value: number) => measure(value, "pct");

/** Which texture the soil has, and how far the yield moves between the lightest and the heaviest. */
export function missingTexture(soil: Extract<SoilSaltReading, { lacks: "texture" }>): Missing {
  const { low, high } = widestPaste(soil.ecDsPerM, soil.extraction);
  return {
    field: soil.field,
    measure: say("salt.missing.texture", { extraction: soil.extraction }),
    couldMove: say("salt.missing.texture-moves", {
      low: measure(low, "dS/m"),
      high: measure(high, "dS/m"),
      least: pct(lossPctAt(low, fao56, "least")),
      most: pct(lossPctAt(high, maas, "most")),
    }),
  };
}

/** The water's conductivity, and how far the yield moves between its unrestricted and its severe class. */
export const missingWaterEc = (index: number): Missing => ({
  field: `waterTests.${index}.ecDSPerM`,
  measure: say("salt.missing.water-ec"),
  couldMove: say("salt.missing.water-ec-moves", waterSpan()),
});

function waterSpan(): Record<string, ReturnType<typeof measure>> {
  const { none, severe } = WATER_LIMITS.ecDsPerM;
  return {
    low: measure(none, "dS/m"),
    high: measure(severe, "dS/m"),
    least: pct(lossPctAt(settledEce(none), maas, "most")),
    most: pct(lossPctAt(settledEce(severe), maas, "most")),
  };
}

/** What would narrow the answer most, and by how much it could move. */
export function wouldChangeOf({ soil, fromSoil, water, fromWater }: Judged): Message[] {
  const changes: Message[] = [];
  if (soil.kind === "read" && soil.converted && fromSoil) {
    changes.push(say("salt.change.paste", { low: pct(fromSoil.lowPct), high: pct(fromSoil.highPct) }));
  }
  if (soil.kind === "unread" && soil.lacks === "texture") {
    const { measure: wanted, couldMove } = missingTexture(soil);
    changes.push(wanted, couldMove);
  }
  if (soil.kind === "unread" && soil.lacks === "extraction") changes.push(say("salt.change.extraction"));
  if (soil.kind === "none" && fromWater)
    changes.push(say("salt.change.soil", { high: pct(fromWater.highPct) }));
  if (water?.ecDsPerM === undefined) changes.push(say("salt.change.water", waterSpan()));
  if (
    water &&
    ["caMgPerL", "mgMgPerL", "naMgPerL", "clMgPerL", "bMgPerL"].some((ion) => !(ion in water.test))
  ) {
    changes.push(say("salt.change.ions"));
  }
  return changes;
}
