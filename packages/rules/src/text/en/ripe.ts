/** What ripe says, in English. Keys start with the rule's id. */
export const ripe: Record<string, string> = {
  "ripe.not.ended": "This planting has ended.",
  "ripe.not.unsown": "These seeds are not sown yet.",
  "ripe.not.overwintered":
    "These plants were kept over winter, so their first fruit is not reckoned; note it when it is ready.",
  "ripe.not.too-early": "These plants are still inside; their fruit is about {likely}.",

  "ripe.at.green": "mature green",
  "ripe.at.colour": "in colour",

  "ripe.decision.frost":
    "Pick all fruit of full size by the evening of {evening}: frost is forecast for that night.",
  "ripe.decision.frost-closed":
    "Do not pick before {from}: a spray's label forbids it. Frost is forecast for the night after {evening}, so cover the plants.",
  "ripe.decision.frost-shut":
    "Stay out until {from}: a spray's label forbids going in. Frost is forecast for the night after {evening}, and what it takes is lost.",
  "ripe.decision.closed": "Do not pick before {from}: a spray's label forbids it.",
  "ripe.decision.pick-now": "Pick now, {stage}.",
  "ripe.decision.pick-on": "Pick next on {day}, {stage}.",
  "ripe.decision.look": "Look today: by days and heat the first fruit is ready, {stage}.",
  "ripe.decision.wait":
    "The first fruit, {stage}, is ready about {likely}; eight times in ten between {low} and {high}.",
  "ripe.decision.wait-open":
    "The first fruit, {stage}, is ready about {likely}, hardly before {low}; it may not come this season.",
  "ripe.decision.wait-none": "The first fruit, {stage}, is not reached in most years here.",
  "ripe.decision.pick-green":
    "Plan to pick mature green, from about {green}: in only {share} of what may come does fruit colour before frost.",
  "ripe.decision.none-before-frost":
    "In only {share} of what may come is there full-size fruit before frost: plan to protect these plants in autumn.",

  "ripe.window.green": "Mature green: about {likely}, between {low} and {high}.",
  "ripe.window.green-open": "Mature green: about {likely}, hardly before {low}; it may not come this season.",
  "ripe.window.green-none": "Mature green: not reached in most years here.",
  "ripe.window.green-noted": "Mature green: noted on {day}.",
  "ripe.window.colour": "In colour: about {likely}, between {low} and {high}.",
  "ripe.window.colour-open": "In colour: about {likely}, hardly before {low}; it may not come this season.",
  "ripe.window.colour-none": "In colour: not reached in most years here.",
  "ripe.window.colour-noted": "In colour: noted on {day}.",

  "ripe.step.closed":
    "No fruit leaves this bed before {from}, also for the kitchen: the label of a spray says so.",
  "ripe.step.sign-green":
    "Mature green: full size for the variety, firm, glossy, and the walls do not give between two fingers.",
  "ripe.step.sign-colour": "In colour: at least half of the skin has its ripe colour.",
  "ripe.step.look-green":
    "Look at the lowest fruit today; if one is ready, pick it and note it as mature green.",
  "ripe.step.look-colour":
    "Look at the lowest fruit today; if one is ready, pick it and note it as colouring.",
  "ripe.step.how":
    "Cut with a clean knife or shears and leave the stalk on the fruit. Pick dry plants in the cool of the morning, and get the fruit into shade at once.",
  "ripe.step.again-green": "Go through the bed every week; fruit left on slows the next.",
  "ripe.step.again-colour": "Go through the bed twice a week while fruit colours.",
  "ripe.step.before-frost":
    "By the evening of {evening} take in what is full size, first what has begun to colour, then mature green. Small soft fruit does not keep: leave it.",
  "ripe.step.stay-out":
    "Nobody goes in to cover either: the label's re-entry time has not passed by that evening.",
  "ripe.step.cover":
    "On {evening} cover the plants before sunset so that the cover reaches the ground, and keep it off the leaves. Mind the label's re-entry time.",
  "ripe.step.chill":
    "The night after {evening} goes to {min} at the plants, below {mark}: take in fruit that has begun to colour, which chills first.",
  "ripe.step.autumn":
    "First frost at these plants: {likely} in the middle year, {low} or before in one year of ten.",
  "ripe.step.breakers":
    "Fruit that has begun to colour goes on in a room of {low} to {high} and humid, about {rh}. Fruit still wholly green seldom colours off the plant: use it green.",
  "ripe.step.keep":
    "Keep the rest at {low} to {high} and {rhLow} to {rhHigh} humidity: {daysLow} to {daysHigh}. Not beside apples, pears or tomatoes.",
  "ripe.step.not-colder":
    "Not below {mark}: pits and dark seeds follow. At {five} green bell fruit showed it after {daysLow} to {daysHigh}.",

  "ripe.ends.frost": "The frost ends this, or a forecast without it.",
  "ripe.ends.else": "A picking, a note or a new forecast ends this; at the latest the first frost.",

  "ripe.stakes.frost": "Fruit of size that freezes is lost.",
  "ripe.stakes.frost-closed": "Fruit of size that freezes is lost, and may not be picked before.",
  "ripe.stakes.closed": "Nothing is lost by waiting for the label's day but fruit that gets too ripe.",
  "ripe.stakes.pick": "Fruit left past its time softens and slows the next.",
  "ripe.stakes.look": "Fruit left past its time softens and slows the next.",
  "ripe.stakes.wait": "Nothing presses yet.",
  "ripe.stakes.pick-green": "Buyers of coloured fruit want to know in time.",
  "ripe.stakes.none-before-frost": "Covers for the autumn have to be there in time.",

  "ripe.limit.share": "A fruit {stage} before the first frost: {share} of what may come.",
  "ripe.limit.no-dates":
    "The days of the first fruit are not reckoned, because weather since setting out is missing.",
  "ripe.limit.no-frost":
    "Without past years, or in a heated house, nothing is said of the first autumn frost.",
  "ripe.limit.fruit":
    "The days are of the first fruit. From flower to fruit they are growers' guides', from memory, at one temperature.",
  "ripe.limit.storage":
    "Sources disagree on how long peppers keep: two to three weeks, or three to five; the shorter is said here. That fruit on the plant chills as on the shelf is an assumption.",
  "ripe.limit.ethylene":
    "One source says that ethylene hastens ripening much, another that peppers hardly respond. Keeping them from apples costs nothing.",

  "ripe.missing.weather":
    "Daily minima and maxima since setting out and the day the seedlings showed, or a note when the first fruit is ready.",
  "ripe.missing.weather-moves": "Without them no day of the first fruit can be reckoned.",
  "ripe.missing.climatology": "Past years of a station's daily minima and maxima.",
  "ripe.missing.climatology-moves":
    "The first fruit lies beyond the forecast, and nothing tells of the autumn's frost.",

  "ripe.change.pick-at": "Word whether this planting is picked green or in colour.",
  "ripe.change.note": "Notes of first flower, mature green and colour, and of each picking.",
  "ripe.change.forecast": "A forecast of the coming nights.",

  "ripe.chart.title": "First fruit and first frost",
  "ripe.chart.day": "Day",
  "ripe.chart.share": "Chance that it has come by then",
  "ripe.chart.green": "First mature green fruit",
  "ripe.chart.colour": "First coloured fruit",
  "ripe.chart.frost": "First autumn frost",
  "ripe.table.windows": "Fruit and frost",
  "ripe.table.keeping": "How fruit keeps",
  "ripe.column.what": "What",
  "ripe.column.low": "Earliest (one in ten sooner)",
  "ripe.column.likely": "Likely",
  "ripe.column.high": "Latest (one in ten later)",
  "ripe.column.place": "Where",
  "ripe.column.becomes": "What becomes of it",
  "ripe.keeping.store": "{low} to {high}, humid",
  "ripe.keeping.store-becomes": "keeps {daysLow} to {daysHigh}",
  "ripe.keeping.cold": "{five}",
  "ripe.keeping.cold-becomes":
    "green fruit shows chilling after {daysLow} to {daysHigh}; ripe fruit stands it better; fruit that begins to colour stands it worst",
  "ripe.keeping.warm": "{low} to {high}, humid",
  "ripe.keeping.warm-becomes": "fruit that has begun to colour goes on colouring",
};
