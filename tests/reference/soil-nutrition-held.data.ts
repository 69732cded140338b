/** Rows of the reference that say something without a number to compute: the claim that holds each, and what it must say. */
interface HeldRow {
  id: string;
  claim: string;
  source: string;
  /** Figures and words of the row that must stand in the claim. */
  says: readonly string[];
}

const held = (id: string, claim: string, source: string, ...says: string[]): HeldRow => ({
  id,
  claim,
  source,
  says,
});

export const HELD_BY_CLAIMS: readonly HeldRow[] = [
  held(
    "extractant warning",
    "soil-reading.extractant",
    "ifas-hs1229",
    "Mehlich-3 is higher",
    "cannot be interpreted",
  ),
  held(
    "SN-208",
    "soil-reading.olsen-california",
    "uc-pepper-fertility",
    "below 20",
    "20 to 40",
    "120 to 150 lb P2O5/A",
    "10 F",
    "20 %",
  ),
  held("SN-209", "soil-reading.olsen-arizona", "arizona-vegetable-fertility", "up to 20 mg/kg"),
  held(
    "SN-210",
    "soil-reading.zinc",
    "arizona-vegetable-fertility",
    "above 1.5",
    "0.5 to 1.5",
    "0 to 15 lb Zn/A",
  ),
  held("SN-211", "soil-reading.midwest", "midwest-vegetable-guide-2022", "35 to 40", "above 80"),
  held(
    "SN-212",
    "soil-reading.midwest",
    "midwest-vegetable-guide-2022",
    "85 mg/kg",
    "115 at 16",
    "300 lb K2O/A",
  ),
  held("SN-219", "soil-reading.response-chance", "nmsu-a141", "above 90 %"),
  held("SN-220", "soil-reading.boron", "midwest-vegetable-guide-2022", "1-2 lb B/A", "10.6", "20.5"),
  held(
    "SN-221",
    "soil-reading.georgia",
    "uga-crop-176",
    "25 lb Mg/A",
    "800 lb/A",
    "1000 lb gypsum/A",
    "30-40",
  ),
  held("SN-228", "feeding.nitrogen-plateau", "california-n-plateau-2011", "195, 255 and 315", "60 and 135"),
  held("SN-237", "lime.target", "psu-fertigation", "6.2 to 6.5"),
  held("SN-306", "containers.nitrogen-120", "florida-rockwool-pepper", "120 ppm", "175 ppm", "10 %", "250 %"),
  held("SN-306", "containers.nitrogen-staged", "florida-rockwool-pepper", "60, 90 and 120"),
  held("SN-307", "feeding.nitrogen-plateau", "upr-cubanelle-n", "300 kg N/ha best", "500 no better"),
  held("SN-224", "feeding.midwest-timing", "midwest-vegetable-guide-2022", "20 to 50 %", "5 to 10 lb N/A"),
  held("SN-229", "feeding.nitrate-test", "arizona-vegetable-fertility", "30 ppm", "4 lb N/A"),
  held("SN-237", "feeding.midwest-timing", "psu-fertigation", "30 to 50 %"),
  held("SN-336", "feeding.plant-tests-inconsistent", "arizona-vegetable-fertility", "inconsistent results"),
  held(
    "SN-401",
    "soil-reading.potassium-no-more",
    "johnson-decoteau-1996",
    "6 mM",
    "3 mM",
    "pungency did not change",
  ),
  held(
    "SN-402",
    "soil-reading.potassium-raises",
    "tarbiat-potassium-bell",
    "400 to 500 mg/L",
    "firmer",
    "vitamin C",
  ),
  held(
    "SN-403",
    "soil-reading.potassium-raises",
    "ekiti-potash-2015",
    "90 kg K2O/ha",
    "14.24 and 14.94",
    "at 60",
  ),
  held("SN-404", "soil-reading.potassium-no-more", "damietta-potassium", "best at half", "weight fell", "66"),
  held("SN-405", "soil-reading.potassium-raises", "martinez-acta-628", "firmest", "200 to 400 kg/ha"),
  held("SN-406", "soil-reading.potassium-no-more", "habanero-nk-ashs", "habaneros in pots did not answer"),
  held("SN-910", "feeding.leaching", "uc-pepper-fertility", "20 to 30 lb"),
  held("SN-401", "feeding.potash-calcium", "johnson-decoteau-1996", "3 to 6 mM"),
  held(
    "SN-407",
    "soil-reading.potassium-hinders-magnesium",
    "nevegetable-potassium",
    "calcium and magnesium",
    "magnesium short",
  ),
  held("SN-408", "too-hot.end-rot-calcium", "nc-calcium-2017", "potash or magnesium", "ammonium"),
  held("SN-409", "too-hot.sprays-help", "foliar-calcium-caryca", "4.3-5.2 %", "14.4 %", "12 to 22 %"),
  held("SN-410", "too-hot.end-rot-water", "hortscience-55-906", "35 %"),
  held("SN-411", "too-hot.end-rot-water", "georgia-pepper-irrigation-2017", "33-67 %"),
  held("SN-411", "hotter.no-loss", "georgia-pepper-irrigation-2017", "50 to 70 %"),
  held("SN-412", "too-hot.moist-air", "tadesse-2001", "lowers its calcium", "raises end rot"),
  held("SN-508", "lime.months", "unh-ash", "6 to 12 months"),
  held("SN-508", "wood-ash.speed", "unh-ash", "faster than ground limestone"),
  held(
    "SN-521",
    "wood-ash.do-not-use",
    "osu-ash-2011",
    "trash, cardboard, coal, pressure-treated, painted or stained",
  ),
  held("SN-522", "wood-ash.do-not-use", "osu-ash-2011", "potatoes", "acid lovers"),
  held("SN-523", "wood-ash.seedlings", "osu-ash-2011", "too salty for seedlings"),
  held("SN-524", "wood-ash.seedlings", "osu-ash-2011", "lumps and heaps burn"),
  held("SN-526", "wood-ash.caustic", "osu-ash-2011", "eye protection, gloves, mask, no wind"),
  held("SN-527", "wood-ash.seedlings", "osu-ash-2011", "caustic to young leaves"),
  held("SN-528", "wood-ash.embers", "vce-ash-1993", "Hot embers", "lidded container"),
  held("SN-529", "wood-ash.metals", "uga-b1147", "analyse before use"),
  held(
    "SN-530",
    "wood-ash.metals",
    "ash-metals-2019",
    "arsenic 25 to 30",
    "cadmium 5 to 30",
    "zinc 1000 to 7000",
  ),
  held("SN-611", "lime.smp", "ucd-method-450", "2.4 million lb", "8 in"),
  held("SN-612", "lime.no-coefficients", "modified-mehlich-2005", "Modified Mehlich", "no coefficients"),
  held("SN-613", "lime.no-coefficients", "umn-sikora", "Sikora", "no coefficients"),
  held("SN-614", "lime.target", "ohio-agronomy-quoted", "6.2 to 6.8"),
  held("SN-627", "lime.fineness", "mn-ag-lime", "SN-627"),
  held("SN-628", "lime.fineness", "ohio-aglime", "SN-628"),
  held("SN-642", "lime.free-lime", "rhs-acidifying", "fizzes with vinegar", "not to be acidified"),
  held("SN-910", "manure-timing.nitrate", "uc-pepper-fertility", "20 to 30 lb"),
  held("SN-913", "manure-timing.nitrate", "nmsu-cr579", "nitrate washes out most"),
  held("SN-1011", "containers.slow-feed", "patio-gardening-feed", "Half a tablespoon", "14-14-14"),
  held("SN-1012", "containers.slow-feed", "gardening-feed-second", "SN-1012"),
  held("SN-1013", "containers.size", "tamu-eht-062", "5 gallons", "could not be read"),
  held("SN-1115", "hotter.direction", "kopta-2020", "short of water"),
  held("SN-1115", "hotter.no-change", "phimchan-2012", "depended on the kind"),
  held("SN-1115", "hotter.no-change", "mahmood-2021", "unclear"),
  held("SN-1116", "hotter.no-change", "thaksin-247571", "80 and 60 %", "yield fell"),
  held("SN-1118", "cold-record.low-nights", "agronomy-2021-low-night", "10 C against 15 C", "seven groups"),
  held("SN-1119", "cold-record.flowers", "pepper-low-night-flowers", "25/10 C against 25/20 C", "60 %"),
  held("SN-1120", "cold-record.parthenocarpic", "acta-hort-42-55", "8-10 C", "without seed"),
  held("SN-1121", "stage.base-compact", "dickson-2024", "13.3 C 'Fresh Bites Yellow'", "9.3 C 'Hot Burrito'"),
  held(
    "SN-1122",
    "setting-depth.lodging",
    "hortscience-35-593",
    "lodged less",
    "did not change",
    "one of two years",
    "colder",
  ),
  held("SN-1123", "setting-depth.georgia", "tifton-1994", "'Jupiter' yielded more", "'Camelot'"),
  held(
    "SN-1125",
    "setting-depth.grafting",
    "gisbert-2010",
    "'Foc' and 'Charlot'",
    "SCM-334",
    "more fruit",
    "one of two scions",
  ),
  held(
    "SN-1127",
    "topping.chitwan",
    "pinching-chitwan",
    "15 and 30 days after setting out",
    "+118.65 %",
    "+77.56 %",
    "+27.57 %",
    "+18.04 %",
    "-32.70 %",
    "flowered later",
    "one farm",
  ),
  held("SN-1128", "topping.baitadi", "pinching-baitadi", "20, 30 or 40 days", "30 days yielded most"),
  held("SN-1129", "topping.lamjung", "pinching-lamjung", "25 and 40 days", "flowered later"),
  held("SN-1130", "topping.lalitpur", "pinching-lalitpur", "30 and 45 days", "6.93 t/ha"),
  held(
    "SN-1131",
    "topping.stems",
    "ijhs-stem-pruning",
    "four stems yielded most",
    "two stems",
    "two cultivars",
  ),
];

const FIFTH_ISSUE = "evidence for rotation, company, topping, seed and grafting, which are not built yet";

/** Rows read in a publication or a copy that no rule and no quantity uses, and why. */
export const USED_NOWHERE: Readonly<Record<string, string>> = {
  "SN-215": "an index per litre of scooped soil, whose upper rows are cut off; no classes for peppers",
  "SN-216": "a target for field crops",
  "SN-225": "whether a legume's nitrogen suffices is the agent's credit, low and high",
  "SN-226": "no starter solution is advised",
  "SN-231": "a handbook's average without a soil test, as a supplier quotes it",
  "SN-232": "a rate without a soil test, on a blog",
  "SN-236": "superseded by its own publisher",
  "SN-305": "the table's body could not be read",
  "SN-413": "the abstract is cut off before its results",
  "SN-543": "the rule starts from the area, not from the heap of ash",
  "SN-544": "cords of two woods: an analysis or the published range is used",
  "SN-722": "acidity is held per weight of the material (SN-724)",
  "SN-723": "acidity is held per weight of the material (SN-724)",
  "SN-728": "solubility is held by temperature (SN-726)",
  "SN-904": "a cover crop's credit is the agent's to judge, low and high",
  "SN-905": "half of a legume's nitrogen: checked in its case, SN-907",
  "SN-908": "nitrate in water is counted from the first mg/L, not from 3 to 5 on",
  "SN-1002": "the bed's own spacing is asked for",
  "SN-1007": "the bed's own spacing is asked for",
  "SN-1009": "rows in a bed are the grower's own; no rule sets them",
  "SN-1010": "spacing is the grower's own; no rule sets it",
  "SN-1014": "a state's cartons for an acre: the yield goal is the grower's own",
  "SN-1126": "grafting trials known by their titles alone: nothing in them was read",
  ...Object.fromEntries(
    [1101, 1102, 1103, 1104, 1105, 1106, 1107, 1109, 1110, 1111, 1112, 1113, 1114].map((n) => [
      `SN-${n}`,
      FIFTH_ISSUE,
    ]),
  ),
};

/** Derived rows that nothing here computes, and why. */
export const NOT_COMPUTED: Readonly<Record<string, string>> = {
  "SN-127": "units of conductivity are read where files come in, and checked there",
  "SN-227": "no starter solution is advised",
  "SN-308": "a percentage of the two yields of SN-307; the trial's yields order the stakes",
  "SN-725": "acidity is held per weight of the material (SN-724)",
  "SN-1132": "a check of a study's own figures: its bases differ and nothing follows",
};

/** Every row of the reference that was read in its publication. */
export const SEEN_IDS: readonly string[] = [
  ...ids("105 106 107 108 115 119 122 123 124 126 129"),
  ...ids("201 203 205 206 207 208 209 210 211 212 215 216 219 220 221 224 225 226 228 229 237"),
  ...ids("305 306 307 311 314 315 317 319 321 335 336"),
  ...ids("401 402 403 404 405 406 407 408 409 410 411 412 413"),
  ...ids("501 502 503 504 508 511 512 516 521 522 523 524 525 526 527 528 529 530 541 542 543 544"),
  ...ids("601 602 603 604 605 606 611 612 613 621 622 623 624 625 626 627 630 641 642"),
  ...ids("701 702 704 705 706 707 711 712 715 716 717 718"),
  ...ids("801 802 803 804 805 806 807 808 809 810 811 812 813"),
  ...ids("901 902 904 910 913"),
  ...ids("1001 1002 1004 1005 1007 1008 1009 1010 1013 1014"),
  ...ids("1101 1102 1103 1104 1106 1109 1110 1111 1112 1113 1114 1115 1116 1118 1119 1120 1121 1122 1123"),
  ...ids("1125 1126 1127 1128 1129 1130 1131"),
  "extractant warning",
];

/** Rows read in a page that quotes the publication. */
export const QUOTED_IDS: readonly string[] = [
  ...ids("109 114 116 213 214 231 232 236 320 505 506 507 513 514 515 614 628 643"),
  ...ids("703 721 722 723 724 726 728 729 730 905 908 1011 1012 1105 1107"),
];

/** Arithmetic from rows that were read. */
export const DERIVED_IDS: readonly string[] = [
  ...ids("101 102 103 104 110 111 112 113 117 118 120 121 125 127 202 204 222 223 227 230 233"),
  ...ids("303 308 312 313 316 318 517 545 610 645 708 709 725 903 907 1003 1006 1132"),
];

function ids(numbers: string): string[] {
  return numbers.split(" ").map((number) => `SN-${number}`);
}
