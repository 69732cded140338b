import type { Caution } from "./types.ts";

const caution = (id: string, severity: Caution["severity"], en: string): Caution => ({
  id,
  version: 1,
  severity,
  text: { en },
});

/** What holding water back, hot fruit and washing out salt can do to people, crops and water. */
export const stressCautions: Caution[] = [
  caution(
    "hot-fruit",
    "danger",
    "Hot peppers burn skin, eyes and lungs for hours. Wear gloves, never touch your face, wash hands and tools with soap before and after the toilet, keep children away, and never dry or grind the fruit in a closed room.",
  ),
  caution(
    "worker-heat",
    "danger",
    "The weather that stresses plants can kill people. Work in the cool hours, with water, shade and rest, never alone; somebody who is confused, or hot and no longer sweating, needs an ambulance now.",
  ),
  caution(
    "stress-mites-end-rot",
    "warning",
    "Dry plants draw mites and set fruit with end rot and sunscald. Look under the leaves and at the fruit twice a week, and end the drought at the first sign.",
  ),
  caution(
    "salt-leaching",
    "warning",
    "Washing salt out needs ground that drains. Where it does not, the water rises, roots drown and the salt comes back. What drains can reach wells and streams: ask what your code allows.",
  ),
];
