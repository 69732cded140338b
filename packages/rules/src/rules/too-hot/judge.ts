import type { PlantingState } from "../../states/states.ts";
import type { Calcium } from "./calcium.ts";
import type { Sign } from "./door.ts";
import { type Heat, isHot, isWarm } from "./heat.ts";
import type { HeatHours } from "./hours.ts";
import type { Evenness } from "./water.ts";

export type Code =
  | "end-rot"
  | "sunscald"
  | "flowers-heat"
  | "flowers-warm"
  | "flowers-cold"
  | "flowers-other"
  | "hot-ahead"
  | "wilting"
  | "hot-past";

/** Everything the answer is made of. */
export interface Judged {
  state: PlantingState;
  today: string;
  signs: Sign[];
  byDays: boolean;
  hours: HeatHours;
  past: Heat;
  ahead: Heat;
  water: Evenness | null;
  calcium: Calcium;
}

/** What leads: what was seen comes before what the thermometer says. Null where there is neither heat nor a sign. */
export function judge({ signs, past, ahead }: Judged): Code | null {
  if (signs.includes("end-rot")) return "end-rot";
  if (signs.includes("sunscald")) return "sunscald";
  if (signs.includes("flower-drop")) return flowersBy(past);
  if (isHot(ahead)) return "hot-ahead";
  if (signs.includes("wilting-at-dawn")) return "wilting";
  return isHot(past) ? "hot-past" : null;
}

/** Both ends of the thermometer drop flowers; heat beyond the default explains most, then cold nights. */
function flowersBy(past: Heat): Code {
  if (isHot(past)) return "flowers-heat";
  if (past.coldNights > 0) return "flowers-cold";
  return isWarm(past) ? "flowers-warm" : "flowers-other";
}
