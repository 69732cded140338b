import type { Claim } from "../types.ts";

const rule = "irrigate";

export const irrigateClaims: Claim[] = [
  {
    id: "irrigate.penman-monteith",
    rule,
    finding: "Daily reference evapotranspiration is computed by the Penman-Monteith equation over grass.",
    sources: [{ key: "fao56", locator: "eq. 6, chapters 2 to 4" }],
    design: "Standard method, compared with lysimeters in many climates before it was adopted.",
    size: null,
    effect: null,
    grade: "strong",
    limits:
      "Grass in the open. Where sun, humidity or wind was not measured their published replacements stand in and are listed.",
    conflicts: [],
    wouldChange: "A weather station at the bed with sun, humidity and wind.",
  },
  {
    id: "irrigate.pepper-kc",
    rule,
    finding:
      "Sweet pepper uses 0.6, 1.05 and 0.90 of that in its initial, mid and late stage; 1.15 in mid season on stakes.",
    sources: [
      { key: "fao56", locator: "Table 11, p. 104" },
      { key: "fao56", locator: "Table 12, p. 110" },
      { key: "fao56", locator: "eq. 62, 65, 66" },
    ],
    design: "Compiled from field measurements; moved to the local wind and humidity.",
    size: null,
    effect: "mid season 1.05, staked 1.15",
    grade: "moderate",
    limits:
      "Sweet pepper at full cover. No row for hot peppers. The stages are those of April to June plantings in Europe and the Mediterranean.",
    conflicts: ["irrigate.under-watering-georgia"],
    wouldChange: "Measured ground cover, or a scale under some plants.",
  },
  {
    id: "irrigate.root-zone",
    rule,
    finding:
      "Pepper is held back once 30 % of the available water is gone at 5 mm a day, sooner on thirsty days; roots reach 0.5 to 1 m.",
    sources: [
      { key: "fao56", locator: "Table 22, p. 163" },
      { key: "fao56", locator: "eq. 82 to 88" },
      { key: "fao56", locator: "Table 19, p. 144" },
    ],
    design: "Compiled tables and a daily water balance.",
    size: null,
    effect: "p = 0.30",
    grade: "moderate",
    limits: "The shallow end of the root depth is used. Capillary rise and runoff are not counted.",
    conflicts: ["irrigate.lower-depletion"],
    wouldChange: "A soil moisture sensor, or a hole dug beside a plant.",
  },
  {
    id: "irrigate.lower-depletion",
    rule,
    finding:
      "An extension sheet for dry Utah lets only about 25 % of the available water go before watering sweet pepper.",
    sources: [{ key: "usu-vegetable-irrigation-2015", locator: "allowable depletion" }],
    design: "Extension recommendation.",
    size: null,
    effect: "about 25 %",
    grade: "weak",
    limits: "Dry, sunny climate; on its thirstiest days the adjusted fraction here is as low or lower.",
    conflicts: ["irrigate.root-zone"],
    wouldChange: "A trial in a cool, short season.",
  },
  {
    id: "irrigate.mulch",
    rule,
    finding:
      "Plastic mulch with drip lowers the whole coefficient by 10 to 30 %; rain on plastic is not credited.",
    sources: [
      { key: "fao56", locator: "ch. 10, p. 195-197" },
      { key: "psu-drip-2013", locator: "do not credit rain on plastic" },
    ],
    design: "Compiled from vegetables on plastic; pepper is not among them.",
    size: null,
    effect: "Kc 10 to 30 % lower; soil evaporation 50 to 80 % lower",
    grade: "weak",
    limits: "Other crops. The end of the range that waters more is taken.",
    conflicts: [],
    wouldChange: "A measurement on mulched pepper.",
  },
  {
    id: "irrigate.under-watering-georgia",
    rule,
    finding:
      "In three trial years 70, 67 and 50 % of crop evapotranspiration gave full yield; end rot rose at 33 to 67 %, root disease at 167 %.",
    sources: [{ key: "georgia-pepper-irrigation-2017", locator: "abstract" }],
    design: "Randomised field trials on plastic and drip.",
    size: "three trial years between 2001 and 2005, one site",
    effect: "no yield lost at 70, 67 and 50 %",
    grade: "moderate",
    limits: "Humid Georgia with rain, on sand. It does not say that a dry season needs no more.",
    conflicts: ["irrigate.pepper-kc"],
    wouldChange: "The same trial in a short, cool season.",
  },
];
