/** What irrigate says, in English. Keys start with the rule's id. */
export const irrigate: Record<string, string> = {
  "irrigate.no-plants": "No plants stand on this valve yet, or they have been cleared.",
  "irrigate.decision.water-now":
    "Water today: run the valve for {minutes} ({litres}, {net} into the root zone).",
  "irrigate.decision.wait": "Do not water yet. The next watering is due about {day}.",
  "irrigate.decision.wait-long": "Do not water yet. None is due in the next three weeks at this weather.",
  "irrigate.decision.hold": "Hold off: the forecast rain should carry the bed. Look again on {day}.",
  "irrigate.step.unanswered":
    "We advised a watering that nobody has answered. This advice takes it as not done, because a dry bed costs more than one extra watering. Tell us if it was done.",
  "irrigate.step.wilting":
    "Plants were seen wilting at dawn. The book has {missing} missing: if the soil is moist, it is the roots and not the water, and more water makes it worse.",
  "irrigate.step.look-first":
    "First dig a hand deep beside a plant. If that soil still holds together when pressed, wait a day and tell us.",
  "irrigate.step.run":
    "Open the valve for {minutes}. That is {litres} ({gross} on the beds), of which {net} stays in the root zone at {efficiency} efficiency.",
  "irrigate.step.too-slow":
    "At this flow it takes {hours}, more than a day. Spread it over the days, and check the flow and the filter.",
  "irrigate.step.rounds":
    "The root zone holds less than a day's use: give it in {rounds, plural, one {# round} other {# rounds}} through the day, so that it does not run through.",
  "irrigate.step.bed": "Bed {bed}: {litres}, about {each} for each plant.",
  "irrigate.step.container": "Containers {bed}: {litres}, about {each} for each container.",
  "irrigate.step.thirstiest":
    "Bed {bed} is short first and sets the time. The other beds get up to {surplus} more than they can hold.",
  "irrigate.step.next": "After that the next watering is due about {day}.",
  "irrigate.step.interval":
    "The next watering comes about {day}: as early as {early} in weather like the thirstiest of the last two weeks, as late as {late} in the mildest. It will then take about {net}.",
  "irrigate.step.with-rain": "If the forecast rain falls, it can wait until about {day}.",
  "irrigate.step.left":
    "{missing} is missing from the root zone; {ready} may be missing before plants are held back.",
  "irrigate.step.look-anyway":
    "Dig a hand deep twice a week all the same. Dry soil there outranks this book.",
  "irrigate.step.first-zone": "Bed {bed} will be short first.",
  "irrigate.step.forecast": "The forecast has {rain} of rain up to {day}. It counts only once it has fallen.",
  "irrigate.ends.water": "A watering, or rain that fills the bed, ends this.",
  "irrigate.ends.wait":
    "It ends when the root zone has given what it gives easily, or with rain or a watering.",
  "irrigate.stakes":
    "Left dry for {days} days after water is due, the plants would get {share} of what they can use.",
  "irrigate.stakes.wilting":
    "Left dry for {days} days after water is due, the root zone would be all but empty: plants wilt, drop their flowers and may not come back.",
  "irrigate.stakes.none": "No watering falls due in the next three weeks.",
  "irrigate.limit.single":
    "One coefficient a day covers plant and soil together. It is less sharp in the weeks after setting out, when the soil is wetted often.",
  "irrigate.limit.hot-peppers":
    "The coefficients are those of sweet pepper. None are printed for hot peppers; they share them here.",
  "irrigate.limit.mulch":
    "Pepper is not in the published table of mulched crops. Of its range for other crops the end that waters more is taken.",
  "irrigate.limit.cover":
    "The weather is that of the open. Under a cover plants usually use less, in heat sometimes more.",
  "irrigate.limit.container":
    "The water a potting mix can give is common practice, not a measurement. Weigh a watered and a wilting pot to know yours.",
  "irrigate.limit.sprinkler-plastic":
    "Water from above does not pass through plastic. The efficiency given may be too high.",
  "irrigate.change.dig": "How deep the roots really go: dig once and tell us.",
  "irrigate.change.rain": "A rain gauge at the bed. Showers differ from field to field.",
  "irrigate.change.soil":
    "The soil's own field capacity and wilting point: {low} to {high} could be missing before plants are held back.",
  "irrigate.change.flow": "The valve's real flow: catch one emitter for ten minutes at each end of the line.",
  "irrigate.case.done": "If the watering of {day} was done",
  "irrigate.case.not-done": "If the watering of {day} was not done",
  "irrigate.missing.weather": "Daily highest and lowest temperature, and rain, since setting out.",
  "irrigate.missing.weather-none":
    "Without any day of weather since setting out no watering can be worked out.",
  "irrigate.missing.weather-gap":
    "{days} days in a row have no temperatures (at most {limit} are bridged). In that time {low} to {high} of reference evapotranspiration may have passed.",
  "irrigate.missing.soil":
    "The soil texture of bed {bed}, by feel or from the laboratory; or its field capacity and wilting point.",
  "irrigate.missing.soil-moves":
    "In the soil that holds least the next watering is due {early} with {earlyNet}; in the one that holds most, {late} with {lateNet}.",
  "irrigate.chart.title": "Water missing from the root zone, bed {bed}",
  "irrigate.chart.day": "day",
  "irrigate.chart.mm": "depth of water",
  "irrigate.chart.depletion": "missing at the end of the day",
  "irrigate.chart.raw": "may be missing before plants are held back",
  "irrigate.chart.taw": "all that the root zone can give",
  "irrigate.chart.rain": "rain that counts",
  "irrigate.chart.irrigation": "watered, net",
};
