import type { Claim } from "../types.ts";

const guide = (id: string, more: Pick<Claim, "finding" | "sources" | "limits"> & Partial<Claim>): Claim => ({
  id: `look-closer.${id}`,
  rule: "look-closer",
  design: "Diagnostic guides of extension services, read in part",
  size: null,
  effect: null,
  grade: "weak",
  conflicts: [],
  wouldChange: "Counts of how often each sign comes with each cause, confirmed by a laboratory.",
  ...more,
});

export const lookCloserClaims: Claim[] = [
  guide("points", {
    finding:
      "Guides tie signs to causes in words; often, sometimes and rarely are read as odds of 4 to 1, 2 to 1 and even, and added up as points.",
    sources: [{ key: "common-practice" }],
    design: "Common practice of this rule; signs weighed as if independent, causes as if equally common",
    grade: "practice",
    limits:
      "No study gives the odds for peppers. Signs of one cause come together, so a long list overstates it.",
  }),
  guide("patterns", {
    finding:
      "Damage in scattered or clumped plants that spreads speaks for something living; in rows, in a spray's pattern or everywhere of one age for weather, chemicals or work.",
    sources: [{ key: "diagnosis-patterns", locator: "abstract" }],
    limits: "General plant pathology, not peppers. Living causes can look even, and others patchy.",
  }),
  guide("pests", {
    finding:
      "Aphids leave honeydew and curl leaves; thrips silver them; spider mites speckle and web them in hot, dry years; borers and maggots enter fruit; cutworms cut young stems.",
    sources: [
      { key: "ncsu-pepper-pests" },
      { key: "umd-hg57" },
      { key: "uky-entfact-301" },
      { key: "ucipm-pepper-damage" },
      { key: "cornell-spider-mites" },
      { key: "vt-pepper-maggot" },
      { key: "seal-martin-2016" },
    ],
    limits: "Pests differ by region; the mite guide is of soybeans. What is hot in degrees no guide says.",
  }),
  guide("broad-mites-cool", {
    finding: "Broad mites do well in cool, humid weather in a Georgia field.",
    sources: [{ key: "uga-broad-mites" }],
    limits: "One field; elsewhere they are of the tropics and of greenhouses, so no weather is weighed.",
    conflicts: ["look-closer.broad-mites-house"],
  }),
  guide("broad-mites-house", {
    finding: "Broad mites are chiefly of greenhouses and come out on transplants raised there.",
    sources: [{ key: "msstate-broad-mites" }],
    limits: "Mississippi; in the north they do not winter outdoors either.",
    conflicts: ["look-closer.broad-mites-cool"],
  }),
  guide("diseases", {
    finding:
      "Bacterial spot, anthracnose and Phytophthora blight follow warm rain, the last from low, wet spots; southern blight very hot, wet spells; damping-off wet seed beds; Verticillium wilt comes slowly.",
    sources: [
      { key: "ncsu-vdin-018" },
      { key: "lsu-pepper-diseases" },
      { key: "ncsu-vdin-027" },
      { key: "cornell-phytophthora-pepper" },
      { key: "inrae-capsici" },
      { key: "edis-vh054" },
      { key: "udel-southern-blight" },
      { key: "ufl-southern-blight" },
      { key: "msstate-p3747" },
      { key: "bacterial-spot-warmth" },
    ],
    limits:
      "24 C as warm is of P. capsici; of bacterial spot it is from memory. What counts as wet is practice: guides give no millimetres.",
  }),
  guide("verticillium-cool", {
    finding: "Verticillium wilt of peppers is favoured by cool air and soil.",
    sources: [{ key: "ucipm-verticillium" }, { key: "omafra-verticillium" }, { key: "pnw-verticillium" }],
    limits: "No temperature is given. 20 C is practice.",
    conflicts: ["look-closer.verticillium-warm"],
  }),
  guide("verticillium-warm", {
    finding:
      "Of its two fungi, V. dahliae is favoured by moderate to high temperature and V. albo-atrum by cool.",
    sources: [{ key: "avrdc-verticillium" }],
    limits: "Weather is a weak sign of it for that reason: one point either way.",
    conflicts: ["look-closer.verticillium-cool"],
  }),
  guide("viruses", {
    finding:
      "Mosaics mottle and distort young leaves; cucumber mosaic stunts and narrows them; spotted wilt bronzes and rings leaves and fruit.",
    sources: [
      { key: "ucipm-cucumber-mosaic" },
      { key: "avrdc-cmv" },
      { key: "ucipm-spotted-wilt" },
      { key: "usu-spotted-wilt" },
      { key: "umd-hg57" },
    ],
    limits:
      "Guides themselves say that viruses cannot be told apart by eye, and that mixed infections are common.",
  }),
  guide("food", {
    finding:
      "Nitrogen, phosphorus, potassium and magnesium run short on old leaves first, calcium and iron on young ones; salt burns the edges of old leaves and stunts.",
    sources: [
      { key: "uga-b1569", locator: "nitrogen" },
      { key: "deficiency-keys" },
      { key: "ncsu-vdin-010" },
      { key: "tamu-salt" },
      { key: "umd-hg57" },
    ],
    limits: "All but nitrogen, magnesium and salt is from memory. Sick roots look like hunger.",
  }),
  guide("weather-damage", {
    finding:
      "Peppers chilled below 10 C show dark, glassy leaves the next day; wind tears and scorches; drowned roots wilt, yellow and drop leaves; end rot follows uneven water, sunscald bare fruit.",
    sources: [
      { key: "egro-chilling" },
      { key: "omafra-frost-wind" },
      { key: "udel-wind" },
      { key: "purdue-waterlogged" },
      { key: "udel-flooding" },
      { key: "nmsu-h249" },
      { key: "osu-vegnet-2020" },
      { key: "heat-set-guides" },
    ],
    limits:
      "10 C is of greenhouses. The 32 C at which flowers drop is from memory. Rain that saturates soil is practice.",
  }),
  guide("drift", {
    finding:
      "Growth-regulator herbicides cup, narrow and twist young growth, on the wind or in manure, hay and compost, where some last a year.",
    sources: [{ key: "udel-growth-regulators" }, { key: "unl-drift" }, { key: "tennessee-herbicide" }],
    limits: "Other herbicides bleach or burn. A neighbour's spraying is in no log here.",
  }),
  guide("sample", {
    finding:
      "Laboratories want whole plants, dug and not pulled, with early and late signs, roots bagged apart, dry, cool, and quickly.",
    sources: [{ key: "wisc-pddc-sample" }, { key: "clemson-sample" }, { key: "umaine-sample" }],
    design: "Instructions of three diagnostic laboratories, read in part",
    grade: "moderate",
    limits: "Each laboratory has its own form, fee and wishes; they come first.",
    wouldChange: "Other instructions of the laboratory the sample goes to.",
  }),
  guide("re-entry", {
    finding:
      "After a spraying no worker enters the treated ground before the label's restricted-entry interval has passed; of several the longest holds.",
    sources: [{ key: "cfr-40-170-112", locator: "(a)(1), (a)(3)" }, { key: "wsu-intervals" }],
    design: "Law of the United States as of 2007, and a university's guide",
    grade: "strong",
    limits:
      "Exceptions for early entry exist and are not offered. The revised text of 2015 was not re-read. Elsewhere other law holds.",
    wouldChange: "A label or law that asks for longer.",
  }),
  guide("pre-harvest", {
    finding:
      "No fruit is picked before the label's days since the last spraying have passed; a longer re-entry interval holds for picking too.",
    sources: [{ key: "npic-phi" }, { key: "wsu-intervals" }],
    design: "Guidance of a national information service and a university on what labels mean",
    grade: "strong",
    limits:
      "Days are counted as calendar days of the farm. Where a label counts hours, its hours hold, and may end later on that day.",
    wouldChange: "A label that counts otherwise.",
  }),
];
