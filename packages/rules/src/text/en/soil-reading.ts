/** What soil-reading says, in English. Keys start with the rule's id. */
export const soilReading: Record<string, string> = {
  "soil-reading.decision":
    "{short, plural, =0 {No nutrient reads short} one {# nutrient reads short} other {# nutrients read short}} of {read} read{refused, plural, =0 {} one {; # value could not be read} other {; # values could not be read}}.",
  "soil-reading.value":
    "{nutrient}: {class} at {content} by {extractant} ({guide}; this class {open, select, yes {starts at {low}} other {runs from {low} to {high}}}). {response}",
  "soil-reading.value-beside":
    "{nutrient} in another guide of the same extractant, {guide}: {class}. {response}",
  "soil-reading.ph.too-acid":
    "pH {ph} is too acid for peppers (they stand {least} to {most}; the target is {low} to {high}). Lime comes first.",
  "soil-reading.ph.acid": "pH {ph} is below the target of {low} to {high}.",
  "soil-reading.ph.fit": "pH {ph} is in the target of {low} to {high}.",
  "soil-reading.ph.high": "pH {ph} is above the target of {low} to {high}. Add no lime and no wood ash.",
  "soil-reading.ph.too-high":
    "pH {ph} is above the {most} that peppers stand well. Add no lime and no wood ash; watch iron and manganese.",
  "soil-reading.buffer": "Buffer pH {ph} ({method}) is kept for working out lime.",
  "soil-reading.salts.fine": "Salts {ec} by {extraction}: not above {limit}.",
  "soil-reading.salts.high":
    "Salts {ec} by {extraction}: above {limit}, where peppers begin to lose yield or the laboratory warns.",
  "soil-reading.salts.comfort":
    "Vegetables in general are comfortable below {limit}; that page does not name its extraction.",
  "soil-reading.salts.no-extraction":
    "Salts {ec} were not read: the report does not say how the extract was made. Ask the laboratory.",
  "soil-reading.salts.no-bound":
    "Salts {ec} were not read: no published bound is held for a {extraction} extract, and none is converted.",
  "soil-reading.cec.sum":
    "Exchange capacity {cec} cmol/kg by sum: calcium {ca}, magnesium {mg}, potassium {k}.",
  "soil-reading.cec.minimum":
    "Exchange capacity at least {cec} cmol/kg by sum, acidity not measured: calcium at most {ca}, magnesium at most {mg}, potassium at most {k}.",
  "soil-reading.organic-matter":
    "Organic matter {share}. It gives nitrogen as the soil warms: count it as a credit when feeding.",
  "soil-reading.refused.no-extractant":
    "{nutrient} {content} was not read: the report does not name the extractant, and the same soil reads differently by each.",
  "soil-reading.refused.no-guide":
    "{nutrient} {content} by {extractant} was not read: no verified guide held here covers it.",
  "soil-reading.refused.only-unverified":
    "{nutrient} {content} by {extractant} was not read: only unverified guides cover it, and those are read only where your office chooses one.",
  "soil-reading.refused.guide-does-not-fit":
    "{nutrient} {content} by {extractant} was not read: the guide your office chose is for another extractant.",
  "soil-reading.refused.needs-more": "{nutrient} {content} was not read: the guide {problem}.",
  "soil-reading.refused.wrong-medium": "{nutrient} {content} was not read: {problem}.",
  "soil-reading.response.responds": "Peppers can be expected to answer to it.",
  "soil-reading.response.may-respond": "Peppers may answer to it.",
  "soil-reading.response.unlikely": "More of it is unlikely to help.",
  "soil-reading.class.very-low": "very low",
  "soil-reading.class.low": "low",
  "soil-reading.class.medium": "medium",
  "soil-reading.class.high": "high",
  "soil-reading.class.very-high": "very high",
  "soil-reading.class.below-optimum": "below optimum",
  "soil-reading.class.optimum": "optimum",
  "soil-reading.class.above-optimum": "above optimum",
  "soil-reading.class.below-normal": "below the normal range",
  "soil-reading.class.normal": "in the normal range",
  "soil-reading.class.above-normal": "above the normal range",
  "soil-reading.class.deficient": "deficient",
  "soil-reading.class.adequate": "adequate",
  "soil-reading.class.warning": "high enough to warn",
  "soil-reading.class.responds": "in the range where crops respond",
  "soil-reading.class.may-respond": "in the range where crops may respond",
  "soil-reading.class.unlikely-to-respond": "in the range where crops hardly respond",
  "soil-reading.nutrient.P": "Phosphorus",
  "soil-reading.nutrient.K": "Potassium",
  "soil-reading.nutrient.Ca": "Calcium",
  "soil-reading.nutrient.Mg": "Magnesium",
  "soil-reading.nutrient.S": "Sulfur",
  "soil-reading.nutrient.Zn": "Zinc",
  "soil-reading.nutrient.Cu": "Copper",
  "soil-reading.nutrient.Mn": "Manganese",
  "soil-reading.nutrient.Fe": "Iron",
  "soil-reading.nutrient.B": "Boron",
  "soil-reading.nutrient.Na": "Sodium",
  "soil-reading.nutrient.NO3-N": "Nitrate nitrogen",
  "soil-reading.extractant.mehlich-1": "Mehlich-1",
  "soil-reading.extractant.mehlich-3": "Mehlich-3",
  "soil-reading.extractant.olsen": "Olsen",
  "soil-reading.extractant.bray-1": "Bray P1",
  "soil-reading.extractant.ammonium-acetate": "ammonium acetate",
  "soil-reading.extractant.modified-morgan": "Modified Morgan",
  "soil-reading.extractant.dtpa": "DTPA",
  "soil-reading.extractant.hot-water": "hot water",
  "soil-reading.extractant.kcl": "potassium chloride",
  "soil-reading.extraction.saturated-paste": "saturated paste",
  "soil-reading.extraction.1:2": "the 1:2 extract",
  "soil-reading.ends": "A newer test ends this, or three years.",
  "soil-reading.stakes.short": "A nutrient that reads short can hold the crop back.",
  "soil-reading.stakes.enough": "Nothing reads short.",
  "soil-reading.limit.guide":
    "{guide}: calibrated in {region}. Elsewhere the same number may mean something else.",
  "soil-reading.limit.unverified":
    "{guide}: this guide was not read in its publication and is unverified ({region}).",
  "soil-reading.limit.old": "The sample of {day} {year} is more than three years old.",
  "soil-reading.limit.depth": "The sample was taken {depth} deep; the guides are made for 15 to 20 cm.",
  "soil-reading.change.new-test": "A new test.",
  "soil-reading.change.extractant":
    "The extractant of each value that was not read: the laboratory knows it.",
  "soil-reading.change.acidity":
    "The exchangeable acidity: it would turn the least exchange capacity into the real one.",
  "soil-reading.change.guide": "A guide of your own region, chosen by your office.",
  "soil-reading.missing.test": "A soil test of this bed, each value with its extractant.",
  "soil-reading.missing.test-moves": "Without one any nutrient may be anything from very low to very high.",
};
