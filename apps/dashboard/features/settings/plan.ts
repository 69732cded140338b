import type { Plan } from "../forms/plan.ts";

export const settingsPlan: Plan = {
  labels: "settings",
  sections: [
    { title: "cold", fields: ["coldFloorC", "indoorNightFloorC"] },
    {
      title: "risk",
      fields: ["setOutAllowedNights", "setOutAllowedDegreeHours", "setOutAcceptedRisk", "setOutFrostRisk"],
    },
    { title: "work", fields: ["labourPerHour"] },
    { title: "water", fields: ["irrigateRainRisk", "hotterLeastEtShare"] },
    { title: "soil", fields: ["soilGuide"] },
  ],
};
