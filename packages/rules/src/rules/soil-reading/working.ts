import { Working } from "../../core/working.ts";
import { UNIT_PER_MG_PER_KG } from "../../guides/types.ts";
import { PH_TARGET, phBand } from "./acidity.ts";
import type { SoilReading } from "./reading.ts";

/** Each comparison in the guide's own unit, and the sum of cations. */
export function writeWorking({ test, read, cations, salts }: SoilReading): Working {
  const w = new Working();
  if (test.waterPh !== undefined) {
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
    const factor = UNIT_PER_MG_PER_KG[c.guide.unit];
    const expression = `${value.mgPerKg} mg/kg × ${factor}, compared in ${c.guide.unit} as printed`;
    w.line(
      value.nutrient,
      `${c.guide.title}: compared`,
      expression,
      c.compared,
      c.guide.unit,
      c.guide.source,
    );
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
  return w;
}
