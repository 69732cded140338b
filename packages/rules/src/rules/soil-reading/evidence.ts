import type { SoilReading } from "./reading.ts";

/** The claims that this reading leans on: those of the guides it was read by, and what stands against them. */
export function evidenceOf({ test, read, cations, salts, refused }: SoilReading): string[] {
  const has = (nutrient: string, extractant: string) =>
    test.values.some((v) => v.nutrient === nutrient && v.extractant === extractant);
  const by = (prefix: string) => read.some((r) => r.read.guide.id.startsWith(prefix));
  const cec = test.cecCmolPerKg ?? cations?.cecCmolPerKg;
  const when = (is: boolean, ...claims: string[]) => (is ? claims : []);
  return [
    "soil-reading.extractant",
    "soil-reading.guides",
    ...when(has("P", "olsen"), "soil-reading.olsen-california", "soil-reading.olsen-arizona"),
    ...when(has("P", "bray-1") || has("K", "ammonium-acetate"), "soil-reading.midwest"),
    ...when(has("Zn", "dtpa"), "soil-reading.zinc"),
    ...when(has("B", "hot-water") || has("B", "mehlich-3"), "soil-reading.boron"),
    ...when(by("ga-"), "soil-reading.georgia"),
    ...when(
      [...read.map((r) => r.read.guide)].some((g) => g.status !== "seen") ||
        refused.some((r) => r.why === "only-unverified"),
      "soil-reading.unverified",
    ),
    ...when(
      read.some((r) => r.read.response === "responds"),
      "soil-reading.response-chance",
    ),
    ...when(
      read.some((r) => r.value.nutrient === "K"),
      "soil-reading.potassium-hinders-magnesium",
      "soil-reading.potassium-raises",
      "soil-reading.potassium-no-more",
    ),
    ...when(test.waterPh !== undefined, "soil-reading.ph"),
    ...when(salts !== undefined, "soil-reading.salts"),
    ...when(cations !== undefined, "soil-reading.cec", "soil-reading.saturation"),
    ...when(cec !== undefined, "soil-reading.usual-cec"),
  ];
}
