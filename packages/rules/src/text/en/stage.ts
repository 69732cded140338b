/** What stage says, in English. Keys start with the rule's id. */
export const stage: Record<string, string> = {
  "stage.not.ended": "This planting has ended.",
  "stage.not.unsown": "These seeds are not sown yet.",
  "stage.not.overwintered": "These plants were kept over winter, so days and heat since sowing tell nothing.",

  "stage.name.sown": "sown, not yet up",
  "stage.name.emerged": "seedlings up",
  "stage.name.seed-leaves": "seed leaves open",
  "stage.name.true-leaves": "first true leaf",
  "stage.name.buds": "buds to be seen",
  "stage.name.first-flower": "first flower",
  "stage.name.set": "first fruit set",
  "stage.name.mature-green": "first mature green fruit",
  "stage.name.colour": "first coloured fruit",

  "stage.decision.sown-between":
    "Now: {now}. Next: {next}, about {likely}; eight times in ten between {low} and {high}.",
  "stage.decision.sown-open": "Now: {now}. Next: {next}, about {likely}, hardly before {low}.",
  "stage.decision.sown-none": "Now: {now}. Next: {next}, not in the season looked at.",
  "stage.decision.noted-between":
    "Now: {now}. Next: {next}, about {likely}; eight times in ten between {low} and {high}.",
  "stage.decision.noted-open":
    "Now: {now}. Next: {next}, about {likely}, hardly before {low}; it may not come this season.",
  "stage.decision.noted-none": "Now: {now}. Next: {next}, which most years here do not reach this season.",
  "stage.decision.reckoned-between":
    "By days and heat, {now} should have come; nobody has noted it. Next: {next}, about {likely}; eight times in ten between {low} and {high}.",
  "stage.decision.reckoned-open":
    "By days and heat, {now} should have come; nobody has noted it. Next: {next}, about {likely}, hardly before {low}.",
  "stage.decision.reckoned-none":
    "By days and heat, {now} should have come; nobody has noted it. Next: {next}, which most years here do not reach this season.",
  "stage.decision.last-noted": "The first fruit has coloured. No further stage is followed.",
  "stage.decision.last-reckoned":
    "By days and heat the first fruit should have coloured; nobody has noted it.",

  "stage.step.look":
    "Look today whether it is so: {now}. Note it with the day it came, or note the stage that you do see.",
  "stage.step.from":
    "Look for it every other day from {low} on, and note the first day that half of the plants show it: {next}.",
  "stage.step.leaves":
    "Count true leaves on five plants, each leaf as wide as a fingernail or more, and note the middle count.",
  "stage.step.leaf-days": "In the week ahead a true leaf takes about {days}.",
  "stage.step.sign-emerged": "Up means that half of the seedlings show above the soil.",
  "stage.step.sign-seed-leaves": "The two seed leaves lie flat and open.",
  "stage.step.sign-true-leaves": "The first leaf with the shape of a pepper leaf is as wide as a fingernail.",
  "stage.step.sign-buds": "Buds stand in the fork of the stem, large enough to see without touching.",
  "stage.step.sign-first-flower": "The first flower is fully open.",
  "stage.step.sign-set": "The petals are off and a fruit the size of a pea stays on.",
  "stage.step.sign-mature-green": "The first fruit is full size, firm and glossy, and its walls do not give.",
  "stage.step.sign-colour": "The first fruit shows its ripe colour on half of its skin.",
  "stage.step.pick-between": "For planning: {stage} about {likely}, between {low} and {high}.",
  "stage.step.pick-open":
    "For planning: {stage} about {likely}, hardly before {low}; it may not come this season.",
  "stage.step.pick-none": "For planning: {stage} is not reached in most years here.",

  "stage.step.last": "Keep noting pickings: the first of them tells next season's days.",

  "stage.ends": "A new note, a new week of weather or the next stage ends this.",
  "stage.stakes":
    "Dates stay wide without notes, and picking, topping and frost protection are timed by them.",

  "stage.limit.base-variety": "Heat is counted above {base}, the variety's own base as entered.",
  "stage.limit.base-office":
    "Heat is counted above {base}: published bases disagree, and the office chose this one.",
  "stage.limit.base-default":
    "Heat is counted above {base}, because the variety's own base is not known; published bases disagree, and the office may choose.",
  "stage.limit.family":
    "Published bases go from {lowBase} to {highBase}. With the lowest: {stage} about {low}; with the highest about {high}.",
  "stage.limit.family-open":
    "Published bases go from {lowBase} to {highBase}. With one of the two the season looked at does not reach this: {stage}.",
  "stage.limit.family-noted": "Published bases go from {lowBase} to {highBase}.",
  "stage.limit.order":
    "The note of {day} is not counted, because it is out of order with the other notes: {stage}. If it is right, put the others right.",
  "stage.limit.fewer-leaves": "The leaf count of {day} is not counted: it is lower than one before it.",
  "stage.limit.table":
    "The heat sums are from chile sown in the field in warm, dry country, and the two reports of them disagree on the first bloom. From flower to fruit the days are growers' guides', from memory.",
  "stage.limit.leaves":
    "Leaves of sweet pepper follow the average temperature, but the published rate could not be read; the heat of a leaf is that of a biquinho pepper.",
  "stage.limit.species": "The heat sums are of Capsicum annuum; slower species come later.",
  "stage.limit.check":
    "What setting out costs a plant in days is not in the dates until a later note shows it.",
  "stage.limit.no-years": "Without past years nothing is said of days beyond the forecast.",

  "stage.limit.few-years":
    "Only {n, plural, one {one past year is} other {# past years are}} known, so the days may lie further apart than said.",

  "stage.missing.emerged": "Note the day on which half of the seedlings showed.",
  "stage.missing.emerged-moves":
    "At this temperature of the medium no table says when seedlings come up, and all dates count from there.",
  "stage.missing.weather":
    "Daily minima and maxima since setting out, or past years of a station to fill the gaps.",
  "stage.missing.weather-moves":
    "Days without a temperature count for nothing, and every date would come too late.",
  "stage.missing.climatology": "Past years of a station's daily minima and maxima.",
  "stage.missing.climatology-moves":
    "The next stage lies beyond the forecast, and no date can be given for it.",

  "stage.change.note": "A note of the next stage, or of the true leaves: each narrows the dates after it.",
  "stage.change.base": "The variety's own base temperature, from its breeder or this farm's records.",
  "stage.change.first-pick":
    "The days of this variety's first pick here in earlier seasons: they outrank the seed list.",
  "stage.change.list": "The seed list's days to maturity, and what they count from and to.",
  "stage.change.growing": "A thermometer where the seedlings grow on.",

  "stage.table.stages": "Stages and their days",
  "stage.table.sources": "What each source says of the first pick: {stage}",
  "stage.column.stage": "Stage",
  "stage.column.how": "Known by",
  "stage.column.low": "Earliest (one in ten sooner)",
  "stage.column.likely": "Likely",
  "stage.column.high": "Latest (one in ten later)",
  "stage.column.source": "Source",
  "stage.column.says": "Says",
  "stage.column.counted": "Counted",
  "stage.how.noted": "noted",
  "stage.how.forecast": "days and heat",
  "stage.source.own": "{n, plural, one {This farm, one season} other {This farm, # seasons}}",
  "stage.source.list-mature-green": "Seed list, to green fruit",
  "stage.source.list-colour": "Seed list, to coloured fruit",
  "stage.source.table": "Table of heat, without notes",
  "stage.says.days-out": "{days} from setting out",
  "stage.says.list-sowing": "{days} from sowing: {day}",
  "stage.says.list-transplanting": "{days} from setting out: {day}",
  "stage.says.no-day": "not in the season looked at",
  "stage.in-force.yes": "in force",
  "stage.in-force.no": "shown, not counted",
  "stage.in-force.no-years": "shown, not counted: without past years its days are not known as heat",

  "stage.chart.heat": "Heat since the seedlings showed, and the stages",
  "stage.chart.day": "Day",
  "stage.chart.heat-axis": "Heat above the base",
  "stage.chart.past": "so far",
  "stage.chart.cool": "cool year (one in ten)",
  "stage.chart.likely": "middle year",
  "stage.chart.warm": "warm year (one in ten)",
  "stage.chart.intervals": "How wide each stage's days are",
  "stage.chart.from-today": "Days from today",
};
