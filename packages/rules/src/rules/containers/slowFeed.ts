import { measure, say } from "../../text/message.ts";

const US_GALLON_L = 3.785411784;
const US_TABLESPOON_ML = 14.78676478125;

/** Controlled release 14-14-14, half a tablespoon a gallon of mix. Source: patio gardening page (SN-1011, secondary); a second page says the same (SN-1012). */
const TABLESPOONS_PER_GALLON = 0.5;

/** What a container of so many litres takes of a 14-14-14 controlled-release fertiliser at planting. */
export function controlledRelease(volumeL: number): { tablespoons: number; millilitres: number } {
  const tablespoons = (volumeL / US_GALLON_L) * TABLESPOONS_PER_GALLON;
  return { tablespoons, millilitres: tablespoons * US_TABLESPOON_ML };
}

/** Eggplant, 5 US gallons a plant; pepper's own row was cut off in the copy read. Source: Texas A&M EHT-062 (SN-1013). */
const EGGPLANT_L = 5 * US_GALLON_L;

/** How a plant's share of its container stands against the one published size. */
export const sizeMessage = (litresPerPlant: number) =>
  say(litresPerPlant < EGGPLANT_L ? "containers.step.size-small" : "containers.step.size", {
    own: measure(litresPerPlant, "L"),
    eggplant: measure(EGGPLANT_L, "L"),
  });
