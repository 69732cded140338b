/** What cold-record says, in English. Keys start with the rule's id. */
export const coldRecord: Record<string, string> = {
  "cold-record.not.ended": "This planting has ended.",
  "cold-record.not.unsown": "These seeds are not sown yet.",

  "cold-record.decision.carry-on":
    "Carry on: {hours} below {floor} in the last two weeks, no more than they can take.",
  "cold-record.decision.warmer-nights": "Hold the nights warmer: they fall below {floor}.",
  "cold-record.decision.hold-back-and-look":
    "Hold back and look: {hours} below {floor} from {from} to {to} may have checked these plants.",
  "cold-record.decision.hold-back-and-look-frost":
    "Hold back and look: {frosts, plural, one {# day with frost} other {# days with frost}}. The lowest of the record was {minimum}.",
  "cold-record.decision.hold-back-and-look-spoiled":
    "Hold back: {sign}. Whether to start again hangs on spare plants or time to sow, and that is not known yet.",
  "cold-record.decision.keep-what-lives":
    "Keep what lives: {sign}, and neither spare plants nor time to sow are left.",
  "cold-record.decision.start-again": "Start again: {sign}.",
  "cold-record.sign.dead": "the growing points are dead",
  "cold-record.sign.no-leaf": "two weeks of warm days brought no new leaf",

  "cold-record.step.carry-on": "Nothing to do for the cold.",
  "cold-record.step.heat":
    "Raise the night to {floor}: it was below that for {hours} of the last two weeks' nights. A second layer over the bench may be enough.",
  "cold-record.step.look":
    "Look into the tip of ten plants from the coldest corner: is the growing point green and firm, or brown and soft? Note it.",
  "cold-record.step.count-spares":
    "Count your spare plants and tell us, also if there are none: with spare plants you can start again.",
  "cold-record.step.lacks-seed-list":
    "Look up the seed list's days to green fruit and tell us: then we can say whether there is time to sow again.",
  "cold-record.step.lacks-climatology":
    "Whether there is time to sow again cannot be said: it needs at least eight years of daily minima from a nearby station.",
  "cold-record.step.frost":
    "There was frost. Leaves gone glassy or black are lost; side buds lower down may live.",
  "cold-record.step.hold-back":
    "Hold back feed and take no tips out until new leaves come; water with water that has stood in the warm.",
  "cold-record.step.new-leaf":
    "A new leaf was noted on {day}, and the cold since is no more than they can take: feed need not be held back any longer.",
  "cold-record.step.wood":
    "Scratch the bark near the base: green wood will shoot again. Cut nothing back before it does.",
  "cold-record.step.again": "Look again on {day}: note a new leaf, or none.",
  "cold-record.step.keep":
    "Keep the plants that show green side buds, and give the room of the others to something else.",
  "cold-record.step.replace":
    "Put in spare plants where the growing point is dead; {spare, plural, one {# is} other {# are}} noted.",
  "cold-record.step.sow":
    "Sow again today: on the seed list's days the first fruit comes about {days} before the first frost, in four years of five.",
  "cold-record.step.leave-some":
    "Leave a few of the old plants standing: whether they come back tells you something for next time.",
  "cold-record.step.record":
    "The whole record, from {from} on: {hours} and {degreeHours} below {floor}, the longest spell {spell}, the lowest {minimum}, {frosts, plural, =0 {no frost} one {# day with frost} other {# days with frost}}. {missing, plural, =0 {No hour is missing.} one {# hour is missing and was not filled.} other {# hours are missing and were not filled.}}",

  "cold-record.ends": "The next cold night, or a note on the growing points or new leaves, ends this.",

  "cold-record.stakes.none": "Nothing is lost by carrying on.",
  "cold-record.stakes.slow": "Cool nights slow young plants and kill none.",
  "cold-record.stakes.look":
    "Plants stunted by cold may not grow out of it, and each week of not knowing is a week of season.",
  "cold-record.stakes.kept": "What the cold took is gone; only what still lives can be kept.",
  "cold-record.stakes.grown": "Grown plants come back from most cold; a week of care saves some flowers.",
  "cold-record.stakes.season": "A bed of plants without growing points gives little this season.",

  "cold-record.missing.indoors":
    "Temperatures where the seedlings stand: a logger, or a minimum and maximum thermometer read each morning.",
  "cold-record.missing.outdoors":
    "Daily minima and maxima of the site for the last two weeks, or readings at the plants.",
  "cold-record.missing.house":
    "Readings from inside the heated house: the weather outside says nothing of it.",
  "cold-record.missing.move":
    "The {hours} not known could hold up to {degreeHours} below the floor, against {allowed} allowed. The answer could move from carry on to hold back and look.",

  "cold-record.limit.practice":
    "The floor, the allowed cold and the fourteen warm days are common practice or the office's own. No trial sets them.",
  "cold-record.limit.reconstructed":
    "Some hours were reckoned from the day's highest and lowest; on single nights the true course differs.",
  "cold-record.limit.cover":
    "The air under the cover was not measured. Outside plus a published figure stands in for it.",
  "cold-record.limit.gaps":
    "{hours} of the record are missing. They were not filled, so every figure is a least.",
  "cold-record.limit.established":
    "Grown plants are judged from a lower floor, a textbook value not re-read for this advice.",
  "cold-record.limit.overwintered":
    "Plants kept over winter rest; the floor for them is common practice alone.",

  "cold-record.change.measure": "A thermometer at the plants.",
  "cold-record.change.signs":
    "A look at the growing points now, and at new leaves after {days} of warm weather. Temperature alone never says start again.",
  "cold-record.change.spare": "How many spare plants there are, and whether there is time to sow.",

  "cold-record.chart.title": "Temperature at the plants, hour by hour",
  "cold-record.chart.hour": "Hour, the site's clock",
  "cold-record.chart.temperature": "Temperature",
  "cold-record.chart.measured": "Measured at the plants",
  "cold-record.chart.reconstructed": "Reckoned from the day's extremes",
  "cold-record.chart.floor": "Floor",
  "cold-record.chart.night-floor": "Night floor",
  "cold-record.chart.freezing": "Freezing",
};
