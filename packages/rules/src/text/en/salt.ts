/** What salt says, in English. Keys start with the rule's id. */
export const salt: Record<string, string> = {
  "salt.not.ended": "This planting has ended.",
  "salt.not.unmeasured": "Nobody has measured the salt of this soil or of this water.",
  "salt.not.containers":
    "These plants stand in containers. The limits here are those of soil in the ground and do not read a potting medium.",
  "salt.not.harmless":
    "The soil reads {ece} in the saturated paste. Salt takes nothing from peppers at that.",

  "salt.decision.fine": "Salt costs these plants nothing: use this water as it is.",
  "salt.decision.watch":
    "Salt costs about {loss} of the yield now. Keep it from gathering, and measure again before you do more.",
  "salt.decision.watch-none":
    "Salt costs nothing to speak of yet. Keep it from gathering, and measure again before you do more.",
  "salt.decision.leach":
    "Salt costs about {loss} of the yield. Wash it below the roots where the ground drains.",
  "salt.decision.better-water":
    "This water holds more than washing can put right (about {loss} of the yield by its salt). Look for a better one, first of all for young plants.",

  "salt.step.soil-measured":
    "The soil reads {ece} in the saturated paste: {loss} of the yield lost, {low} to {high} by what is published.",
  "salt.step.soil-converted":
    "The laboratory reads {ec} in a {extraction} extract. In this texture that is about {ece} in the saturated paste: {loss} of the yield lost, {low} to {high} by what is published.",
  "salt.step.water":
    "Water of {ec} makes, in time, a soil of about {ece}, if 15 to 20 % of it drains and no rain helps: {loss} of the yield lost.",
  "salt.step.cost-fruit": "On this planting that is about {kg} of fruit.",
  "salt.step.cost-money":
    "On this planting that is about {kg} of fruit, worth {money} at the price you expect.",
  "salt.step.better-water":
    "Look for better water: rain from a roof, the mains, another well; or mix it in, and have the mixture tested.",
  "salt.step.drain-first":
    "Only where the ground drains. Dig to 60 cm (2 ft) a day after a good watering: if water stands in the hole, wash nothing, the salt would come back up.",
  "salt.step.wash":
    "Before planting or between pickings let {depth} of low-salt water pass through the top 30 cm (1 ft), in several waterings with a pause between, not in one flood.",
  "salt.step.leach-share":
    "Let {share} of the water given drain below the roots: {more} more than the plants use, over the season and not at each watering. Heavy rain counts towards it.",
  "salt.step.seedlings":
    "Keep the best water for seedlings and for the first weeks: young plants bear least salt.",
  "salt.step.ring":
    "Salt gathers at the edge of the wet ring of a drip line. Plant well inside it, and run the drip on when light rain begins, so that the ring is not washed back onto the roots.",
  "salt.step.dry-leaves":
    "Keep this water off the leaves: sodium and chloride enter through them. Where it must be sprinkled, seldom and long is better than often, and never in hot wind.",
  "salt.step.infiltration":
    "With a sodium adsorption ratio of {value} water of this strength soaks in badly ({class}): watch for puddles and crust.",
  "salt.step.ask-gypsum":
    "Ask the laboratory whether gypsum would help this soil, with a test of its exchangeable sodium, before anybody spreads it.",
  "salt.step.sodium":
    "Sodium adsorption ratio {value}: {class}. Sodium crowds out calcium; look for end rot.",
  "salt.step.chloride": "Chloride {value} meq/L: {class}. Do not add potassium chloride.",
  "salt.step.boron":
    "Boron {value}. Red pepper takes {low} to {high} in the soil water. Give no boron, and look for burnt edges on old leaves.",
  "salt.step.nitrate":
    "The water itself brings {value} of nitrate-N. That is feed: count it, and do not drink this water untested.",
  "salt.step.bicarbonate":
    "Bicarbonate {value} meq/L: {class} where it is sprinkled. It leaves white spots and clogs emitters; flush the lines.",
  "salt.step.ph":
    "The water's pH of {value} is outside 6.5 to 8.4. Have it tested again before you act on it.",
  "salt.class.none": "no restriction",
  "salt.class.slight": "slight to moderate restriction",
  "salt.class.severe": "severe restriction",

  "salt.ends": "A new reading of soil or water ends this, and so does a wet month.",
  "salt.stakes.loses": "Salt takes about {loss} of the yield if the season goes on so.",
  "salt.stakes.watch": "Little is lost to salt now. It gathers with every watering that does not drain.",

  "salt.limit.cultivars":
    "One threshold stands for all peppers. In water of 4.1 dS/m eight of them lost between 19 and 86 % of their fruit, habanero most; five chiles took up to about 3 dS/m.",
  "salt.limit.two-tolerances":
    "The default loses 14 % for each dS/m above 1.5. FAO also prints 12 % above 1.7: the range given holds both.",
  "salt.limit.converted":
    "The saturated paste was not read. The step from {extraction} is a relation from other places' soils, read second hand.",
  "salt.limit.unread-texture": "The soil's conductivity is not read, because its texture is not known.",
  "salt.limit.unread-extraction":
    "The soil's conductivity is not read, because the report does not name its extraction.",
  "salt.limit.rain":
    "Where rain washes the soil each winter, the water's salt seldom gathers as far as said.",
  "salt.limit.boron":
    "Boron's limit is that of the water in the soil, which grows stronger than the water given.",
  "salt.limit.chloride":
    "The classes of chloride are general ones. Pepper's own figure, 15 mmol/L in the saturated extract, is from memory and not used.",
  "salt.limit.old": "The reading of {day} {year} is more than a year old. Salt moves with every wet month.",

  "salt.change.paste":
    "A reading of this bed in the saturated paste: by what is published the loss lies between {low} and {high}.",
  "salt.change.extraction": "The name of the extraction on the soil report.",
  "salt.change.soil":
    "A reading of this bed in the saturated paste: rain may have left nothing, so the loss lies between none and {high}.",
  "salt.change.water":
    "The water's conductivity: from {low} to {high} it would come to cost {least} to {most} of the yield.",
  "salt.change.ions":
    "Calcium, magnesium, sodium, chloride and boron of the water: without them what it does to soil structure and leaves stays open.",

  "salt.missing.texture":
    "The texture of this bed's soil, by feel or from the laboratory: {extraction} is converted by texture. Or a reading in the saturated paste.",
  "salt.missing.texture-moves":
    "In the saturated paste the soil could read {low} to {high}: {least} to {most} of the yield lost.",
  "salt.missing.water-ec": "The electrical conductivity of the water.",
  "salt.missing.water-ec-moves": "From {low} to {high} it would come to cost {least} to {most} of the yield.",

  "salt.chart.title": "Yield left by salt in the soil",
  "salt.chart.ece": "salt in the saturated paste",
  "salt.chart.yield": "yield",
  "salt.chart.maas": "1.5 dS/m and 14 % (the default)",
  "salt.chart.fao56": "1.7 dS/m and 12 % (the mildest printed)",
  "salt.chart.threshold": "threshold",
  "salt.chart.soil": "this soil",
  "salt.chart.water": "the soil this water makes",
};
