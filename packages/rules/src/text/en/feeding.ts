/** What feeding says, in English. Keys start with the rule's id. */
export const feeding: Record<string, string> = {
  "feeding.ended": "The planting has been cleared.",
  "feeding.season-over":
    "The season that the uptake figures cover is over; nothing given now would reach the fruit.",
  "feeding.decision.feed-this-week":
    "This week give {kg} of {material} on this bed{weeks, plural, =1 {} other {, for # weeks at once}} ({n} nitrogen).",
  "feeding.decision.none-this-week":
    "Nothing this week: what was given still lasts. The next dose of {material} is due {day}.",
  "feeding.decision.none-needed": "No nitrogen is needed: the credits cover what the crop takes up.",
  "feeding.decision.enough-given": "Give no more: what was given covers the rest of the season.",
  "feeding.decision.choose-material":
    "Choose a material: {n} nitrogen is due this week, {season} over the rest of the season.",
  "feeding.decision.not-yet": "Not before setting out. The first dose of {material} is due {day}.",
  "feeding.decision.buy": "The shed has none of the {material} left. {n} nitrogen is due this week.",
  "feeding.step.unanswered":
    "We advised a feeding that nobody has answered. This advice takes it as given, so that nothing is given twice. Tell us if it was not.",
  "feeding.step.need":
    "The season: for the yield goal the crop takes up {low} to {high} nitrogen, and {season} is to be supplied. {given} has been given, {left} is left to give.",
  "feeding.step.need-credited":
    "The season: for the yield goal the crop takes up {low} to {high} nitrogen; after credits {season} is to be supplied. {given} has been given, {left} is left to give.",
  "feeding.step.missed": "{missed} fell due earlier and was not given. It is not made up for now.",
  "feeding.step.ceiling":
    "Held at {most}: above that no trial here found more yield, only more nitrate lost.",
  "feeding.step.dose-bed":
    "Give {bed} of {material} on this bed{weeks, plural, =1 {} other {; it serves # weeks, and nothing is given in between}}. That is {plant}, or {row}, or {area} of cropped land.",
  "feeding.step.dose-container":
    "Give {each} of {material} to each container, {bed} in all{weeks, plural, =1 {} other {; it serves # weeks, and nothing is given in between}} ({area} of cropped land).",
  "feeding.step.dry":
    "Or, as one dry dressing for the next {weeks} weeks: {bed} on this bed, and nothing in between.",
  "feeding.step.next":
    "The next dose of {material} is due {day}: {bed} on this bed{weeks, plural, =1 {} other {, for # weeks at once}}.",
  "feeding.step.season": "Until {until} the bed takes {bed} of {material} in all ({area} of cropped land).",
  "feeding.step.stock-unknown": "How much is in the shed is not known: weigh it before you rely on it.",
  "feeding.step.stock-left": "After the season {left} is left in the shed.",
  "feeding.step.shortfall":
    "The shed holds {have} for this bed and runs short by {short}. Buy that, or choose a second material for the rest.",
  "feeding.step.brings": "That brings {n} nitrogen, {p2o5} P2O5 and {k2o} K2O over the rest of the season.",
  "feeding.step.over-n": "It brings {over} more nitrogen than is needed. Choose a material with less.",
  "feeding.step.over-p2o5":
    "It brings {over} more P2O5 than the soil test asks for. Choose a material with less phosphate where you can.",
  "feeding.step.over-k2o":
    "It brings {over} more K2O than the soil test asks for. Too much potassium keeps calcium out of the fruit.",
  "feeding.step.short": "It leaves {short} of {nutrient} to come from another material.",
  "feeding.step.slow":
    "The nitrogen of {material} comes free only as it rots, over weeks to years. Work it in early, and do not expect this week's dose this week.",
  "feeding.step.choose":
    "Choose the material to feed from: then the amounts for bed, plant and container follow.",
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
  "feeding.ends": "It ends with the week, with a feeding or heavy rain, or when buds or fruit set are seen.",
  "feeding.stakes":
    "This week's dose is {share} of the season's nitrogen. In one trial peppers without any lost {loss} of the yield; one week missed costs little, each further one more.",
  "feeding.stakes.none": "Nothing falls due this week, so nothing is lost by waiting.",
  "feeding.stakes.mineral":
    "The soil test asks for potash or phosphate. What one week without it costs was never measured; it is little.",
  "feeding.limit.basis":
    "Rates are for cropped land, alleys included, at this bed's spacing. On the bed top alone they look larger.",
  "feeding.limit.climate":
    "Uptake figures come from long, warm seasons. In a cool, short one the yield goal must be honest.",
  "feeding.limit.containers":
    "Potting media hold little and drain. Soil tests and credits of mineral soil do not carry over.",
  "feeding.limit.slow":
    "All of the material's nitrogen is counted; in the first year only part of it comes free.",
  "feeding.limit.species": "The figures are of sweet pepper and chile of Capsicum annuum.",
  "feeding.limit.may-respond":
    "Where guides differ or leave it open, what the fruit removes is put back and no more.",
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
  "feeding.case.done": "If the feeding of {day} was given",
  "feeding.case.not-done": "If the feeding of {day} was not given",
  "feeding.missing.goal": "A yield goal for this planting: what the bed gave in a good year.",
  "feeding.missing.goal-moves": "At {lowGoal} the crop takes up {low} nitrogen, at {highGoal} up to {high}.",
  "feeding.missing.set-out": "The day the plants were or will be set out.",
  "feeding.missing.set-out-moves": "Without it the season's amount stands, but no week of it can be placed.",
  "feeding.chart.title": "Nitrogen and potash to give, by week",
  "feeding.chart.week": "week from",
  "feeding.chart.rate": "per hectare of cropped land",
  "feeding.chart.n": "nitrogen",
  "feeding.chart.k2o": "K2O",
  "feeding.chart.cumulative": "nitrogen given by then",
};
