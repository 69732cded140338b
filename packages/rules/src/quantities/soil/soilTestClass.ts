import { z } from "zod";
import { num, word } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import { classify } from "../../guides/classify.ts";
import { guides } from "../../guides/register.ts";
import { UNIT_PER_MG_PER_KG } from "../../guides/types.ts";
import { EXTRACTANTS, NUTRIENTS } from "../../states/parts.ts";

const guideIds = [...guides.keys()] as [string, ...string[]];

export const soilTestClass = defineQuantity({
  id: "soil-test-class",
  question: "Which class does this content fall in, by that guide?",
  schema: z.strictObject({
    guide: word("guide", guideIds),
    extractant: word("extractant of the laboratory", EXTRACTANTS),
    nutrient: word("nutrient", NUTRIENTS),
    mgPerKg: num("content", "mg/kg", 0, 100_000),
    waterPh: num("pH in water, where the guide's index needs it", "pH", 2, 12).optional(),
    cecCmolPerKg: num(
      "exchange capacity, where the guide's bound depends on it",
      "cmol(+)/kg",
      0,
      200,
    ).optional(),
  }),
  outputs: {
    class: { meaning: "class, in the guide's word", unit: "word" },
    lowMgPerKg: { meaning: "lowest printed content of the class", unit: "mg/kg" },
    highMgPerKg: { meaning: "highest printed content of the class; null in the topmost", unit: "mg/kg" },
  },
  sources: [...guides.values()].map((guide) => guide.source),
  compute(input, w) {
    const found = classify(input.guide, input.extractant, input.nutrient, input.mgPerKg, input);
    const { guide } = found;
    const reading = guide.nutrients[input.nutrient];
    const unit = reading?.index ? reading.index.name : guide.unit;
    const how = reading?.index
      ? `${reading.index.name} = ${reading.index.intercept} + ${reading.index.perMgPerKg} x ${input.mgPerKg} + (${reading.index.perPh}) x ${input.waterPh}`
      : guide.unit === "mg/kg"
        ? `${input.mgPerKg}`
        : `${UNIT_PER_MG_PER_KG[guide.unit]} x ${input.mgPerKg}`;
    w.line(
      input.nutrient,
      "what is compared, in the guide's unit and printed precision",
      how,
      found.compared,
      unit,
      guide.source,
    );
    w.line("class", `class in ${guide.title} (${guide.status})`, "table", found.class, "word", guide.source);
    if (guide.note) w.line("note", "on the guide", guide.note, null, "", guide.source);
    if (reading?.note) w.line("note", `on ${input.nutrient}`, reading.note, null, "", guide.source);
    return { class: found.class, lowMgPerKg: found.lowMgPerKg, highMgPerKg: found.highMgPerKg };
  },
});
