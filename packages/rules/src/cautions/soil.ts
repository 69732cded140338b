import type { Caution } from "./types.ts";

const caution = (id: string, severity: Caution["severity"], en: string): Caution => ({
  id,
  version: 1,
  severity,
  text: { en },
});

/** What soil tests, fertilisers and manures can do to people, crops and water. */
export const soilCautions: Caution[] = [
  caution(
    "soil-no-conversion",
    "care",
    "Never compare numbers of two extractants, and never convert one into the other: the same soil reads differently by each.",
  ),
  caution(
    "fertiliser-handling",
    "warning",
    "Fertilisers irritate eyes, skin and lungs. Read the label, wear gloves and eye protection, and keep them dry and away from children, animals, food and fuel.",
  ),
  caution(
    "nitrate-leaching",
    "warning",
    "Nitrate washes into wells and streams. Never give more to be safe, never before heavy rain, and do not water past the roots.",
  ),
  caution(
    "nutrient-law",
    "care",
    "Nutrient plans, yearly limits, closed periods and distances to water and wells are set by local law. They come before this advice.",
  ),
  caution(
    "phosphorus-runoff",
    "care",
    "Phosphate that runs off feeds algae. Keep it off slopes, ditches and wet or frozen ground, and work it in.",
  ),
  caution(
    "backflow",
    "danger",
    "Fertiliser drawn back into a well or main poisons drinking water. Inject only behind a working backflow preventer, as your code requires.",
  ),
  caution(
    "ash-caustic",
    "danger",
    "Wood ash is caustic: it burns eyes, skin and lungs. Wear goggles, gloves and a mask, and never spread it in wind. Only from clean, untreated wood.",
  ),
  caution(
    "ash-not-with-ammonium",
    "warning",
    "Never mix ammonium or urea fertilisers with wood ash or lime, and never put them on the same ground at the same time: ammonia gas escapes, which hurts people and wastes nitrogen.",
  ),
  caution(
    "urea-work-in",
    "care",
    "Urea left on the surface loses ammonia to the air. Work it in or water it in the same day, and keep it off leaves.",
  ),
  caution(
    "oxidiser",
    "danger",
    "Nitrate fertilisers feed fire and can explode when mixed with fuel. Keep them from oil, fuel, sulfur, sawdust and sparks, and obey the storage law.",
  ),
  caution(
    "chloride",
    "warning",
    "Chloride and salt near roots scorch peppers. Keep potassium chloride away from young plants and salty ground.",
  ),
  caution(
    "manure-raw",
    "danger",
    "Raw manure carries germs that make people ill. Never on a standing crop. On certified ground in the US at least 120 days before harvest where fruit can touch soil, else 90 (7 CFR 205.203(c)); elsewhere follow your produce-safety rule. Wash hands and tools.",
  ),
  caution(
    "grade-varies",
    "care",
    "Composts and manures differ many times over. Have this lot analysed before you rely on its numbers.",
  ),
  caution(
    "organic-dust",
    "care",
    "Dust of meals, composts and manures irritates lungs. Wear a mask in dry weather; keep meals from dogs and vermin.",
  ),
  caution(
    "certifier-first",
    "warning",
    "This material is restricted on certified ground. Ask the certifier before it is used, and keep the record of the need.",
  ),
];
