import type { Working } from "../core/working.ts";
import { type SoilReading, soilModelSource } from "./soilTemperature.ts";

/** What a modelled soil rests on: the air alone, or the air and this bed's own readings. */
export function estimateSoil(w: Working, soil: SoilReading | null): void {
  const calibration = soil?.calibration;
  const moved = calibration ? `, moved by ${calibration.pairs} readings and less so further ahead` : "";
  w.estimate("soil temperature at 10 cm", `modelled from air temperature${moved}`, soilModelSource);
  if (!calibration) return;
  const how = `mean of reading less model on ${calibration.pairs} days of the last 60; forgotten at 0.202 a day ahead`;
  w.line("Δsoil", "this bed's soil less the model's", how, calibration.shiftC, "C", {
    key: "common-practice",
  });
  w.line("se_soil", "standard error of that", "s / √n", calibration.standardErrorC, "C");
}
