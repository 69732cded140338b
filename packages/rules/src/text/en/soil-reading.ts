/** What soil-reading says, in English. Keys start with the rule's id. */
export const soilReading: Record<string, string> = {
  "soil-reading.decision":
    "{short, plural, =0 {No nutrient reads short} one {# nutrient reads short} other {# nutrients read short}} of {read} read{refused, plural, =0 {} one {; # value could not be read} other {; # values could not be read}}.",
  "soil-reading.decision.nothing-read":
    "{refused, plural, =0 {No nutrient could be read: the test holds none that is read into classes} one {No nutrient could be read: # value is refused, and the steps say why} other {No nutrient could be read: # values are refused, and the steps say why}}. What the test says of {what} stands in the steps.",
  "soil-reading.said.ph": "the pH",
  "soil-reading.said.salts": "the salts",
  "soil-reading.said.ph-and-salts": "the pH and the salts",
  "soil-reading.value":
    "{nutrient}: {class} at {content}{printed, select, yes { (the laboratory printed {reported, number} {reportedUnit})} other {}} by {extractant} ({guide}: {compared, number} {unit}, in the class {open, select, yes {from {low, number} up} other {{low, number} to {high, number}}}). {response}",
  "soil-reading.value-beside":
    "{nutrient} in {own, select, yes {your office’s own guide} other {another guide}} of the same extractant, {guide}: {class}. {response}",
  "soil-reading.sample":
    "Sampled on {day} {year}, {depth} deep, {days, plural, =0 {today} one {yesterday} other {# days ago}}.",
  "soil-reading.standing.memory":
    "Unverified: {guide} was written down from memory and not read in its publication. Your office chose it.",
  "soil-reading.standing.secondary":
    "Unverified: {guide} was read in a copy and not in its publication. Your office chose it.",
  "soil-reading.standing.office":
    "{guide} is your office’s own guide; its source is the office’s to answer for.",
  "soil-reading.shared-bound":
    "{nutrient} stands on a number that {guide} prints both as the top of {class} and as the start of {above}. It is read as {class}.",
  "soil-reading.trend":
    "{nutrient} by {extractant} over {tests} tests: {first}{classed, select, yes { ({class})} other {}} on {day} {year}, now {now} ({nowClass}).",
  "soil-reading.trend-left-out":
    "{values, plural, one {# older value is} other {# older values are}} not set beside these: another extractant, or another depth.",
  "soil-reading.ph-trend": "pH over {tests} tests: {first} on {day} {year}, now {now}.",
  "soil-reading.ph-other-medium":
    "pH {ph}. The target for peppers held here is for mineral soil and is not laid on this one.",
  "soil-reading.potassium-hinders":
    "Potassium reads high and {nutrient} short: much potassium keeps plants from taking it up. Give no potassium until it is in order.",
  "soil-reading.rate":
    "{guide} gives {none, select, yes {no {form}} other {{range, select, yes {{low} to {high}} other {{low}}} of {form}}} at this class, for {crop}. Feeding weighs it.",
  "soil-reading.rate-dolomitic":
    "{guide}: magnesium is low and lime is due, so the lime should be dolomitic ({crop}).",
  "soil-reading.rate-magnesium": "{guide}: magnesium is low and no lime is due: {low} of magnesium ({crop}).",
  "soil-reading.rate-gypsum": "{guide}: calcium is low and the pH needs no lime: {low} of gypsum ({crop}).",
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
  "soil-reading.cec.reported": "The laboratory reports an exchange capacity of {cec} cmol/kg.",
  "soil-reading.cec.unusual":
    "An exchange capacity of {cec} cmol/kg is {side, select, below {below} other {above}} the {low} to {high} usual for this texture. Check the texture, or whether lime in the soil was dissolved with it.",
  "soil-reading.saturation":
    "Beside a laboratory’s ranges (Massachusetts: calcium 50 to 80 %, magnesium 10 to 30 %, potassium 2 to 7 % of the exchange capacity) calcium is {ca, select, below {below} above {above} other {within}}, magnesium {mg, select, below {below} above {above} other {within}} and potassium {k, select, below {below} above {above} other {within}}.",
  "soil-reading.kept":
    "{nutrient} {content}: {sodium, select, yes {counted in the exchange capacity where one extractant gave all cations} other {no classes; feeding counts it as nitrogen that is there}}.",
  "soil-reading.organic-matter":
    "Organic matter {share}. It gives nitrogen as the soil warms: count it as a credit when feeding.",
  "soil-reading.refused.no-extractant":
    "{nutrient} {content} was not read: the report does not name the extractant, and the same soil reads differently by each.",
  "soil-reading.refused.no-guide":
    "{nutrient} {content} by {extractant} was not read: no guide held here or by your office covers it.",
  "soil-reading.refused.only-unverified":
    "{nutrient} {content} by {extractant} was not read: only unverified guides cover it ({guides}), and those are used only where your office chooses one.",
  "soil-reading.refused.guide-does-not-fit":
    "{nutrient} {content} by {extractant} was not read: the guide your office chose is for another extractant, and nothing is converted. {fits, plural, =0 {No other guide held here reads it.} one {This one fits: {guides}.} other {These fit: {guides}.}}",
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
  "soil-reading.ph-band.too-acid": "too acid",
  "soil-reading.ph-band.acid": "acid",
  "soil-reading.ph-band.fit": "in the target",
  "soil-reading.ph-band.high": "high",
  "soil-reading.ph-band.too-high": "too high",
  "soil-reading.range.ph": "pH",
  "soil-reading.chart.title": "{nutrient} by {extractant}, test by test",
  "soil-reading.chart.sampled": "Sampled",
  "soil-reading.chart.content": "Content",
  "soil-reading.chart.tests": "Tests",
  "soil-reading.chart.responds": "Peppers respond up to here",
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
  "soil-reading.stakes.short":
    "A nutrient that reads short can hold the crop back; feeding and lime say by when.",
  "soil-reading.stakes.nothing-read":
    "Whether a nutrient is short is not known, nor what that would cost: no nutrient of this test could be read.",
  "soil-reading.stakes.enough": "Nothing reads short.",
  "soil-reading.limit.guide":
    "{guide}: calibrated in {region}. Elsewhere the same number may mean something else.",
  "soil-reading.limit.unverified":
    "{guide}: this guide was not read in its publication and is unverified ({region}).",
  "soil-reading.limit.office":
    "{guide}: your office’s own guide for {region}, from {source}. It was not read here.",
  "soil-reading.limit.note": "{guide}: {note}",
  "soil-reading.limit.old": "The sample of {day} {year} is more than three years old.",
  "soil-reading.limit.depth": "The sample was taken {depth} deep; the guides are made for 15 to 20 cm.",
  "soil-reading.change.new-test": "A new test.",
  "soil-reading.change.extractant":
    "The extractant of each value that was not read: the laboratory knows it.",
  "soil-reading.change.depth": "A sample of the plough layer, 15 to 20 cm deep.",
  "soil-reading.change.fitting-guide":
    "A guide for the extractant that the laboratory used, chosen by your office.",
  "soil-reading.change.acidity":
    "The exchangeable acidity: it would turn the least exchange capacity into the real one.",
  "soil-reading.change.guide": "A guide of your own region, chosen by your office.",
  "soil-reading.missing.test": "A soil test of this bed, each value with its extractant.",
  "soil-reading.missing.test-moves": "Without one any nutrient may be anything from very low to very high.",
};
