/** What hotter says, in English. Keys start with the rule's id. */
export const hotter: Record<string, string> = {
  "hotter.not.no-plants": "No plants stand on this valve yet, or they have been cleared.",
  "hotter.not.nobody": "Nobody asked for more pungency on this valve.",
  "hotter.not.over": "The time for which somebody wanted these plants stressed is over.",
  "hotter.not.no-pungency":
    "This type has no pungency to speak of. Drought would cost fruit and add nothing.",

  "hotter.decision.try-half":
    "Try it on half of the block: water that half when {line} is missing. On the whole block it would cost about {loss} of the yield, and nobody can say how much hotter it gets.",
  "hotter.decision.not-by-default":
    "Better not: nobody has tested drought on this type. If you want to know, try half of the block, watered when {line} is missing; on the whole block it would cost about {loss} of the yield.",
  "hotter.decision.hold-off": "Not now: give these plants all the water they use.",
  "hotter.decision.stop": "Stop the drought today: water the whole block fully.",

  "hotter.because.not-set":
    "Nobody has noted fruit set on every planting of this valve. Before that drought costs flowers and the whole crop; stress is for fruit that hangs.",
  "hotter.because.cold": "The cold has checked these plants. Two troubles at once cost more than both apart.",
  "hotter.because.heat": "It is too hot for drought: {hot} on {day}, {limit} is the limit.",
  "hotter.because.signs":
    "In the last two weeks somebody noted wilting at dawn, end rot, sunscald or mites. Drought would feed it.",
  "hotter.because.wilting-at-dawn":
    "Plants wilt at dawn: the night did not fill them. That is beyond any stress that pays.",
  "hotter.because.end-rot": "Fruit has end rot: too little water carries too little calcium to the tip.",
  "hotter.because.sunscald": "Fruit is scalded: drooping leaves no longer shade it.",
  "hotter.because.mites": "There are mites: they thrive on dry plants.",
  "hotter.because.too-dry": "The sensor in the bed reads plainly drier than the line that was set.",

  "hotter.step.refill":
    "Open the valve today until what is missing is filled, in two or three waterings on dry soil, so that fruit does not crack and water does not run through.",
  "hotter.step.tell-stopped":
    "End the deficit in the planting's record, so that watering is reckoned for full use again.",
  "hotter.step.full-water": "Water as for any other planting until the reasons above are gone.",
  "hotter.step.when-over":
    "Then ask again: this answer changes by itself when fruit set is noted and the weather allows.",
  "hotter.step.species":
    "In Capsicum {species}, {studies, plural, one {# study} other {# studies}} of {cultivars, plural, one {# cultivar} other {# cultivars}} kept dry: {up} hotter, {down} less hot, {same} unchanged, {open} unclear{memory, plural, =0 {} other { (# of them from memory)}}.",
  "hotter.step.species-none": "No study of drought and pungency in Capsicum {species} was found.",
  "hotter.step.type":
    "Of this type ({type}) {cultivars, plural, one {# cultivar} other {# cultivars}} in {studies, plural, one {# study} other {# studies}}: {up} hotter, {down} less hot, {same} unchanged, {open} unclear{memory, plural, =0 {} other { (# of them from memory)}}.",
  "hotter.step.type-none": "No cultivar of this type ({type}) was tested. So the default is not to.",
  "hotter.step.price":
    "{share} of the water they could use, for {days} days, costs about {loss} of the yield where the whole block gets it; more where flowers still open.",
  "hotter.step.cost-fruit": "On the whole block that is about {kg} of fruit; on half of it, half of that.",
  "hotter.step.cost-money":
    "On the whole block that is about {kg} of fruit, worth {money} at the price you expect; on half of it, half of that.",
  "hotter.step.half":
    "Split the block: a shut-off on every second line, chosen by lot. The other half gets full water all the time. Keep a row between them out of the count.",
  "hotter.step.line":
    "Water the dry half when {line} is missing from its root zone (full use would be at {raw}), and then fill it. Without rain that is about every {days, plural, one {day} other {# days}}.",
  "hotter.step.tension":
    "In this bed that read {kPa} on the tension sensor: the middle of {n} pairs with the water content sensor.",
  "hotter.step.enter-share":
    "Nobody chose how dry. {share} is the mildest that is tabulated: where nobody chooses another, watering on this valve is reckoned for it from {from} on. If you go ahead, enter the dry half as a valve of its own first, so that the other half keeps full water.",
  "hotter.step.enter-share-begun":
    "Nobody chose how dry. {share} is the mildest that is tabulated, and the dry spell that began on {from} is held at it. Enter another share in the planting's record if you want another, or end the dry spell there for full water.",
  "hotter.step.held":
    "A dry spell is held on purpose on this valve since {from}: the advice on watering waits until {line} is missing instead of {raw}, by this same line, and for all the plants on the valve. For a half with full water, enter the dry half as a valve of its own.",
  "hotter.step.stop-rules":
    "Look every morning. Stop at once, and water fully, if plants wilt at dawn, fruit shows end rot or sunscald, mites appear under the leaves, or a day of {hot} is forecast. Note it, so that this advice changes.",
  "hotter.step.measure":
    "Pick fruit of one age and colour from the middle of both halves, dry it, and have a laboratory measure capsaicinoids of three samples from each. Weigh both harvests. Tongues tire and cannot decide it.",

  "hotter.type.padron-type": "Padron",
  "hotter.type.poblano-type": "poblano",
  "hotter.type.anaheim-type": "Anaheim",
  "hotter.type.jalapeno-type": "jalapeno",
  "hotter.type.serrano-type": "serrano",
  "hotter.type.cayenne-type": "cayenne",
  "hotter.type.thai-type": "Thai",
  "hotter.type.habanero-type": "habanero",
  "hotter.type.aji-type": "aji",
  "hotter.type.rocoto-type": "rocoto",
  "hotter.type.ornamental": "ornamental",

  "hotter.ends": "A stop sign, a hot spell or the last picking ends this.",
  "hotter.ends.signs": "It ends when the reasons are gone: two weeks without a new sign.",
  "hotter.stakes.stop": "Each dry day more costs fruit that cannot be mended.",
  "hotter.stakes.none": "Nothing is lost by not doing it.",

  "hotter.limit.no-percentage":
    "No number for the pungency is given: no coefficient is published, and cultivars went both ways.",
  "hotter.limit.cultivar":
    "A study speaks for its cultivar, its pots and its heat. Yours may do the opposite; only your own two halves tell.",
  "hotter.limit.part-season":
    "The yield factor is that of a whole season. Here the drought covers a part of it, so the loss is extrapolated; where flowers still open it is more.",
  "hotter.limit.memory": "What is said of this type rests on a study that was recalled and not read again.",
  "hotter.limit.containers":
    "In containers the line comes within hours. One missed round is the end of the experiment, and of the plants.",
  "hotter.limit.cover":
    "Under a cover it is hotter than the forecast says. Judge hot days by a thermometer inside.",
  "hotter.limit.no-forecast": "There is no forecast, so a hot spell to come is not seen.",
  "hotter.limit.cold": "The cold is reckoned from daily extremes and a textbook floor from memory.",
  "hotter.limit.heat":
    "Sources put the limit at 35 °C (95 °F) or near 38 °C (100 °F). The lower one is taken.",
  "hotter.limit.cause":
    "Wilting, end rot and mites have other causes too. Full water is right while you look.",

  "hotter.change.look": "A look at the plants at dawn, and a note of what you see.",
  "hotter.change.trial": "The laboratory's numbers from both halves of this block.",
  "hotter.change.soil":
    "The soil's own field capacity and wilting point: the line lies between {low} and {high} in soils of this texture.",
  "hotter.change.pair":
    "A tension sensor and a water content sensor side by side, with measured field capacity: after three pairs near the line it can be said in kPa.",

  "hotter.missing.weather": "Daily highest and lowest temperature of the last two weeks.",
  "hotter.missing.weather-moves":
    "Without them neither the heat nor the line can be judged: plants that use {thirsty} a day are held back with {less} less missing than at {cool}.",
  "hotter.missing.soil":
    "The soil texture of the bed, by feel or from the laboratory; or its field capacity and wilting point.",
  "hotter.missing.soil-moves":
    "In the soil that holds least the line is {low}; in the one that holds most, {high}.",

  "hotter.chart.line-title": "How far the dry half may dry",
  "hotter.chart.day": "day",
  "hotter.chart.mm": "depth of water missing",
  "hotter.chart.line": "water the dry half here",
  "hotter.chart.raw": "water the other half here",
  "hotter.chart.taw": "all that the root zone can give",
  "hotter.chart.yield-title": "Yield left by the share of water",
  "hotter.chart.share": "water had, as a share of water wanted",
  "hotter.chart.yield": "yield",
  "hotter.chart.asked": "for the days asked (extrapolated)",
  "hotter.chart.season": "all season",
  "hotter.chart.chosen": "the share asked",
};
