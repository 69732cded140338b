import type { Choice, Plan } from "../forms/plan.ts";

/** What the office sets, with the guides it may choose from. */
export const settingsPlan = (guides: Choice[] = []): Plan => ({
  labels: "settings",
  choices: { soilGuide: guides },
  sections: [
    { title: "cold", fields: ["coldFloorC", "indoorNightFloorC"] },
    {
      title: "risk",
      fields: ["setOutAllowedNights", "setOutAllowedDegreeHours", "setOutAcceptedRisk", "setOutFrostRisk"],
    },
    { title: "work", fields: ["labourPerHour"] },
    { title: "water", fields: ["irrigateRainRisk", "hotterLeastEtShare"] },
    { title: "soil", fields: ["soilGuide", "limeTargetPh"] },
    {
      title: "feeding",
      fields: [
        "feedingChlorideMostKgPerHa",
        "feedingAmmoniumMostPct",
        "feedingSaltMostKgPerHa",
        "feedingCaToMgLeast",
        "feedingCaToKLeast",
      ],
    },
    { title: "manure", fields: ["rawManureRule"] },
  ],
});
