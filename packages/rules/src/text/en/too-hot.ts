/** What too-hot says, in English. Keys start with the rule's id. */
export const tooHot: Record<string, string> = {
  "too-hot.not.ended": "This planting was cleared.",
  "too-hot.not.indoors": "These plants do not stand in the bed yet.",
  "too-hot.not.no-flowers": "There are no buds, flowers or fruit on these plants yet for heat to take.",
  "too-hot.not.cool":
    "It was not too hot and is not forecast to be: at most {maxDay} by day and {maxNight} by night. Any hour above {day} by day, or half a night above {night}, would be.",
  "too-hot.not.cool-so-far":
    "It was not too hot: at most {maxDay} by day and {maxNight} by night. Any hour above {day} by day, or half a night above {night}, would be. No forecast says what comes.",

  "too-hot.decision.end-rot": "End rot on the fruit: keep the water even. It is rarely cured from a bottle.",
  "too-hot.decision.sunscald": "The sun has scalded fruit: shade what hangs bare, and keep every leaf.",
  "too-hot.decision.flowers-heat":
    "Heat can have dropped these flowers: {hours} by day above {limit}, or nights mostly above {nightLimit}. New ones set when it cools.",
  "too-hot.decision.flowers-warm":
    "Flowers drop though no day passed {limit}: warm for some, not for others. Do not blame heat alone.",
  "too-hot.decision.flowers-cold":
    "Flowers drop after cold nights and not after heat: it has not been too hot here.",
  "too-hot.decision.flowers-other":
    "Flowers drop, and no temperature known here explains it. Look for other causes first.",
  "too-hot.decision.hot-ahead":
    "Heat is coming, from {day} on, up to {max}: shade, vent and water ahead of it.",
  "too-hot.decision.wilting":
    "Wilting at dawn is not heat: roots are dry, drowned or sick. Dig beside a plant today.",
  "too-hot.decision.hot-past":
    "It was too hot for flowers: {hours} by day above {limit} in two weeks, or nights mostly above {nightLimit}. None is forecast now.",

  "too-hot.step.past":
    "Gone by: {hours} by day above {limit} ({degreeHours}), {nightHours} by night above {nightLimit} ({nightDegreeHours}).",
  "too-hot.step.ahead":
    "To come: {hours} by day above {limit} ({degreeHours}), {nightHours} by night above {nightLimit} ({nightDegreeHours}), up to {max}.",
  "too-hot.step.morning":
    "Water early in the morning before the first hot day, as deep as the watering plan says, and not more because it is hot.",
  "too-hot.step.shade":
    "Hang light shade cloth (about 30 %) over bare fruit from late morning to late afternoon, clear of the leaves. Take it off when the heat is over.",
  "too-hot.step.leaves": "Cut and tie nothing that bares fruit. Leaves are its shade.",
  "too-hot.step.pick-early": "Pick what is ripe or big enough before the heat, in the cool of the morning.",
  "too-hot.step.vent":
    "Open the cover on both sides before the sun is on it and leave it open; hang a thermometer in the shade inside it.",
  "too-hot.step.scald-pick":
    "Pick scalded fruit: it does not mend, and rots. What is firm can be used at once.",
  "too-hot.step.dawn-wilt":
    "Dig beside a plant that hangs at dawn: dry soil wants water; wet soil, brown roots or a dark stem base want a closer look before any water.",
  "too-hot.step.count":
    "Count open flowers and young fruit on ten plants now and in a week: that tells set better than a thermometer.",
  "too-hot.step.water-unknown": "Write each watering down: whether it came evenly is not known here.",
  "too-hot.step.water-even": "Go on as you water: the longest pause was {gap}, and the amounts were alike.",
  "too-hot.step.water-gap":
    "Water evenly: the longest pause was {gap}, and {allowed} is even here. Smaller amounts, more often; never drench after a drought.",
  "too-hot.step.water-swing":
    "Water evenly: the largest watering was {times} times the smallest. Give about the same each time.",
  "too-hot.step.rot-pick": "Pick fruit with end rot off: it does not mend and costs the plant water.",
  "too-hot.step.hold-feed":
    "Give no ammonium and no more potash than the feeding plan asks for: both keep calcium out of fruit.",
  "too-hot.step.calcium-short":
    "The soil test reads short of calcium ({ca}): see to lime or gypsum before the next planting. This year's fruit is helped by water first.",
  "too-hot.step.calcium-enough":
    "The soil holds enough calcium ({ca}): it does not reach the fruit when water comes unevenly. Do not blame the soil.",
  "too-hot.step.calcium-unread":
    "The soil's calcium ({ca}) cannot be read: no guide held here fits how it was extracted.",
  "too-hot.step.calcium-untested":
    "The soil's calcium is not known. Test it once, after the season; most end rot comes from water.",
  "too-hot.step.sprays":
    "Calcium sprays: one field trial found less end rot by them, practice finds little. Try them on half a bed at most, by the label, never in the heat of the day.",
  "too-hot.step.flowers-wait":
    "Leave the plants alone: no extra feed, no tips taken out. Flowers that fell are gone, and new ones open within weeks.",
  "too-hot.step.cold-nights":
    "Do not blame heat alone: of these nights {nights} lay mostly at or below {limit} ({hours} so cold in all), and pollen suffers there too.",
  "too-hot.step.flowers-unknown":
    "Tell us the site's minima and maxima: without them nobody knows whether it was heat or cold.",

  "too-hot.ends": "A new forecast, cooler days, or a new note on flowers or fruit ends this.",
  "too-hot.stakes.ahead": "Fruit that scalds and flowers that would set in the hot days are at stake.",
  "too-hot.stakes.fruit": "What has rotted or scalded is gone; the young fruit beside it is at stake.",
  "too-hot.stakes.past": "What fell has fallen. A look and a count lose nothing.",

  "too-hot.missing.inside":
    "Temperatures where the plants stand, from a thermometer in the shade under the cover: nothing outside tells how hot it gets.",
  "too-hot.missing.outside": "Daily minima and maxima of the site for the last two weeks, and a forecast.",
  "too-hot.missing.move": "The answer could move from nothing to do to shade, vent and water ahead.",

  "too-hot.limit.sources":
    "Sources disagree on what is too hot, by day from {dayLow} to {dayHigh}, by night from {nightLow} to {nightHigh}; the working shows each. Cultivars differ more.",
  "too-hot.limit.dose":
    "No source says how many hours above a limit cost how many flowers. The hours are counted, and the loss is not.",
  "too-hot.limit.cover":
    "The air under the cover was not measured. The open air stands in: it was at least so hot inside.",
  "too-hot.limit.blind": "No temperature is known: this rests on what was seen alone.",
  "too-hot.limit.air":
    "This is the air's temperature at the station. Fruit in the sun is much hotter, flowers under leaves a little cooler.",
  "too-hot.limit.no-vpd": "The air's moisture is not known here, so its dryness is not said.",
  "too-hot.limit.vpd":
    "How dry the air was is shown and decides nothing: no limit for peppers was found published.",

  "too-hot.change.measure": "A thermometer at the plants, shaded, read by the hour.",
  "too-hot.change.count": "Counts of flowers and set fruit before and after heat, on the same plants.",
  "too-hot.change.water": "What was watered, and when.",

  "too-hot.chart.title": "Heat at the plants, hour by hour",
  "too-hot.chart.hour": "Hour, the site's clock",
  "too-hot.chart.temperature": "Temperature",
  "too-hot.chart.measured": "Measured at the plants",
  "too-hot.chart.reconstructed": "Reckoned from the day's extremes",
  "too-hot.chart.forecast": "Forecast",
  "too-hot.chart.day-limit": "Limit by day",
  "too-hot.chart.night-limit": "Limit by night",
  "too-hot.chart.vpd-title": "How dry the air is, hour by hour",
  "too-hot.chart.vpd": "Vapour pressure deficit",
};
