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
  "irrigate.step.container-overfilled":
    "Containers {bed}: no more than {most} for each container at a time, {all} in all. This run would bring them {litres}, about {each} for each, and one filling of a container holds {holds} for its plants: the rest runs through. They need a time of their own, or drippers or a valve of their own; the advice on these containers says how much and how often. What is said for the other beds stays.",
  "irrigate.step.thirstiest":
    "Bed {bed} is short first and sets the time. The other beds get up to {surplus} more than they can hold.",
  "irrigate.step.next": "After that the next watering is due about {day}.",
  "irrigate.step.next-interval":
    "After that the next watering is due about {day}: as early as {early} in weather like the thirstiest of the last two weeks, as late as {late} in the mildest.",
  "irrigate.step.interval":
    "The next watering comes about {day}: as early as {early} in weather like the thirstiest of the last two weeks, as late as {late} in the mildest. It will then take about {net}.",
  "irrigate.step.with-rain": "If the forecast rain falls, it can wait until about {day}.",
  "irrigate.step.left":
    "{missing} is missing from the root zone; {ready} may be missing before plants are held back.",
  "irrigate.step.look-anyway":
    "Dig a hand deep twice a week all the same. Dry soil there outranks this book.",
  "irrigate.step.first-zone": "Bed {bed} will be short first.",
  "irrigate.step.forecast": "The forecast has {rain} of rain up to {day}. It counts only once it has fallen.",
  "irrigate.step.forecast-not-enough":
    "The forecast has {rain} of rain up to {day}: too little, too late or not for these beds, so it is not waited for.",
  "irrigate.step.rain-hold":
    "{rain} of rain is forecast by {day}. The chance that it stays out is {stays}, and {accepted} is accepted. If it does, the plants get {got} of what they can use until then: a risk of {risk} of the crop's worth.",
  "irrigate.step.rain-too-unsure":
    "{rain} of rain is forecast by {day}, but the chance that it stays out is {stays} and only {accepted} is accepted. It is not waited for.",
  "irrigate.step.rain-wilts":
    "{rain} of rain is forecast by {day}, but without it the plants would wilt before. It is not waited for, although it would stay out with a chance of only {stays}.",
  "irrigate.step.rain-no-chance":
    "{rain} of rain is forecast by {day}, and the forecast gives no chance with it. It is waited for only because the plants are not short yet this morning.",
  "irrigate.step.rain-no-chance-water":
    "{rain} of rain is forecast by {day}, but the forecast gives no chance with it, and the plants would be short by then. It is not waited for.",
  "irrigate.step.leach":
    "{share} of it is to pass below the roots, to take the salt along: this water ({ec}) asks for {required}, and {drained} of what came has drained so far.",
  "irrigate.step.deficit-alone":
    "A dry spell is held here on purpose: water once {trigger} is missing instead of {ready}, which leaves the plants about {share} of what they can use.",
  "irrigate.step.deficit-shared":
    "A dry spell is wanted on bed {bed}, but other plants hang on the same valve. It waters for the thirsty ones; a block that is kept dry needs a valve of its own.",
  "irrigate.step.deficit-off":
    "A dry spell is noted here, but it must not be held now: no fruit set yet, heat or cold, a sign on the plants, or a strength that is not accepted here. The bed is watered in full. The advice about hotter fruit says which.",
  "irrigate.step.sensor-content":
    "Bed {bed}: the sensor at {depth} reads {value} of water, which makes {missing} missing from the root zone. The book has {book}. The sensor decides.",
  "irrigate.step.sensor-content-too":
    "Bed {bed}: the sensor at {depth} reads {value} of water, which makes {missing} missing from the root zone.",
  "irrigate.step.sensor-mean":
    "Bed {bed}: the mean of its sensors makes {missing} missing. The book has {book}. The sensors decide.",
  "irrigate.step.sensor-water":
    "Bed {bed}: the sensor at {depth} reads {value}; in this soil peppers are watered from {low} to {high}. The book has {book} missing, of {ready} that may be. The sensor decides that water is due; how much is the book's to say, at least a day's use. Read it again tomorrow.",
  "irrigate.step.sensor-wait":
    "Bed {bed}: the sensor at {depth} reads {value}; in this soil peppers are watered from {low} to {high}. The book has {book} missing, of {ready} that may be. The sensor decides: not today. Read it again tomorrow.",
  "irrigate.step.sensor-tension-too":
    "Bed {bed}: another sensor, at {depth}, reads {value}; in this soil peppers are watered from {low} to {high}. It is shown and does not decide.",
  "irrigate.sensor.stale":
    "Bed {bed}: the sensor at {depth} last read {value} on {day}, more than a day ago. It is not used.",
  "irrigate.sensor.out-of-range":
    "Bed {bed}: the sensor at {depth} reads {value}, which cannot be. It is not used: look at its wire and its contact with the soil.",
  "irrigate.sensor.stuck":
    "Bed {bed}: the sensor at {depth} has stood at {value} for days while the plants drank. It is not used: look whether it is stuck.",
  "irrigate.sensor.below-roots":
    "Bed {bed}: the sensor at {depth} stands deeper than the roots reach. Its {value} is not used.",
  "irrigate.sensor.no-threshold":
    "Bed {bed}: the sensor at {depth} reads {value}, but without the soil's texture or field capacity that says nothing about this bed.",
  "irrigate.sensor.deficit":
    "Bed {bed}: the sensor at {depth} reads {value}. Its limits are for full water and not for a dry spell on purpose, so it does not decide.",
  "irrigate.step.season":
    "Since setting out the plants have used {used}. {given} was watered into the root zone, {rain} of rain counted, and {drained} drained below the roots.",
  "irrigate.step.season-ahead":
    "To {end} they will use about {use} more ({useLow} to {useHigh} over {years, plural, one {# year} other {# years}}). If no rain fell that would take {water} into the root zone ({waterLow} to {waterHigh}); rain comes off it.",
  "irrigate.ends.water": "A watering, or rain that fills the bed, ends this.",
  "irrigate.ends.wait":
    "It ends when the root zone has given what it gives easily, or with rain or a watering.",
  "irrigate.stakes":
    "Left dry for {days} days after water is due, the plants would get {share} of what they can use.",
  "irrigate.stakes.wilting":
    "Left dry for {days} days after water is due, the root zone would be all but empty: plants wilt, drop their flowers and may not come back.",
  "irrigate.stakes.none": "No watering falls due in the next three weeks.",
  "irrigate.limit.single":
    "What evaporates from a potting mix is not published in the form needed: in containers one coefficient a day covers plant and mix together.",
  "irrigate.limit.bed-only":
    "Water is reckoned for the bed itself, {width} of every {spacing}. Leaves that reach over the alley draw more than said: where they do, dig and look, and enter the width that they cover as the bed's.",
  "irrigate.limit.no-runoff": "All rain is taken to enter the soil. On a slope or a crust some runs off.",
  "irrigate.limit.no-rise":
    "No water is taken to rise from below. Where the water table is near, the bed needs less than is said here.",
  "irrigate.limit.top":
    "The root zone counts as full once its mean is, though the soil between drippers may be dry.",
  "irrigate.limit.sensor": "One sensor stands for the whole root zone of its bed.",
  "irrigate.limit.rain-chance": "The chance in a forecast is that of any rain, not of this much.",
  "irrigate.limit.salt-containers":
    "How salt holds plants back is published for soil, not for containers: it is not counted there.",
  "irrigate.limit.salt-from-water":
    "The soil's salt is what this water would leave after seasons of even watering. A saturated-paste test would say how it is.",
  "irrigate.limit.salt-beyond":
    "The soil's {ece} lies beyond the {bound} up to which the published relation holds. The stress by salt is a guess there.",
  "irrigate.limit.no-leaching":
    "With water of {ec} no amount of leaching holds the soil where peppers keep their full yield. Other water, or a hardier crop, is needed.",
  "irrigate.limit.hot-peppers":
    "The coefficients are those of sweet pepper. None are printed for hot peppers; they share them here.",
  "irrigate.limit.mulch":
    "Pepper is not in the published table of mulched crops. Of its range for other crops the end that waters more is taken.",
  "irrigate.limit.cover":
    "Under a tunnel or in a house the wind is that of a plastic greenhouse; sun, warmth and moisture are those of the open, because no published share was found for this cover. Plants there usually use less than is said, in heat sometimes more.",
  "irrigate.limit.container":
    "The water a potting mix can give is common practice, not a measurement. Weigh a watered and a wilting pot to know yours.",
  "irrigate.limit.sprinkler-plastic":
    "Water from above does not pass through plastic. The efficiency given may be too high.",
  "irrigate.change.dig": "How deep the roots really go: dig once and tell us.",
  "irrigate.change.rain": "A rain gauge at the bed. Showers differ from field to field.",
  "irrigate.change.soil":
    "The soil's own field capacity and wilting point: {low} to {high} could be missing before plants are held back.",
  "irrigate.change.flow": "The valve's real flow: catch one emitter for ten minutes at each end of the line.",
  "irrigate.change.cover":
    "The share of the ground that the plants cover, seen from straight above: note it now and then.",
  "irrigate.change.wind":
    "Wind: on the last measured day the plants would have asked for {still} in still air and for {windy} in wind like that of the windiest week. A windbreak lies between.",
  "irrigate.change.climatology":
    "Years of daily highest and lowest temperatures of a station nearby: then the water still needed to the end can be said with its range.",
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
  "irrigate.chart.top": "missing from the top of the soil where it is watered",
  "irrigate.chart.demand": "Water asked for and given, bed {bed}",
  "irrigate.chart.et0": "asked for by grass (reference)",
  "irrigate.chart.etc": "asked for by this bed",
  "irrigate.chart.stress": "How freely the plants drank, bed {bed}",
  "irrigate.chart.ks": "share of what they could use (Ks)",
};
