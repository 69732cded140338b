import type { Working } from "../../core/working.ts";
import { METHOD_BASE } from "../../quantities/soil/limeMethods.ts";
import type { AcidSoil } from "../../soil-acidity/soil.ts";
import type { Range } from "../../tables/uptake.ts";
import {
  ASH_CAPS,
  ASH_PH_CEILINGS,
  ASH_ROWS,
  STRICTEST_CAP,
  STRICTEST_CEILING,
} from "../../tables/woodAsh.ts";
import type { Reading } from "./judge.ts";

const span = ({ low, high }: Range): number | string => (low === high ? low : `${low} to ${high}`);
const round = ({ low, high }: Range): string =>
  low === high ? low.toFixed(1) : `${low.toFixed(1)} to ${high.toFixed(1)}`;

/** The ceilings, then content, bounds, the smallest of them, and what it brings. */
export function writeWorking(w: Working, soil: AcidSoil, r?: Reading): void {
  w.line("pH", "pH of the soil in water", "newest test", soil.waterPh, "pH");
  for (const { ph, source } of ASH_PH_CEILINGS) {
    w.line("ceiling", "no ash above this pH", source.locator ?? "", ph, "pH", source);
  }
  w.line("ceiling", "the strictest is kept", "min", STRICTEST_CEILING.ph, "pH", STRICTEST_CEILING.source);
  if (r) writePlan(w, r);
}

function writePlan(w: Working, r: Reading): void {
  const { content, plan, food, soil, need } = r;
  for (const row of ASH_ROWS) {
    if (content.analysed.k2o && content.analysed.cce) break;
    const parts = [row.k2oPct && `K2O ${span(row.k2oPct)}`, row.ccePct && `CCE ${round(row.ccePct)}`];
    w.line(
      "published",
      "wood ash as published",
      "% of weight",
      parts.filter(Boolean).join(", "),
      "%",
      row.source,
    );
  }
  if (!content.analysed.k2o)
    w.estimate("k2oPct", `${round(content.k2oPct)} %, all that is published; the most bounds`);
  if (!content.analysed.cce)
    w.estimate("ccePct", `${round(content.ccePct)} %, all that is published; the most bounds`);
  if (!content.analysed.p2o5) w.estimate("p2o5Pct", `${round(content.p2o5Pct)} %, all that is published`);
  for (const cap of ASH_CAPS) {
    w.line("cap", "most ash on ground in a year", cap.source.locator ?? "", cap.kgPerHa, "kg/ha", cap.source);
  }
  w.line(
    "K2O need",
    "potash still needed, on cropped land",
    "need less given",
    food.leftK2o,
    "kg/ha",
    food.k2o.sources[0] ?? null,
  );
  w.line(
    "m cap",
    "by the strictest cap, less the past year's ash",
    "cap x bed - given",
    plan.allows.cap ?? null,
    "kg",
    STRICTEST_CAP.source,
  );
  w.line(
    "m lime",
    "by the lime need",
    `need / ${content.ccePct.high.toFixed(1)} % x bed`,
    plan.allows.lime ?? null,
    "kg",
  );
  w.line(
    "m potash",
    "by the potash need",
    `need / ${content.k2oPct.high} % x cropped land`,
    plan.allows.potash ?? null,
    "kg",
  );
  if (plan.allows.stock !== undefined) w.line("m stock", "in the shed", "given", plan.allows.stock, "kg");
  if (plan.allows.label !== undefined)
    w.line("m label", "by its label", "most x bed", plan.allows.label, "kg");
  w.line("m", `ash, the smallest (${plan.binding})`, "min", plan.kg, "kg");
  w.line("K2O", "potash it brings, on cropped land", "m x K2O %", round(plan.k2oKgPerHa), "kg/ha");
  w.line("P2O5", "phosphate it brings, on cropped land", "m x P2O5 %", round(plan.p2o5KgPerHa), "kg/ha");
  w.line("CCE", "lime value, on the bed", "m x CCE %", round(plan.limeKgPerHa), "kg/ha");
  const { predictedPh } = plan;
  w.line(
    "pH after",
    predictedPh === null
      ? "pH it would leave: the relation of this test cannot say"
      : `pH it would leave, mixed evenly into ${soil.depthCm} cm and fully dissolved`,
    need.method,
    predictedPh === null ? null : `${predictedPh.low.toFixed(2)} to ${predictedPh.high.toFixed(2)}`,
    "pH",
    METHOD_BASE[need.method].source,
  );
}
