import { Working } from "../../core/working.ts";
import { UNIT_PER_MG_PER_KG } from "../../guides/types.ts";
import { PH_TARGET, phBand } from "./acidity.ts";
import type { Harm } from "./harm.ts";
import type { SoilReading } from "./reading.ts";

/** Each comparison in the guide's own unit, the sum of cations, and what is at risk. */
export function writeWorking({ test, read, cations, salts }: SoilReading, harm: Harm | undefined): Working {
  const w = new Working();
  if (test.waterPh !== undefined && test.medium === "mineral-soil") {
    w.line(
      "pH",
      "pH in water against the target",
      `${PH_TARGET.low} to ${PH_TARGET.high}`,
      phBand(test.waterPh),
      "",
      PH_TARGET.source,
    );
  }
  for (const { value, read: c } of read) {
    const index = c.guide.nutrients[value.nutrient]?.index;
    const unit = index ? index.name : c.guide.unit;
    const from = value.reported
      ? `${value.mgPerKg} mg/kg (printed ${value.reported.value} ${value.reported.unit})`
      : `${value.mgPerKg} mg/kg`;
    const expression = index
      ? `${index.intercept} + ${index.perMgPerKg} × ${from} + (${index.perPh}) × pH ${test.waterPh}`
      : `${from} × ${UNIT_PER_MG_PER_KG[c.guide.unit]}, compared in ${unit} as printed`;
    w.line(value.nutrient, `${c.guide.title}: compared`, expression, c.compared, unit, c.guide.source);
    w.line(
      `${value.nutrient} class`,
      "class in that guide",
      `${c.lowMgPerKg} to ${c.highMgPerKg ?? "more"} mg/kg`,
      c.class,
      "",
      c.guide.source,
    );
  }
  if (cations) {
    const source = { key: "clemson-cec", locator: "CEC by summation" };
    const meaning = cations.cecIsMinimum ? "exchange capacity by sum, at least" : "exchange capacity by sum";
    w.line(
      "CEC",
      meaning,
      "Ca/200.4 + Mg/121.5 + K/391.0 + Na/229.9 + acidity",
      cations.cecCmolPerKg,
      "cmol/kg",
      source,
    );
    w.line("Ca", "share of calcium", "100 Ca / CEC", cations.caPct, "%", source);
    w.line("Mg", "share of magnesium", "100 Mg / CEC", cations.mgPct, "%", source);
    w.line("K", "share of potassium", "100 K / CEC", cations.kPct, "%", source);
    if (cations.acidityFrom === "adams-evans-buffer" && test.bufferPh) {
      const how = `8 × (8.00 - ${test.bufferPh.value}) from the Adams-Evans buffer`;
      w.line("H", "acidity in that sum", how, cations.acidityCmolPerKg, "cmol/kg", source);
      w.estimate("acidityCmolPerKg", how, source);
    }
    if (cations.cecIsMinimum)
      w.estimate("acidityCmolPerKg", "not measured: the exchange capacity is a minimum");
  }
  if (test.ec && salts?.kind === "read") {
    w.line(
      "EC",
      `salts by ${salts.extraction}`,
      `at most ${salts.limitDsPerM} dS/m`,
      test.ec.dSPerM,
      "dS/m",
      salts.source,
    );
  }
  if (harm) {
    const { chance, loss } = harm;
    w.line("c", "chance that a nutrient that reads short costs yield", "", chance.value, "1", chance.source);
    w.line("l", "what it costs then, of this planting's worth", "", loss.value, "1", loss.source);
    w.line("harm", "at risk", `${chance.value} × ${loss.value}`, harm.value, "1", loss.source);
  }
  return w;
}
