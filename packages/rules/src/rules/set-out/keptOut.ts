import type { Working } from "../../core/working.ts";
import { bindingRest, type Rest, restReading, restsOf } from "../../layout/rest.ts";
import type { PlantingState } from "../../states/states.ts";
import { type Param, wordOf } from "../../text/message.ts";

/**
 * The rest for which **rotation** keeps peppers out of this planting's bed in the season of the wanted day; undefined where it
 * keeps none out, where too little is recorded to say, and for containers, which rotate by their mix.
 */
export function keptOut({ bed, history, settings }: PlantingState, wantedDay: string): Rest | undefined {
  if (bed.kind === "containers") return undefined;
  const season = Number(wantedDay.slice(0, 4));
  return bindingRest(restsOf(history ?? [], season, restReading(settings)));
}

/** Until when, and after what. */
export const keptOutParams = ({ from, last }: Rest): Record<string, Param> => ({
  from: String(from),
  crop: wordOf(`rotation.crop.${last?.crop ?? "other"}`),
  last: String(last?.season ?? ""),
});

export function keptOutLine(w: Working, rest: Rest | undefined): void {
  if (!rest) return;
  const meaning = `first season again: ${rest.disease ?? "peppers after peppers"}`;
  w.line("S0", meaning, `${rest.last?.season} + N + 1`, rest.from, "year", rest.source);
}
