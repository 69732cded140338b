import { hardened, leaves } from "./common.ts";
import type { DemoFarm } from "./types.ts";

export const windleTop: DemoFarm = {
  name: "Windle Top",
  contact: "Sunniva Crake",
  units: "metric",
  site: { name: "Hill top", elevationM: 402, offset: [-0.3, 1.2, 95], station: "ALD-02" },
  valves: [{ name: "Tank", method: "drip", flowLPerH: 420, efficiency: 0.9 }],
  beds: [
    {
      name: "Ridge",
      lengthM: 22,
      valve: "Tank",
      plantings: [
        {
          variety: "Windle Cayenne",
          marketType: "cayenne-type",
          sown: -76,
          setOut: -12,
          plants: 90,
          yieldGoal: 14,
          material: "Urea",
          method: "banded",
        },
        { variety: "Windle Thai", marketType: "thai-type", sown: -74, setOut: -12, plants: 60 },
        {
          variety: "Top Serrano",
          marketType: "serrano-type",
          sown: -54,
          plannedSetOut: 14,
          plants: 90,
          yieldGoal: 14,
          notes: leaves(4),
        },
      ],
    },
    {
      name: "Lee side",
      lengthM: 22,
      texture: "clay",
      valve: "Tank",
      plantings: [
        {
          variety: "Late Lantern",
          marketType: "mini-sweet",
          sown: 4,
          plannedSetOut: 66,
          plants: 90,
          yieldGoal: 20,
          pricePerKg: 3.5,
          raising: { mediumC: 22, germinationPct: 85, lossPct: 10, growingC: 20 },
        },
        {
          variety: "Lee Padron",
          marketType: "padron-type",
          sown: -62,
          plannedSetOut: 7,
          plants: 100,
          yieldGoal: 18,
          notes: [...leaves(7), hardened],
        },
        {
          variety: "Lee Sweet",
          marketType: "sweet-long",
          sown: -62,
          plannedSetOut: 7,
          plants: 80,
          notes: leaves(7),
        },
      ],
    },
  ],
  soilCsv: ["sampled on,bed,sample,depth cm,pH,P ppm,K ppm", "%-70%,Lee side,W4,15,5.4,19,84"],
  shed: [["urea", "Urea", 46, 0, 0, true, "prohibited", 50, 0.8]],
};
