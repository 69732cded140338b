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
  held("KY-4", "hotter.ky-kapija", "dagdelen-2004", "1.14", "flowering was the most sensitive", "two years"),
  held("KY-8", "hotter.early-deficit", "patil-2014", "80 %", "5.52", "5.01"),
  held("KY-8", "salt.greenhouse", "patil-2014", "52 %"),
  held("KY-9", "hotter.stage", "sabaragamuwa-1298", "66 and 95 %", "reproductive stage it costs more"),
  held("3 pepper card", "set-out.night-optimum", "fao-pepper-card", "15-18 C"),
  held("SA-13", "salt.cultivars", "baath-2017", "five chiles", "about 3 dS/m"),
  held("SA-14", "salt.cultivars", "texas-pepper-salt", "19 to 86 %", "4.1 dS/m", "habanero"),
  held("5 base temperatures", "stage.base-compact", "dickson-2024", "13.3 C", "9.3 C", "18 and 30 C"),
  held("5 base temperatures", "stage.base-taquito", "horttechnology-35-671", "17.8 C", "20 and 30 C"),
  held("5 base temperatures", "stage.base-biquinho", "biquinho-plastochron", "16.8 C", "43.6", "64.4"),
  held("TR-1", "too-hot.day-later", "ucanr-7217", "100 F", "cuts pollination and set"),
  held("TR-1", "set-out.vent", "ucanr-7217", "24-30 C", "38 C"),
  held("TR-2", "too-hot.day-later", "ucanr-chile", "37.8 C"),
  held("TR-2", "set-out.night-optimum", "ucanr-chile", "10-15.6 C"),
  held("TR-3", "set-out.night-optimum", "fao-pepper-card", "15-18 C"),
  held(
    "TR-4",
    "too-hot.cold-nights",
    "sweet-pepper-pollen-14c",
    "below 14 C",
    "pollen number and germination fall",
  ),
  held("TR-5", "too-hot.cold-nights", "pepper-low-night-flowers", "25/10 C", "more than 60 %", "lowest set"),
  held("TR-5", "cold-record.flowers", "pepper-low-night-flowers", "more than 60 %"),
  held(
    "TR-8",
    "too-hot.heavy-fruit",
    "thuy-murakami-2015",
    "21-33 C",
    "42 C",
    "4 C",
    "lighter",
    "fewer seeds",
  ),
  held("TR-9", "too-hot.night", "andrews-peppers", "18-27 C", "30 C (86 F)"),
  held("TR-10", "too-hot.day", "dewitt-bosland-pepper-garden", "35 C (95 F)", "pollen aborts"),
  held("TR-10", "too-hot.night", "dewitt-bosland-pepper-garden", "18-27 C", "30 C (86 F)"),
  held(
    "TR-11",
    "too-hot.pollen-hotter",
    "pepper-pollen-heat-2022",
    "41-55 C",
    "47 C",
    "50 C separates lines",
  ),
  held("TR-17", "cold-tonight.fruit", "pepper-fruit-storage", "below 7 C", "7-13 C"),
  held("TR-19", "too-hot.cold-sets", "acta-hort-42-55", "8-10 C", "20-24 C", "30 % shade", "without seed"),
  held("GH-1", "night-heat.u-values", "umass-sidewall", "R 1.5", "U 0.67"),
  held("GH-5", "night-heat.infrared-film", "wisconsin-greenhouse-energy", "15 to 20 %"),
  held("GH-6", "night-heat.by-night", "wisconsin-greenhouse-energy", "80 %"),
  held("GH-8", "night-heat.second-layer", "rasheed-glazing", "34 % less loss"),
  held(
    "GH-15",
    "set-out.row-cover-offset-trade",
    "trade-row-cover-2020",
    "4 F for 0.5 oz",
    "6 F for 1-1.25 oz",
  ),
  held("IR-2", "irrigate.mulch", "psu-drip-2013", "do not credit rain"),
  held(
    "IR-3",
    "irrigate.tension-start",
    "usu-vegetable-guide",
    "17 to 22 kPa in sand",
    "22 to 27 in sandy loam",
    "25 to 30 in loam",
    "35 to 45 in clay",
    "20 to 25 %",
  ),
  held("IR-4", "irrigate.lower-depletion", "usu-vegetable-irrigation-2015", "25 %"),
];

/** Rows that no rule and no quantity uses, and why. */
export const USED_NOWHERE: Readonly<Record<string, string>> = {
  "2.1 Table 13": "the reader gives the depth of a typical rain",
  "2.1 Table 16": "without humidity it is taken from the minimum temperature, not from a kind of climate",
  "2.1 Table 21": "cover is seen in the field or follows from the basal coefficient (eq. 76)",
  "KY-3": "yield response of other crops",
  "6.1 soil limits": "the table of days and seedlings says more",
  "TR-6": "a warmer regime compared with a warmer one still: no limit to act on",
  "TR-7": "fruit size by temperature before flowering: nothing in the field follows from it",
  "FR-2": "the autumn frost is counted in the years of a station and not fitted",
  "FR-4": "words for percentiles; ours are given as years in ten",
  "GH-2": "a dwelling's wall for contrast",
  "GH-3": "the geometry is the grower's own",
  "GH-4": "radiation is inside the tabled heat transfer",
  "GH-7": "one house of one size; the heat loss computes this for any",
  "IR-6": "one trial out of season, in percent of field capacity; the depletion fraction is used",
  "IR-7": "no evaporation pan is read",
};

/** Every row of the reference that was read in a publication, by the id it has there or its section and table. */
export const SEEN_IDS: readonly string[] = [
  ...ids("ET", "02 03 05 06 07 08 09 10 11 12 14 15 17 18 19n"),
  ...["1 Fig 18", "1 limits"],
  ...["11", "12", "13", "16", "17", "19", "20", "21", "22"].map((table) => `2.1 Table ${table}`),
  ...ids("KC", "23 24 25 26 27a B15 29 68 28 F36 31 32 33 35 36 38 45 46 LF"),
  ...["2.3 mulch", "2.4 P", "2.4 gamma", "2.4 es", "2.4 slope", "2.4 day of year"],
  ...ids("KY", "1 2 3 4 8 9"),
  "3 pepper card",
  ...ids("SA", "1 2 3 4 5 8 9 13 14 15"),
  ...ids("DD", "1 2 3"),
  ...["5 base temperatures", "6.1 germination", "6.1 soil limits"],
  ...ids("TR", "1 2 3 4 5 6 7 8 9 10 11 17 19"),
  ...ids("FR", "1 2 3 4 10 12"),
  ...ids("GH", "1 2 3 4 5 6 7 8 14 15"),
  "9.2 studies",
  ...ids("SH", "1 2 3 4 5 6 7 8"),
  ...ids("IR", "1 2 3 4 5 6 7"),
];

/** Rows made from a published formula by another method. */
export const COMPUTED_IDS: readonly string[] = [
  ...ids("KC", "P1 P2 P3 P4 P5 P6"),
  ...["KY-7", "SA-7", "SA-12"],
  ...ids("DD", "10 11 12 13 14 15"),
  ...["FR-6", "FR-11", "GH-13", "IR-8", "9.1 VPD"],
];

function ids(letters: string, numbers: string): string[] {
  return numbers.split(" ").map((number) => `${letters}-${number}`);
}
