import type { ValveState } from "../../states/states.ts";
import type { ValveSetting } from "./setting.ts";

export type Unanswered = ValveState["unanswered"][number];

/** Waterings we advised that nobody answered and no logged watering covers. */
export function openWaterings({ state, today }: ValveSetting): Unanswered[] {
  return state.unanswered.filter(
    (u) =>
      u.rule === "irrigate" &&
      u.due <= today &&
      !state.waterings.some((w) => w.on >= u.issuedOn && w.on <= today),
  );
}

/** The net depth each would have brought, by day, if it was done. One without an amount counts as none. */
export function netIfDone(open: Unanswered[], { state, areaM2 }: ValveSetting): Map<string, number> {
  const byDay = new Map<string, number>();
  for (const u of open) {
    const litres = ((u.minutes ?? 0) / 60) * state.valve.flowLPerH;
    const net = u.netMm ?? (litres * state.valve.efficiency) / areaM2;
    byDay.set(u.due, (byDay.get(u.due) ?? 0) + net);
  }
  return byDay;
}
