/** What feeding says, in English. Keys start with the rule's id. */
export const feeding: Record<string, string> = {
  "feeding.ended": "The planting has been cleared.",
  "feeding.containers":
    "What containers get is said by the rule for containers: they are fed through their water.",
  "feeding.season-over":
    "The season that the uptake figures cover is over; nothing given now would reach the fruit.",
  "feeding.decision.feed-this-week":
    "This week give {kg} of {material}{more, plural, =0 {} =1 { and one more material} other { and # more materials}} on this bed{weeks, plural, =1 {} other {, for # weeks at once}} ({n} nitrogen).{short, select, none {} other { {missing} of {nutrient} cannot be covered.}}",
  "feeding.decision.none-this-week":
    "Nothing this week: what was given still lasts. The next dose of {material} is due {day}.{short, select, none {} other { {missing} of {nutrient} cannot be covered.}}",
  "feeding.decision.none-needed": "No nitrogen is needed: the credits cover what the crop takes up.",
  "feeding.decision.enough-given": "Give no more: what was given covers the rest of the season.",
  "feeding.decision.choose-material":
    "Choose a material: {due, select, none {} other {{n} nitrogen is due this week, }}{season}{due, select, none { nitrogen} other {}} over the rest of the season.",
  "feeding.decision.not-yet":
    "Not before setting out. The first dose of {material} is due {day}.{short, select, none {} other { {missing} of {nutrient} cannot be covered.}}",
  "feeding.decision.after-rain":
    "Wait: {rain} of rain is forecast and would wash it out. Give the {material} on {day}.{short, select, none {} other { {missing} of {nutrient} cannot be covered.}}",
  "feeding.decision.hold-back":
    "No feed until new leaves come: the record of cold says to hold back. What falls due this week is not given.",
  "feeding.decision.paused": "No nitrogen before {until}: the last nitrate test found enough in the soil.",
  "feeding.decision.buy":
    "The shed has none of the {material} left.{due, select, none {} other { {n} nitrogen is due this week.}}",
  "feeding.decision.buy-any":
    "Nothing in the shed is left for this planting.{due, select, none {} other { {n} nitrogen is due this week.}}",
  "feeding.step.hold-back":
    "Hold back feed until new leaves come, as the record of cold says (custom of the trade){due, select, none {} other {: of the {n} nitrogen that falls due this week give none}}. Note the first new leaf; where there are some already, note that now.",
  "feeding.step.unanswered":
    "We advised a feeding that nobody has answered. This advice takes it as given, so that nothing is given twice. Tell us if it was not.",
  "feeding.step.unanswered-ash":
    "We advised ash or lime for {ash} that nobody has answered. This advice takes it as spread, so that no ammonium or urea follows it within a month. Tell us if it was not.",
  "feeding.step.need":
    "The season: for the yield goal the crop takes up {low} to {high} nitrogen, and {season} is to be supplied. {given} has been given, {left} is left to give.",
  "feeding.step.need-credited":
    "The season: for the yield goal the crop takes up {low} to {high} nitrogen; less credits of {creditLow} to {creditHigh} ({creditMid} counted) {season} is to be supplied, within {seasonLow} to {seasonHigh}. {given} has been given, {left} is left to give.",
  "feeding.step.need-guide":
    "The season: {guide} gives {low} to {high} nitrogen, and {season} is to be supplied. {given} has been given, {left} is left to give.",
  "feeding.step.need-guide-credited":
    "The season: {guide} gives {low} to {high} nitrogen; less credits of {creditLow} to {creditHigh} ({creditMid} counted) {season} is to be supplied, within {seasonLow} to {seasonHigh}. {given} has been given, {left} is left to give.",
  "feeding.step.secondary":
    "A guide that fits the soil test asks for {rate} of {nutrient} over the season. It is given once, and more of it can do harm.",
  "feeding.step.missed": "{missed} fell due earlier and was not given. It is not made up for now.",
  "feeding.step.ceiling":
    "Held at {most}: above that no trial here found more yield, only more nitrate lost.",
  "feeding.step.dose-bed":
    "Give {bed} of {material} on this bed{weeks, plural, =1 {} other {; it serves # weeks, and nothing is given in between}}. That is {plant}, or {row}, or {square}, or {area} of cropped land.",
  "feeding.step.dose-bed-row":
    "Give {bed} of {material} on this bed{weeks, plural, =1 {} other {; it serves # weeks, and nothing is given in between}}. That is {row}, or {square}, or {area} of cropped land.",
  "feeding.step.scoop":
    "By volume that is {volume} of {material}, filled loosely. Weigh one measure of your own bag before you trust it.",
  "feeding.step.wait":
    "{rain} of rain is forecast in the three days from the day it was due, {excess} more than the soil can hold. That can take {low} to {high} nitrate nitrogen out. Give the dose on {day}.",
  "feeding.step.split":
    "{rain} of rain is forecast, {excess} more than the soil can hold, and the forecast sees no end of it. Give half now and half after it; all at once {low} to {high} nitrate nitrogen could be lost.",
  "feeding.step.log-each":
    "When it is done, every material of the dose is filled in beforehand: put in what you really gave.",
  "feeding.step.dry":
    "Or, as one dry dressing for the next {weeks} weeks: {bed} of {material} on this bed, and nothing in between.",
  "feeding.step.next":
    "The next dose of {material} is due {day}: {bed} on this bed{weeks, plural, =1 {} other {, for # weeks at once}}.",
  "feeding.step.season": "Until {until} the bed takes {bed} of {material} in all ({area} of cropped land).",
  "feeding.step.stock-unknown":
    "How much {material} is in the shed is not known: weigh it before you rely on it.",
  "feeding.step.stock-left": "After that {left} of {material} is left in the shed.",
  "feeding.step.to-buy": "Of the {material} the shed holds {have} for this bed. Buy {buy} for the rest.",
  "feeding.step.shortfall":
    "The shed holds {have} for this bed and runs short by {short}. Buy that, or choose a second material for the rest.",
  "feeding.step.brings": "That brings {n} nitrogen, {p2o5} P2O5 and {k2o} K2O over the rest of the season.",
  "feeding.step.over-n":
    "It brings {over} more nitrogen than is counted on, still within what the crop can use.",
  "feeding.step.over-p2o5":
    "It brings {over} more P2O5 than the soil test asks for. Choose a material with less phosphate where you can.",
  "feeding.step.over-k2o":
    "It brings {over} more K2O than the soil test asks for. Too much potassium keeps calcium out of the fruit.",
  "feeding.step.short":
    "{short} of {nutrient} stays uncovered: nothing that may be used here brings it within the limits.",
  "feeding.step.left-out": "{material} may not be used here: {why}.",
  "feeding.left-out.another-chosen": "another material was chosen",
  "feeding.left-out.not-certified": "it is not proven allowed on organic ground",
  "feeding.left-out.proof-expired": "the proof of its use on organic ground has run out",
  "feeding.left-out.no-proof": "nothing says until when its use on certified ground is proven",
  "feeding.left-out.not-soluble": "it does not dissolve and would block the drip line",
  "feeding.left-out.raw-manure":
    "raw manure is spread before the plants; the manure rule says when it may still be",
  "feeding.left-out.liming-material": "it limes, and soil pH decides about it",
  "feeding.left-out.no-food": "it holds nothing that is asked for here",
  "feeding.left-out.soil-ph": "it sours the soil, and soil pH decides about it",
  "feeding.left-out.ash-with-ammonium":
    "it holds ammonium or urea, and ash or lime was spread less than a month ago, or was advised and never answered",
  "feeding.step.tank":
    "Tank {tank}: dissolve {grams} of {material} in {litres} of stock{fills, plural, =1 {} other {, # fills of the tank}}.",
  "feeding.step.next-turn":
    "When that is through, rinse tanks and lines with clear water, then feed the following; it must not meet the first in a tank.",
  "feeding.step.tank-weaker":
    "At 1:{set} it would be {times} times what dissolves at {tank}. Make the stock weaker and set the injector to 1:{ratio}.",
  "feeding.step.tank-too-cold":
    "No solubility of {material} is published for a tank as cold as {tank}. Keep the stock at {coldest} or warmer, or give it by hand.",
  "feeding.step.tank-cannot-dissolve":
    "{material} does not dissolve in the water of a week at {tank}. Give it by hand, or choose another material.",
  "feeding.step.injector-season":
    "At 1:{ratio} (1 part of stock in {ratio} parts of final solution) the {water} of water a week then holds {n} nitrogen and {k2o} K2O.",
  "feeding.step.injector-pace":
    "At 1:{ratio} (1 part of stock in {ratio} parts of final solution) the {water} of water a week, at the pace so far, then holds {n} nitrogen and {k2o} K2O.",
  "feeding.step.tank-grams": "Tank {tank}: {grams} of {material}.",
  "feeding.step.tank-no-water":
    "How much water this bed gets in a week is not known, so no strength of the stock, no ppm and no conductivity can be said. Put down the waterings of its valve: from two weeks after setting out on they tell it.",
  "feeding.step.ec-feed":
    "Above that of clear water, a conductivity meter should read {low} to {high}. Measure the clear water and subtract it; the label comes first.",
  "feeding.step.ec":
    "A conductivity meter should read {low} to {high}, of which {water} is the clear water. The label comes first.",
  "feeding.step.hard-water":
    "The water of the test of {day} is hard: with concentrate in it carbonate scale clogs the drippers. Ask about acid before you feed through them.",
  "feeding.step.nitrate-enough":
    "The nitrate test of {day} found {found} in the soil; from {enough} on peppers need no more. Nitrogen rests until {until}. Test again then.",
  "feeding.step.nitrate-short":
    "The nitrate test of {day} found {found} in the soil; {enough} is enough. By that rule {sidedress} nitrogen would be side-dressed; it is shown beside the plan and does not change it.",
  "feeding.step.retest":
    "About {day} it rained {excess} more than the soil holds: {low} to {high} nitrate nitrogen may be gone. Test nitrate before you make up for it.",
  "feeding.step.tests-disagree":
    "Tests of the same day disagree about {nutrient}. Nothing is moved: sample again.",
  "feeding.step.plant-moves-low":
    "{what} of {day}: {nutrient} is low ({value}; {low} to {high} is enough, from memory). The rest of the season is raised by {share} (custom of the trade), never above its ceiling.",
  "feeding.step.plant-moves-enough":
    "{what} of {day}: {nutrient} is enough ({value}; {low} to {high}, from memory). The rest of the season stays as it is.",
  "feeding.step.plant-moves-high":
    "{what} of {day}: {nutrient} is high ({value}; {low} to {high} is enough, from memory). The rest of the season is lowered by {share} (custom of the trade).",
  "feeding.step.plant-shown-low":
    "{what} of {day}: {nutrient} is low ({value}; {low} to {high} is enough, from memory). It moves no dose: ask why before you add it.",
  "feeding.step.plant-shown-high":
    "{what} of {day}: {nutrient} is high ({value}; {low} to {high} is enough, from memory). It moves no dose.",
  "feeding.tested.petiole-sap": "Petiole sap",
  "feeding.tested.leaf": "Leaves",
  "feeding.plant-nutrient.NO3-N": "nitrate nitrogen",
  "feeding.plant-nutrient.N": "nitrogen",
  "feeding.plant-nutrient.P": "phosphorus",
  "feeding.plant-nutrient.K": "potassium",
  "feeding.plant-nutrient.Ca": "calcium",
  "feeding.plant-nutrient.Mg": "magnesium",
  "feeding.plant-nutrient.S": "sulfur",
  "feeding.plant-nutrient.Zn": "zinc",
  "feeding.plant-nutrient.B": "boron",
  "feeding.plant-nutrient.Mn": "manganese",
  "feeding.plant-nutrient.Fe": "iron",
  "feeding.plant-nutrient.Cu": "copper",
  "feeding.step.slow":
    "The nitrogen of {material} comes free only as it rots, over weeks to years. Work it in early, and do not expect this week's dose this week.",
  "feeding.step.choose":
    "Put a material in the shed that may be used here: then the amounts for bed and plant follow.",
  "feeding.step.fits-nothing": "The material chosen holds nothing that is still needed here. Choose another.",
  "feeding.step.mineral-unknown": "{nutrient}: none is advised, because {why}.",
  "feeding.step.mineral-responds":
    "{nutrient}: the soil test says the crop answers. {season} over the season, {left} left to give.",
  "feeding.step.mineral-responds-elsewhere":
    "{nutrient}: the soil test says the crop answers. {season} over the season, {left} left to give; {short} of that must come from another material.",
  "feeding.step.mineral-may-respond":
    "{nutrient}: the crop may answer. What the fruit carries off is put back: {season} over the season, {left} left to give.",
  "feeding.step.mineral-may-respond-elsewhere":
    "{nutrient}: the crop may answer. What the fruit carries off is put back: {season} over the season, {left} left to give; {short} of that must come from another material.",
  "feeding.step.mineral-guide": "{nutrient}: {guide} gives {season} over the season, {left} left to give.",
  "feeding.step.mineral-guide-elsewhere":
    "{nutrient}: {guide} gives {season} over the season, {left} left to give; {short} of that must come from another material.",
  "feeding.step.mineral-guide-unverified":
    "{nutrient}: {guide}, which nobody here has read in its publication, gives {season} over the season, {left} left to give.",
  "feeding.step.mineral-guide-unverified-elsewhere":
    "{nutrient}: {guide}, which nobody here has read in its publication, gives {season} over the season, {left} left to give; {short} of that must come from another material.",
  "feeding.step.mineral-unlikely": "{nutrient}: give none. The soil test says the crop will hardly answer.",
  "feeding.step.ratio-before":
    "K2O this week {k2o}. From visible buds, about {buds}, potassium rises against nitrogen (custom of the trade).",
  "feeding.step.ratio-after":
    "K2O this week {k2o}. Since visible buds potassium rises against nitrogen, now {ratio} times as steeply as before them (custom of the trade). Too much of it keeps calcium out of the fruit.",
  "feeding.because.no-test": "no soil test of mineral soil holds it",
  "feeding.because.no-extractant": "the soil test does not name its extractant",
  "feeding.because.no-guide": "no verified guide reads that extractant",
  "feeding.because.needs-cec": "the guide needs the exchange capacity",
  "feeding.because.needs-ph": "the guide needs the pH",
  "feeding.nutrient.n": "nitrogen",
  "feeding.nutrient.p2o5": "P2O5",
  "feeding.nutrient.k2o": "K2O",
  "feeding.nutrient.ca": "calcium",
  "feeding.nutrient.mg": "magnesium",
  "feeding.nutrient.s": "sulfur",
  "feeding.nutrient.b": "boron",
  "feeding.ends": "It ends with the week, with a feeding or heavy rain, or when buds or fruit set are seen.",
  "feeding.stakes":
    "What falls due this week is {share} of the season's nitrogen{more, select, some {; the dose serves later weeks too and is {dosed} of it} other {}}. In one trial peppers without any lost {loss} of the yield; one week missed costs little, each further one more.",
  "feeding.stakes.none": "Nothing falls due this week, so nothing is lost by waiting.",
  "feeding.stakes.rain": "Waiting for the rain to pass loses nothing; giving it before would.",
  "feeding.stakes.cold":
    "Plants that cold may have checked are given no feed until new leaves come (custom of the trade). What the week held back costs was never measured.",
  "feeding.stakes.mineral":
    "The soil test asks for potash or phosphate. What one week without it costs was never measured; it is little.",
  "feeding.limit.basis":
    "Rates are for cropped land, alleys included, at this bed's spacing. On the bed top alone they look larger.",
  "feeding.limit.hold-back":
    "That feed is held back after cold is common practice, and so is the cold that calls for it. No trial sets them.",
  "feeding.limit.climate":
    "Uptake figures come from long, warm seasons. In a cool, short one the yield goal must be honest.",
  "feeding.limit.slow":
    "Of manure and compost what comes free this year is counted, of meals all of it; when it comes free, warmth and water decide.",
  "feeding.limit.old-test":
    "The soil test of {day} {year} is more than three years old. P2O5 and K2O still go by it; calcium, magnesium and boron are not given by it. Sample again.",
  "feeding.limit.ash-apart-perhaps":
    "Ash or lime was advised for {on}, and nobody said whether it was spread. It is taken as spread: what holds ammonium or urea may follow from {from}, because sooner its nitrogen goes off as ammonia.",
  "feeding.limit.ash-apart":
    "Ash or lime was spread on {on}. What holds ammonium or urea may follow from {from}: sooner its nitrogen goes off as ammonia.",
  "feeding.limit.species": "The figures are of sweet pepper and chile of Capsicum annuum.",
  "feeding.limit.strip":
    "Salt is judged on the strip that is treated, taken as 15 cm a row for a band and 30 cm where water carries it (custom of the trade).",
  "feeding.limit.guide-memory":
    "The rates of that guide are from memory and unverified. They are used because your office chose them.",
  "feeding.limit.organic-matter":
    "What organic matter releases is known here from memory only (10 to 40 lb of nitrogen an acre for each percent). The plan counts the lowest of it.",
  "feeding.limit.manure":
    "What comes free of manure and compost is a range; its middle is counted. The share of compost is from memory and unverified.",
  "feeding.limit.plant-tests":
    "The ranges for leaves and sap are from memory and unverified. Arizona found sap tests of chile inconsistent.",
  "feeding.limit.forecast-old": "The forecast is older than a day: no dose was moved by it.",
  "feeding.limit.may-respond":
    "Where guides differ or leave it open, what the fruit removes is put back and no more.",
  "feeding.change.hold-back":
    "A look at the growing points, notes of new leaves, and days without more cold: what the record of cold says goes by them.",
  "feeding.change.goal": "The yield goal: it moves the need in proportion ({low} to {high} now).",
  "feeding.change.leaching":
    "Heavy rain or over-watering: 25 mm too much can take 20 to 35 kg/ha of nitrate out. Test again after it.",
  "feeding.change.soil-test": "A soil test with extractants, for P2O5 and K2O.",
  "feeding.change.water-mm": "How much water you give: each 100 mm of yours brings {n} nitrogen.",
  "feeding.change.water-nitrate":
    "The nitrate in your irrigation water: above 3 to 5 mg/L it is worth counting.",
  "feeding.change.buds": "The day buds are visible: it is taken as {day}.",
  "feeding.change.organic-matter":
    "A credit for organic matter: soil may give up to 1 kg/ha of nitrogen a day in warm weeks.",
  "feeding.change.plant-test":
    "A test of leaves or petiole sap at a named stage: it moves the rest of the season by a fifth.",
  "feeding.case.done": "If the feeding of {day} was given",
  "feeding.case.not-done": "If the feeding of {day} was not given",
  "feeding.case.ash-spread": "If the ash or lime advised for {ash} was spread",
  "feeding.case.ash-not-spread": "If the ash or lime advised for {ash} was not spread",
  "feeding.case.done-ash-spread":
    "If the feeding of {day} was given and the ash or lime advised for {ash} was spread",
  "feeding.case.done-ash-not-spread":
    "If the feeding of {day} was given and the ash or lime advised for {ash} was not spread",
  "feeding.case.not-done-ash-spread":
    "If the feeding of {day} was not given and the ash or lime advised for {ash} was spread",
  "feeding.case.not-done-ash-not-spread":
    "If neither the feeding of {day} was given nor the ash or lime advised for {ash} spread",
  "feeding.missing.goal": "A yield goal for this planting: what the bed gave in a good year.",
  "feeding.missing.goal-moves": "At {lowGoal} the crop takes up {low} nitrogen, at {highGoal} up to {high}.",
  "feeding.missing.set-out": "The day the plants were or will be set out.",
  "feeding.missing.set-out-moves": "Without it the season's amount stands, but no week of it can be placed.",
  "feeding.chart.title": "Nitrogen and potash to give, by week",
  "feeding.chart.week": "week from",
  "feeding.chart.rate": "per hectare of cropped land",
  "feeding.chart.n": "nitrogen",
  "feeding.chart.k2o": "K2O",
  "feeding.chart.supply-title": "What the crop takes up and what it is given, over the season",
  "feeding.chart.day": "day",
  "feeding.chart.uptake": "nitrogen taken up",
  "feeding.chart.supply": "nitrogen given and planned",
  "feeding.stage.early": "until buds",
  "feeding.stage.mid": "buds to set",
  "feeding.stage.fruit-set": "fruit",
  "feeding.table.title": "The season that is left, week by week",
  "feeding.table.week": "week from",
  "feeding.table.stage": "stage",
  "feeding.table.n": "nitrogen",
  "feeding.table.p2o5": "P2O5",
  "feeding.table.k2o": "K2O",
  "feeding.table.material": "{material}, on this bed",
  "feeding.table.material-tank": "{material}, tank {tank}",
  "feeding.table.ppm": "nitrogen in the water",
  "feeding.table.ec-feed-low": "above clear water, from",
  "feeding.table.ec-feed-high": "to",
  "feeding.table.ec-low": "meter reads from",
  "feeding.table.ec-high": "to",
};
