/** What rotation says, in English. Keys start with the rule's id. */
export const rotation: Record<string, string> = {
  "rotation.crop.pepper": "peppers",
  "rotation.crop.tomato": "tomatoes",
  "rotation.crop.eggplant": "eggplants",
  "rotation.crop.potato": "potatoes",
  "rotation.crop.tomatillo": "tomatillos",
  "rotation.crop.cucumber": "cucumbers",
  "rotation.crop.melon": "melons",
  "rotation.crop.squash": "squash",
  "rotation.crop.pumpkin": "pumpkins",
  "rotation.crop.snap-bean": "snap beans",
  "rotation.crop.lima-bean": "lima beans",
  "rotation.crop.pea": "peas",
  "rotation.crop.soybean": "soybeans",
  "rotation.crop.brassica": "cabbages or their kin",
  "rotation.crop.lettuce": "lettuce",
  "rotation.crop.spinach-beet": "spinach or beets",
  "rotation.crop.onion-garlic": "onions or garlic",
  "rotation.crop.carrot-parsley": "carrots or their kin",
  "rotation.crop.sweet-corn": "sweet corn",
  "rotation.crop.small-grain": "grain",
  "rotation.crop.grass-clover": "grass or clover",
  "rotation.crop.mustard-cover": "mustard",
  "rotation.crop.buckwheat": "buckwheat",
  "rotation.crop.strawberry": "strawberries",
  "rotation.crop.sweet-potato": "sweet potatoes",
  "rotation.crop.fallow": "nothing",
  "rotation.crop.other": "another crop",

  "rotation.disease.pepper": "peppers after peppers",
  "rotation.disease.phytophthora-blight": "Phytophthora blight",
  "rotation.disease.verticillium-wilt": "Verticillium wilt",
  "rotation.disease.bacterial-leaf-spot": "bacterial leaf spot",
  "rotation.disease.sclerotinia": "white mold",
  "rotation.disease.southern-blight": "southern blight",
  "rotation.disease.root-knot": "root-knot",

  "rotation.not.containers":
    "Containers rotate by their mix: fresh mix has no past, and mix that stood under a sick plant goes out.",
  "rotation.not.no-peppers": "No peppers are meant for this bed.",

  "rotation.missing.history":
    "What stood in this bed in each season from {from} to {to}, and any disease of the ground that was found.",
  "rotation.missing.history-moves":
    "One season of tomatoes, squash or beans among them can put peppers off for years.",

  "rotation.decision.clear": "This bed has rested long enough: peppers may stand here in {season}.",
  "rotation.decision.too-soon":
    "Keep peppers out of this bed in {season}: {crop} stood here in {last}. They may come back in {from}.",
  "rotation.decision.too-soon-standing":
    "Peppers stand here too soon: {crop} stood here in {last}, and the rest was over in {from}. Watch them.",

  "rotation.step.plant": "Put the peppers of {season} here.",
  "rotation.step.rest-after":
    "When they are done the bed rests from peppers and all hosts for {years, plural, one {# season} other {# seasons}}: peppers again in {back}.",
  "rotation.step.elsewhere": "Give the peppers a bed that has rested.",
  "rotation.step.instead":
    "Grow what keeps none of these alive: cabbage and its kin, onions, lettuce, carrots, sweet corn, grain or grass.",
  "rotation.step.if-anyway":
    "If they must stand here: raise the bed so that rain is gone within a day, keep soil off leaves with mulch, and bring no soil from here to clean beds.",
  "rotation.step.watch":
    "Look along the bed after each heavy rain. A plant that wilts with a dark stem at the soil comes out with its roots, and a sample goes to a plant clinic.",
  "rotation.step.drain": "See that no water stands in the bed for two days: blight begins there.",
  "rotation.step.grouping":
    "Keep each season's peppers together: with a rest of {years, plural, one {# season} other {# seasons}} they take one bed in {of}, and all other beds rest.",
  "rotation.step.write-down": "Write down each season what stood here, and any disease that was found.",

  "rotation.ends": "What is written down for this bed can change it; so can a disease that is found.",

  "rotation.stakes.found":
    "In a wet year a quarter of a crop and more is lost where the disease is in the ground.",
  "rotation.stakes.suspected":
    "Hosts stood here less than {years, plural, one {# season} other {# seasons}} ago. Nobody knows whether the disease is there.",
  "rotation.stakes.none": "Nothing of this season hangs on it any more.",

  "rotation.limit.grouping":
    "Standing together in one season and standing in one place for years are two things. Plants of one variety side by side are easier to work; the same bed year after year feeds their diseases.",
  "rotation.limit.reading-shortest":
    "Sources give a shortest and a longest rest. The shortest holds here, and the longest where that disease was found in the bed; the office can choose the longest for all.",
  "rotation.limit.reading-longest":
    "Sources give a shortest and a longest rest. The office chose the longest for all beds.",
  "rotation.limit.beans":
    "Sources differ about beans: one calls them hosts of Phytophthora blight, an older one does not. They count as hosts here.",
  "rotation.limit.lasting":
    "Rest makes disease less likely. Spores of blight and wilt outlast it, water carries them from bed to bed, and drainage matters more.",
  "rotation.limit.without-interval":
    "For {disease}, which was found here, no rest in years was found published. This answer does not cover it.",

  "rotation.change.clinic": "A plant clinic's word on what was found in this bed, or that nothing was.",
  "rotation.change.choice": "The office choosing the other published rest.",

  "rotation.table.title": "What stood here, and the rest each disease asks for",
  "rotation.table.disease": "Because of",
  "rotation.table.last": "Last host",
  "rotation.table.season": "In",
  "rotation.table.rested": "Seasons without a host",
  "rotation.table.needed": "Seasons asked for",
  "rotation.table.verdict": "Peppers",
  "rotation.table.none": "none on record",
  "rotation.table.year": "{year}",
  "rotation.table.clear": "may stand here",
  "rotation.table.too-soon": "not before {from}",
  "rotation.table.unknown": "record too short",
};
