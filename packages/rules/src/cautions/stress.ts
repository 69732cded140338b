import type { Caution } from "./types.ts";

const caution = (id: string, severity: Caution["severity"], en: string, es: string): Caution => ({
  id,
  version: 1,
  severity,
  text: { en, es },
});

/** What holding water back, hot fruit and washing out salt can do to people, crops and water. */
export const stressCautions: Caution[] = [
  caution(
    "hot-fruit",
    "danger",
    "Hot peppers burn skin, eyes and lungs for hours. Wear gloves, never touch your face, wash hands and tools with soap before and after the toilet, keep children away, and never dry or grind the fruit in a closed room.",
    "Los pimientos picantes queman la piel, los ojos y los pulmones por horas. Use guantes, nunca se toque la cara, lávese las manos y las herramientas con jabón antes y después de ir al baño, mantenga lejos a los niños, y nunca seque ni muela el fruto en un cuarto cerrado.",
  ),
  caution(
    "worker-heat",
    "danger",
    "The weather that stresses plants can kill people. Work in the cool hours, with water, shade and rest, never alone; somebody who is confused, or hot and no longer sweating, needs an ambulance now.",
    "El tiempo que estresa a las plantas puede matar a la gente. Trabaje en las horas frescas, con agua, sombra y descanso, nunca solo; quien está confundido, o caliente y ya no suda, necesita una ambulancia ahora.",
  ),
  caution(
    "stress-mites-end-rot",
    "warning",
    "Dry plants draw mites and set fruit with end rot and sunscald. Look under the leaves and at the fruit twice a week, and end the drought at the first sign.",
    "Las plantas secas atraen ácaros y cuajan frutos con pudrición apical y golpe de sol. Mire debajo de las hojas y mire los frutos dos veces por semana, y termine la sequía a la primera señal.",
  ),
  caution(
    "salt-leaching",
    "warning",
    "Washing salt out needs ground that drains. Where it does not, the water rises, roots drown and the salt comes back. What drains can reach wells and streams: ask what your code allows.",
    "Lavar la sal necesita un suelo que drene. Donde no drena, el agua sube, las raíces se ahogan y la sal vuelve. Lo que drena puede llegar a pozos y arroyos: pregunte qué permiten sus normas.",
  ),
];
