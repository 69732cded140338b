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
      "Sweet pepper by itself takes up 0.15, 1.00 and 0.80 of that in its initial, mid and late stage, 1.10 in mid season on stakes; with the soil's evaporation 0.6, 1.05 and 0.90.",
    sources: [
      { key: "fao56", locator: "Table 11, p. 104" },
      { key: "fao56", locator: "Table 17, p. 137" },
      { key: "fao56", locator: "Table 12, p. 110" },
      { key: "fao56", locator: "eq. 62, 65, 66, 70" },
    ],
    design: "Compiled from field measurements; moved to the local wind and humidity.",
    size: null,
    effect: "basal mid season 1.00, staked 1.10",
    grade: "moderate",
    limits:
      "Sweet pepper at full cover. No row for hot peppers. The stages are those of April to June plantings in Europe and the Mediterranean.",
    conflicts: ["irrigate.under-watering-georgia"],
    wouldChange: "Measured ground cover, or a scale under some plants.",
  },
  {
    id: "irrigate.dual",
    rule,
    finding:
      "Transpiration and the evaporation of the soil's wetted, open top are followed apart, each with its own water balance.",
    sources: [
      { key: "fao56", locator: "chapter 7, eq. 69 to 80; Tables 19, 20" },
      { key: "allen-2005-dual", locator: "ground wetted by rain alone" },
    ],
    design:
      "Standard method, compared with lysimeters; the split of the open ground by what wets it is from memory.",
    size: null,
    effect: null,
    grade: "moderate",
    limits:
      "Evaporable water by texture class, not measured. None published for potting mixes, where the single coefficient stays.",
    conflicts: [],
    wouldChange: "Small lysimeters between the plants.",
  },
  {
    id: "irrigate.ground-cover",
    rule,
    finding: "The basal coefficient can be told from the share of ground covered and the plants' height.",
    sources: [{ key: "allen-pereira-2009", locator: "abstract" }],
    design:
      "Density coefficient, compared with measurements of vegetable crops; the abstract and restatements were read.",
    size: "seven vegetable crops in California",
    effect: "root mean square error of Kc 0.13",
    grade: "weak",
    limits:
      "Pepper in short seasons is not among them by name. The value at full cover is still the table's.",
    conflicts: [],
    wouldChange: "The same comparison on pepper.",
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
      "Plastic mulch with drip lowers the basal coefficient by 5 to 15 % and soil evaporation by 50 to 80 %; rain on plastic is not credited.",
    sources: [
      { key: "fao56", locator: "ch. 10, p. 195-197" },
      { key: "psu-drip-2013", locator: "do not credit rain on plastic" },
    ],
    design: "Compiled from vegetables on plastic; pepper is not among them.",
    size: null,
    effect: "Kcb 5 to 15 % lower, 5 taken; soil evaporation 50 to 80 % lower, 50 taken",
    grade: "weak",
    limits: "Other crops. The end of the range that waters more is taken.",
    conflicts: [],
    wouldChange: "A measurement on mulched pepper.",
  },
  {
    id: "irrigate.under-plastic",
    rule,
    finding:
      "Inside a plastic greenhouse the Penman-Monteith equation met what grass used when its aerodynamic resistance was held at 150 s/m, the wind of 1.4 m/s.",
    sources: [{ key: "fernandez-2010", locator: "abstract" }],
    design: "Drainage lysimeters under grass in one plastic greenhouse.",
    size: "1993 to 2004, one greenhouse in Almería",
    effect: "up to about 4 mm a day in July; 21 % less under whitening",
    grade: "weak",
    limits:
      "A Mediterranean greenhouse, with the climate measured inside. Here only its wind is taken; sun and humidity stay those of the open.",
    conflicts: [],
    wouldChange: "Sun, temperature and humidity measured at the plants.",
  },
  {
    id: "irrigate.tension-start",
    rule,
    finding:
      "Drip irrigation of pepper starts at a soil tension of 17 to 22 kPa in sand, 22 to 27 in sandy loam, 25 to 30 in loam and 35 to 45 in clay, where 20 to 25 % of the available water is gone.",
    sources: [{ key: "usu-vegetable-guide", locator: "soil tension, pepper" }],
    design: "Extension recommendation.",
    size: null,
    effect: "17 to 45 kPa by texture",
    grade: "weak",
    limits: "Four groups of textures; a sensor feels only the soil that it touches. Says when, not how much.",
    conflicts: [],
    wouldChange: "The site's own retention curve.",
  },
  {
    id: "irrigate.salt",
    rule,
    finding: "Above 1.5 dS/m in the saturated paste salt holds pepper back, together with dryness.",
    sources: [
      { key: "fao56", locator: "eq. 91 to 93, Table 23" },
      { key: "maas-1990", locator: "pepper: 1.5 dS/m, 14 % per dS/m" },
    ],
    design: "Compiled from salt tolerance trials; combined with the yield response to water.",
    size: null,
    effect: "Ks falls by 14 / (100 × 1.1) for each dS/m above 1.5",
    grade: "moderate",
    limits:
      "Up to 50 % yield loss, in soil. Salt of the soil told from the water alone is a settled value, not this year's.",
    conflicts: [],
    wouldChange: "A saturated-paste test of this bed.",
  },
  {
    id: "irrigate.leaching",
    rule,
    finding: "A share of the water must pass below the roots to hold the soil's salt: ECw / (5 ECe - ECw).",
    sources: [
      { key: "fao29", locator: "leaching requirement" },
      { key: "fao56", locator: "p. 180" },
    ],
    design: "Steady-state balance for roots that take 40, 30, 20 and 10 % from the quarters of their depth.",
    size: null,
    effect: "7, 15 and 25 % at 0.5, 1.0 and 1.5 dS/m for full pepper yield",
    grade: "moderate",
    limits: "Whole seasons of even watering. Winter rain may do the same work for nothing.",
    conflicts: [],
    wouldChange: "Soil tests of two years at the same place.",
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
