/** What is worth measuring, in English. */
export const missing: Record<string, string> = {
  "missing.settles": "Nothing can be said without it.",
  "missing.worth":
    "Knowing it would take about {narrows} off the uncertainty of {amount}.{decides, select, yes { In {changes} of the draws another value of it alone gives another decision.} other {}}",

  "missing.worth-decides":
    "In {changes} of the draws another value of it alone gives another decision; it hardly moves {amount}.",

  "missing.amount.set-out-day": "the first day these plants may stand there without protection",
  "missing.amount.next-stage": "the likely day of the next stage",
  "missing.amount.minutes": "the minutes to water",
  "missing.amount.net-mm": "the depth of water to give",
  "missing.amount.next-watering": "the day of the next watering",
  "missing.amount.season-n": "the nitrogen left to give this season",
  "missing.amount.season-k2o": "the potash left to give this season",
  "missing.amount.lime": "the lime to give",

  "missing.measure.paired-nights": "The lowest temperature of each night where the plants will stand",
  "missing.how.paired-nights":
    "Hang a minimum thermometer at plant height, shaded from the sky, and note it each morning for two weeks. Include clear, still nights.",
  "missing.known.paired-nights":
    "Nobody compared this site with its station: its nights may be from {low} to {high} warmer or colder.",

  "missing.measure.more-paired-nights": "More nights at the plants beside the station's",
  "missing.how.more-paired-nights":
    "Go on noting the night's minimum at plant height. Clear, still nights tell most.",
  "missing.known.more-paired-nights": "The site's nights differ from its station's by {low} to {high}.",

  "missing.measure.soil-temperature": "The soil's temperature at 10 cm",
  "missing.how.soil-temperature":
    "Push a probe thermometer 10 cm into the bed at about 8 in the morning, on three mornings.",
  "missing.known.soil-temperature": "Modelled from the air: from {low} to {high} this morning.",

  "missing.measure.leaves": "How many true leaves the seedlings have",
  "missing.how.leaves": "Count on ten plants, and note the middle one. Seed leaves do not count.",
  "missing.known.leaves": "Nobody counted today: by the heat so far {low} to {high}.",

  "missing.measure.stage-seen": "Whether this has come: {stage}, and since when",
  "missing.how.stage-seen": "Look at ten plants. Note the day on which half of them have it.",
  "missing.known.stage-seen": "By heat and days it should have come; nobody noted it.",

  "missing.measure.base-temperature": "The temperature above which this variety grows",
  "missing.how.base-temperature":
    "Ask who sells the seed. Or note each year's setting out and first pick: your own seasons then take its place.",
  "missing.known.base-temperature": "Not known of this variety: published for peppers from {low} to {high}.",

  "missing.measure.growing-temperature": "How warm it is where the seedlings grow on",
  "missing.how.growing-temperature":
    "Hang a thermometer with minimum and maximum among the seedlings, read both for a week, and take the mean.",
  "missing.known.growing-temperature": "Nobody measured: taken as {low} to {high}.",

  "missing.measure.medium-temperature": "How warm the seed's mix is",
  "missing.how.medium-temperature":
    "Push a probe thermometer into a tray at seed depth, morning and evening for two days. Or note the day the seedlings show.",
  "missing.known.medium-temperature": "Nobody measured: taken as {low} to {high}.",

  "missing.measure.hardened": "Whether the seedlings are hardened",
  "missing.how.hardened":
    "Note it once they have stood outside by day for a week, with less water, and come through.",
  "missing.known.hardened": "Nobody noted it: either is taken as likely.",

  "missing.measure.forecast": "A forecast of the coming week",
  "missing.how.forecast": "Switch on the weather for this site, or enter a forecast of today.",
  "missing.known.forecast": "None is here: the week may be as that of any year from {low} to {high}.",

  "missing.measure.valve-flow": "What the valve really gives in an hour",
  "missing.how.valve-flow":
    "Read a water meter before and after ten minutes, or catch ten drippers for a minute each, take their mean and multiply by how many there are.",
  "missing.known.valve-flow": "Taken as {low} to {high}: nothing says when it was last measured.",

  "missing.measure.valve-efficiency": "How evenly the valve waters",
  "missing.how.valve-efficiency":
    "Set out at least 16 equal cups along the lines, near and far. Divide the mean of the emptiest quarter by the mean of all.",
  "missing.known.valve-efficiency": "Taken as {low} to {high} of the water reaching the roots.",

  "missing.measure.wetted-share": "The share of the ground that the drippers wet",
  "missing.how.wetted-share":
    "Some hours after watering, dig across the row and measure how wide the soil is wet 15 cm down. Divide by the distance between bed centres.",
  "missing.known.wetted-share": "Taken as {low} to {high} from a table for drip.",

  "missing.measure.rain-gauge": "The rain on this field",
  "missing.how.rain-gauge": "Put a gauge in the open, away from trees, and read it after every rain.",
  "missing.known.rain-gauge": "The field's own rain may be {low} to {high} of the station's.",

  "missing.measure.soil-water": "How much water the soil of bed {bed} holds",
  "missing.how.soil-water":
    "Have a laboratory measure field capacity and wilting point on undisturbed cores. A sensor among the roots says much of it for less.",
  "missing.known.soil-water": "Known by its texture alone: {low} to {high} of its volume.",

  "missing.measure.root-depth": "How deep the roots go in bed {bed}",
  "missing.how.root-depth":
    "Dig beside a plant a hand's width from the stem, and measure to where most fine roots end.",
  "missing.known.root-depth": "Reckoned from the days since setting out: {low} to {high}.",

  "missing.measure.potassium-first": "The soil's potassium",
  "missing.how.potassium-first":
    "Take 15 cores from the bed, mix them, and send half a litre to a soil laboratory. Ask which extractant it uses.",
  "missing.known.potassium-first": "Nobody tested it: anything from {low} to {high}.",

  "missing.measure.potassium-again": "The soil's potassium, by a new sample",
  "missing.how.potassium-again":
    "Take 15 cores from the bed, mix them, and send half a litre to the same laboratory.",
  "missing.known.potassium-again": "A new sample would likely read from {low} to {high}.",

  "missing.measure.soil-nitrogen": "What nitrogen the soil itself gives",
  "missing.how.soil-nitrogen":
    "Leave two metres of a row without nitrogen, marked. Compare its growth and the nitrate of its sap with the rest.",
  "missing.known.soil-nitrogen": "Estimated from its organic matter: {low} to {high} over the season.",

  "missing.measure.organic-matter": "The soil's organic matter",
  "missing.how.organic-matter": "Ask for it with the next soil test.",
  "missing.known.organic-matter": "Nobody tested it: it may give {low} to {high} of nitrogen this season.",

  "missing.measure.soil-nitrate": "Nitrate in the soil",
  "missing.how.soil-nitrate":
    "Take 15 cores to 30 cm, mix them, and use test strips on an extract the same day, or send them cooled to a laboratory.",
  "missing.known.soil-nitrate": "Nobody tested it: {low} to {high} in the upper 30 cm.",

  "missing.measure.water-nitrate": "Nitrate in the irrigation water",
  "missing.how.water-nitrate":
    "Dip a nitrate test strip in a clean glass of it, or ask with the next water test.",
  "missing.known.water-nitrate": "Nobody tested it: {low} to {high}.",

  "missing.measure.bulk-density": "How heavy the soil is",
  "missing.how.bulk-density":
    "Press a tin of known volume into the moist soil, dry what it holds in an oven, and weigh it.",
  "missing.known.bulk-density": "Taken as an ordinary topsoil's.",

  "missing.measure.soil-ph": "The soil's pH, by a new sample",
  "missing.how.soil-ph":
    "Take 15 cores as deep as it is tilled, mix them, and send half a litre to the same laboratory.",
  "missing.known.soil-ph": "A new sample would likely read from {low} to {high}.",

  "missing.measure.buffer-ph": "The buffer pH, by a new sample",
  "missing.how.buffer-ph": "Send a new mixed sample to the same laboratory and ask for the same buffer.",
  "missing.known.buffer-ph": "A new sample would likely read from {low} to {high}.",

  "missing.measure.acidity": "The exchangeable acidity, by a new sample",
  "missing.how.acidity": "Send a new mixed sample to the same laboratory.",
  "missing.known.acidity": "A new sample would likely read {low} to {high} of the last.",

  "missing.measure.worked-depth": "How deep this bed is really worked",
  "missing.how.worked-depth":
    "After tilling, push a stiff rule down to the firm ground in ten places, and take the mean.",
  "missing.known.worked-depth": "Taken from the sample's depth: {low} to {high}.",

  "missing.measure.lime-quality": "What the lime is worth",
  "missing.how.lime-quality":
    "Read neutralising value and fineness on the label, or ask whoever sells it for the laboratory's sheet.",
  "missing.known.lime-quality": "Nobody read its label: {low} to {high} of the pure kind.",
};
