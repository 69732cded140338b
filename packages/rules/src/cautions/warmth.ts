import type { Caution } from "./types.ts";

export const warmthCautions: Caution[] = [
  {
    id: "cover-overheats",
    version: 1,
    severity: "warning",
    text: {
      en: "A closed cover in sun can kill every plant under it within an hour or two, even on a cold day. Whoever puts it up must be there to open it.",
    },
  },
  {
    id: "cold-pools",
    version: 1,
    severity: "care",
    text: {
      en: "Cold air pools in hollows and behind hedges. The lowest bed may freeze on a night when the thermometer by the house does not.",
    },
  },
  {
    id: "cold-look-alikes",
    version: 1,
    severity: "care",
    text: {
      en: "Herbicide drift, viruses, too much fertiliser and wet roots can look like cold. If the pattern does not follow the cold spots, look for another cause before throwing plants away.",
    },
  },
  {
    id: "night-heat-fire",
    version: 1,
    severity: "danger",
    text: {
      en: "A heater that burns fuel gives off carbon monoxide: never without a flue or an open vent, never where people sleep. Electric heat stands dry, behind a residual-current device, away from film and fleece. Local fire and electrical codes come first.",
    },
  },
  {
    id: "frost-fire-and-ice",
    version: 1,
    severity: "danger",
    text: {
      en: "Burn nothing under or beside a cover: film and fleece catch fire, and fumes kill. Open fires and orchard heaters need whatever permit the local fire and air codes ask for. Paths and covers are slippery with ice before dawn: go with a lamp and not alone.",
    },
  },
  {
    id: "frost-water",
    version: 1,
    severity: "warning",
    text: {
      en: "Do not spray water on plants against frost unless a system built for it runs without a break until all ice has melted: a little water makes the damage worse, and ice breaks plants and covers. Keep wet fleece off the leaves: where it touches, they freeze.",
    },
  },
];
