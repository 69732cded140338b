import type { Source } from "../types.ts";

/** Sources of night-heat and too-hot: covers, fuels and mats; heat, flowers and fruit. The handbook of heat loss itself stands with the sources of warmth. */
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
  {
    id: "heat-set-guides",
    cite: "Extension texts on pepper: fruit drops where days pass 90 F or nights 75 F. Recalled, not re-read.",
    kind: "extension",
    status: "memory",
  },
  {
    id: "andrews-peppers",
    cite: "Andrews, J. Peppers: the Domesticated Capsicums: temperatures of growth and set. Quoted elsewhere.",
    kind: "handbook",
    status: "secondary",
  },
  {
    id: "pepper-pollen-heat-2022",
    cite: "Pollen of pepper lines after flowers were heated to 41-55 C. HortScience 57(2):181 (2022). Abstract.",
    kind: "trial",
    year: 2022,
    status: "seen",
  },
  {
    id: "thuy-murakami-2015",
    cite: "Thuy, Murakami, 2015. Chili plants about 4 C apart in a house reaching 42 C. Journal of Agricultural Science and Technology 5:515-520.",
    kind: "trial",
    year: 2015,
    status: "seen",
  },
  {
    id: "sunscald-trials",
    cite: "Barber, Sharpe, 1971, and Rabinowitch et al., 1986, on sunscald of fruit. Recalled, not re-read.",
    kind: "trial",
    status: "memory",
  },
  {
    id: "foliar-calcium-caryca",
    cite: "Calcium sprays on pepper 'Caryca F1' in the field. Turkish Journal of Agriculture and Forestry 40(2).",
    kind: "trial",
    status: "seen",
  },
  {
    id: "hortscience-55-906",
    cite: "Calcium and blossom-end rot of pepper fruit, with a review of losses. HortScience 55(6):906 (2020).",
    kind: "trial",
    year: 2020,
    status: "seen",
  },
  {
    id: "tadesse-2001",
    cite: "Tadesse et al., 2001. Humidity round the fruit, calcium and blossom-end rot of 'Domino'. Journal of Horticultural Science and Biotechnology 76(1):9-16.",
    kind: "trial",
    year: 2001,
    status: "seen",
  },
  {
    id: "mercado-1997",
    cite: "Mercado et al., 1997. Pepper pollen, seeds and fruit at 24/12 against 30/20 C. Journal of Horticultural Science 72:893-900. Abstract.",
    kind: "trial",
    year: 1997,
    status: "seen",
  },
];
