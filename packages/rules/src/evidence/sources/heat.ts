import type { Source } from "../types.ts";

/** Sources of night-heat: covers, fuels and mats. The handbook of heat loss itself stands with the sources of warmth. */
export const heatSources: Source[] = [
  {
    id: "rasheed-glazing",
    cite: "Rasheed et al., on the heat demand of greenhouses by glazing material and number of layers (model study). Spanish Journal of Agricultural Research. Abstract.",
    kind: "trial",
    status: "seen",
  },
  {
    id: "wisconsin-greenhouse-energy",
    cite: "University of Wisconsin extension, page on greenhouse energy: films, night's share of heating, insulation.",
    kind: "extension",
    status: "seen",
  },
  {
    id: "umass-sidewall",
    cite: "University of Massachusetts extension, fact sheet on insulating greenhouse side walls.",
    kind: "extension",
    status: "seen",
  },
  {
    id: "energy-screens",
    cite: "Extension leaflets on thermal screens in greenhouses, 20 to 50 % of the night's heat saved. Recalled, not re-read.",
    kind: "extension",
    status: "memory",
  },
  {
    id: "fuel-values",
    cite: "Fuel value tables of energy agencies and a forest products laboratory: gross heat in a gallon, a pound and a kilowatt-hour. Recalled, not re-read.",
    kind: "handbook",
    status: "memory",
  },
  {
    id: "soil-heating-wattage",
    cite: "Extension and makers' ranges of wattage for hot beds and seedling mats: 10 to 16 and 12 to 20 W a square foot. Recalled, not re-read.",
    kind: "extension",
    status: "memory",
  },
];
