import { DomainError } from "../../core/errors.ts";
import { Working } from "../../core/working.ts";
import type { ValveState } from "../../states/states.ts";
import type { StandingZone } from "../../water/zone.ts";
import { askOf } from "../hotter/ask.ts";
import { signsOf } from "../hotter/signs.ts";

/**
 * A dry spell on purpose, as this valve can keep it today: held by every planting on it with a share of full water; asked
 * for beside plants that want full water; or asked for and not to be held, because **hotter** would refuse, stop or put it
 * off.
 */
export type Drought = { kind: "none" | "shared" | "off" } | { kind: "held"; etShare: number };

/** The deficit that somebody holds on a planting on a day. */
export const isDryOn = ({ planting }: Pick<StandingZone, "planting">, day: string): boolean => {
  const { deficit } = planting;
  return deficit !== undefined && day >= deficit.from && (deficit.to === undefined || day <= deficit.to);
};

/** Whether a dry spell is held on the plants of a valve today. Withholds water only where **hotter** would too. */
export function droughtOf(state: ValveState, zones: StandingZone[], today: string): Drought {
  const dry = zones.filter((zone) => isDryOn(zone, today)).length;
  if (dry === 0) return { kind: "none" };
  if (dry < zones.length) return { kind: "shared" };
  try {
    const asked = askOf(state);
    if (typeof asked === "string") return { kind: "off" };
    const { hold, stop } = signsOf(asked, false, new Working());
    return hold.length + stop.length > 0 ? { kind: "off" } : { kind: "held", etShare: asked.etShare };
  } catch (error) {
    if (error instanceof DomainError) return { kind: "off" };
    throw error;
  }
}
