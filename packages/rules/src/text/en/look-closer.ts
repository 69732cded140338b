/** What look-closer says, in English. Keys start with the rule's id. */
export const lookCloser: Record<string, string> = {
  "look-closer.not.ended": "This planting was cleared.",
  "look-closer.not.unsown": "These seeds are not sown yet.",
  "look-closer.not.no-signs":
    "No signs are recorded for this planting. If plants look wrong, record what you see, on which part, where in the bed and how fast it came.",
  "look-closer.missing.signs":
    "Record what the sick plants show: the sign, the part of the plant, where in the bed they stand and how fast it came.",
  "look-closer.missing.move": "Without one sign every cause is as likely as the next.",

  "look-closer.decision.leading":
    "What was seen fits {first} best, ahead of {second}. Look closer before you act on it.",
  "look-closer.decision.several":
    "What was seen fits {first} and {second} about equally. Look closer before you act on either.",
  "look-closer.decision.several-more":
    "What was seen fits {count, plural, =3 {three} =4 {four} =5 {five} =6 {six} =7 {seven} =8 {eight} =9 {nine} other {#}} causes about equally: {causes}. Look closer before you act on any of them.",
  "look-closer.decision.unclear":
    "What was seen fits nothing this list knows well. Look again, and send a sample.",
  "look-closer.ends": "A new sign, a new look at the bed, or a laboratory's answer ends this.",

  "look-closer.step.no-picking":
    "Pick nothing here before {day}: the label of a spraying holds the harvest until then.",
  "look-closer.step.look-for":
    "Look for this today: {sign}. Guides tie it to {cause} more than to {other}. Record it if you find it.",
  "look-closer.step.note-part":
    "Record on which part it shows: old leaves, young leaves, stem, roots or fruit.",
  "look-closer.step.note-pattern":
    "Walk the bed and record where the plants stand: single, in a patch, in the low spot, at the edge, or everywhere alike.",
  "look-closer.step.note-speed": "Record how fast it came: overnight, in days, in weeks, or since planting.",
  "look-closer.step.photos":
    "{photos, plural, one {One photograph is} other {# photographs are}} attached: send them with the sample.",
  "look-closer.step.photograph":
    "Photograph a whole plant, the sign from close up, and the bed from its end.",
  "look-closer.step.sample-where":
    "Send or bring it to the plant diagnostic laboratory of your state's or region's university or extension service; ask first for its form and fee. Pack it the day you dig, keep it cool and out of the sun, add no water, and mail early in the week.",
  "look-closer.step.sample-today":
    "Send it today: if it is what it looks like, days count. Ask by telephone whether anything has to be reported.",
  "look-closer.step.sample-if-spreading":
    "If more plants show it in three days, send the sample. {cause} is a guess until then.",

  "look-closer.safe.dry-plants":
    "Keep out of the bed while leaves are wet, and work it last: hands and clothes carry disease from plant to plant.",
  "look-closer.safe.hands": "Wash hands and tools with soap before and after this bed.",
  "look-closer.safe.rogue":
    "Put the worst plants, roots and all, into a closed bag where they stand and take them off the field. Not on the compost. Keep back what the sample needs.",
  "look-closer.safe.pick-off":
    "Pick off spoilt and dropped fruit and take it out of the field in a closed bag.",
  "look-closer.safe.hand-pick":
    "Look in the early morning and at dusk, pick off what you find and drop it in soapy water.",
  "look-closer.safe.wash-off":
    "On a dry morning wash the undersides of the leaves with a firm jet of plain water, so that they dry by noon. Leave ladybirds and lacewings alone.",
  "look-closer.safe.weeds": "Pull weeds in and around the bed: many harbour the same pests and viruses.",
  "look-closer.safe.collar":
    "Set a paper or cardboard collar around each young stem, 2 to 3 fingers deep and high, and search the soil beside cut plants.",
  "look-closer.safe.drain":
    "Let standing water out: open the row ends and any low spot. Give no water there until the soil crumbles.",
  "look-closer.safe.splash":
    "Water the soil and never the leaves; where only sprinklers serve, water early so that leaves dry soon.",
  "look-closer.safe.water-even":
    "Water evenly, by the watering plan: no long pause, and no drench after one.",
  "look-closer.safe.dig":
    "Dig beside a sick and a sound plant, one spade deep. Dry crumbs want water; wet soil that smells, or brown roots, wants none.",
  "look-closer.safe.shade": "Keep every leaf on, and hang light shade over bare fruit in the hot hours.",
  "look-closer.safe.cover":
    "Keep a light cover at hand for the next nights or for small plants, and open it before the sun is on it.",
  "look-closer.safe.windbreak":
    "Set up a windbreak, tie the plants to stakes, and firm the soil at loosened stems.",
  "look-closer.safe.soil-test":
    "Take a soil sample from the sick and one from the sound part of the bed, and have both tested.",
  "look-closer.safe.leaf-test":
    "Have leaves or sap tested before you feed more: yellow old leaves have other causes too.",
  "look-closer.safe.no-more-salt": "Give no fertiliser, ash or manure here until salt has been measured.",
  "look-closer.safe.drift":
    "Pull nothing yet. Write down the day, the wind, who sprayed nearby and which other plants show it, and pick nothing here until the authority for pesticides or your adviser has said that it may be eaten or sold.",

  "look-closer.sample.whole-plant":
    "For the sample dig, never pull, three plants: one just beginning, one further on, one sound. Bag the roots with their soil and tie the bag at the stem; wrap the tops in dry paper.",
  "look-closer.sample.leaves":
    "For the sample take a dozen leaves with their stalks, from first signs to advanced ones, and a few sound ones, between dry paper in a bag.",
  "look-closer.sample.fruit":
    "For the sample take three or four fruit that begin to show it and one sound one, each in dry paper.",
  "look-closer.sample.insects":
    "For the sample catch a few of them in a small jar, with a leaf or fruit they damaged. Ask the laboratory how it wants them kept.",
  "look-closer.sample.soil-or-leaf-test":
    "For the sample take soil from the root zone at ten spots of the sick part, mixed, and the same from the sound part.",

  "look-closer.stakes.urgent": "If it is one that spreads, it can take the bed within a week or two.",
  "look-closer.stakes.living": "What lives on plants goes on from plant to plant.",
  "look-closer.stakes.else": "What is lost is lost; the cause may still be at work.",

  "look-closer.limit.points":
    "The points order possibilities and are no chances: guides say often or sometimes, and how common each cause is here nobody has published. No sign, weather or record settles it; only a laboratory can.",
  "look-closer.limit.two-at-once":
    "Each sign is weighed as if it came alone, and all signs as if one cause made them. Two troubles at once, or one this list does not know, mislead it.",
  "look-closer.limit.old":
    "The newest sign is of {day}, {age} ago. Look again: the picture has changed since.",
  "look-closer.limit.set-aside":
    "{signs, plural, one {One sign} other {# signs}} from more than {gap} before the newest {signs, plural, one {is} other {are}} set aside.",
  "look-closer.limit.sheltered":
    "When it began the plants stood indoors, or under a tunnel or house: the weather outside was not weighed.",
  "look-closer.limit.weather": "Of the {days} days before the first sign, weather is known of {known}.",

  "look-closer.change.laboratory": "A laboratory's answer, which comes before all of this.",
  "look-closer.change.sign": "Any further sign, recorded as it was seen.",
  "look-closer.change.pattern": "Where in the bed the sick plants stand.",
  "look-closer.change.weather": "Daily temperatures and rain of the fortnight before the first sign.",

  "look-closer.chart.title": "How well each cause fits what was seen and recorded",
  "look-closer.chart.cause": "Possible cause",
  "look-closer.chart.points": "Points",
  "look-closer.table.title": "What speaks for and against each, and what nobody looked at",
  "look-closer.column.cause": "Possible cause",
  "look-closer.column.what": "What",
  "look-closer.column.speaks": "Speaks",
  "look-closer.column.points": "Points",
  "look-closer.speaks.for": "for",
  "look-closer.speaks.against": "against",
  "look-closer.speaks.neither": "neither way",
  "look-closer.speaks.open": "not looked at, or not known",
  "look-closer.item.sign": "Sign: {what}",
  "look-closer.item.part": "Part of the plant: {what}",
  "look-closer.item.pattern": "Where in the bed: {what}",
  "look-closer.item.speed": "How fast: {what}",
  "look-closer.item.weather": "Weather before it: {what}",
  "look-closer.item.clue": "Records: {what}",
  "look-closer.item.history": "Found in this bed before: {what}",

  "look-closer.cause.aphids": "aphids",
  "look-closer.cause.thrips": "thrips",
  "look-closer.cause.flea-beetles": "flea beetles",
  "look-closer.cause.pepper-weevil": "pepper weevil",
  "look-closer.cause.pepper-maggot": "pepper maggot",
  "look-closer.cause.corn-borer": "corn borer",
  "look-closer.cause.cutworms": "cutworms",
  "look-closer.cause.hornworms": "hornworms",
  "look-closer.cause.spider-mites": "spider mites",
  "look-closer.cause.broad-mites": "broad mites",
  "look-closer.cause.damping-off": "damping-off",
  "look-closer.cause.bacterial-leaf-spot": "bacterial leaf spot",
  "look-closer.cause.phytophthora-blight": "Phytophthora blight",
  "look-closer.cause.verticillium-wilt": "Verticillium wilt",
  "look-closer.cause.southern-blight": "southern blight",
  "look-closer.cause.anthracnose": "anthracnose",
  "look-closer.cause.mosaic-virus": "a mosaic virus",
  "look-closer.cause.cucumber-mosaic": "cucumber mosaic virus",
  "look-closer.cause.spotted-wilt": "spotted wilt virus",
  "look-closer.cause.short-nitrogen": "too little nitrogen",
  "look-closer.cause.short-phosphorus": "too little phosphorus",
  "look-closer.cause.short-potassium": "too little potassium",
  "look-closer.cause.short-magnesium": "too little magnesium",
  "look-closer.cause.short-calcium": "too little calcium",
  "look-closer.cause.short-iron": "too little iron or manganese",
  "look-closer.cause.salt": "salt",
  "look-closer.cause.herbicide-drift": "weed killer on the wind or in manure",
  "look-closer.cause.sunscald": "sunscald",
  "look-closer.cause.blossom-end-rot": "blossom-end rot",
  "look-closer.cause.cold": "cold",
  "look-closer.cause.heat": "heat",
  "look-closer.cause.drought": "dry soil",
  "look-closer.cause.waterlogging": "drowned roots",
  "look-closer.cause.wind": "wind",

  "look-closer.sign.wilting-by-day": "plants hang by day and stand up by morning",
  "look-closer.sign.wilting-for-good": "plants hang at dawn as well",
  "look-closer.sign.leaves-yellow-old": "old leaves yellow",
  "look-closer.sign.leaves-yellow-young": "young leaves yellow",
  "look-closer.sign.leaves-yellow-between-veins": "leaves yellow between green veins",
  "look-closer.sign.leaves-mottled": "leaves mottled light and dark",
  "look-closer.sign.leaves-curled": "leaves curled or puckered",
  "look-closer.sign.leaves-narrow": "leaves narrow like straps",
  "look-closer.sign.leaf-spots-water-soaked": "small spots on leaves that look wet or greasy",
  "look-closer.sign.leaf-spots-ringed": "rings or ringed spots on leaves",
  "look-closer.sign.leaf-edges-brown": "leaf edges brown and dry",
  "look-closer.sign.leaves-bronzed": "leaves bronzed",
  "look-closer.sign.leaves-with-holes": "holes in leaves",
  "look-closer.sign.leaves-purple": "leaves purple",
  "look-closer.sign.leaves-dropping": "leaves dropping",
  "look-closer.sign.sticky-leaves": "leaves sticky, or black with mould on the stickiness",
  "look-closer.sign.fine-webbing": "fine webs under leaves",
  "look-closer.sign.stem-black-at-soil": "stem dark at the soil",
  "look-closer.sign.stem-inside-brown": "stem brown inside when cut",
  "look-closer.sign.stem-chewed-through": "stems chewed through",
  "look-closer.sign.roots-brown": "roots brown or few",
  "look-closer.sign.growing-point-dead": "growing point dead",
  "look-closer.sign.plants-stunted": "plants stunted",
  "look-closer.sign.flowers-dropping": "flowers or buds dropping",
  "look-closer.sign.fruit-end-dark": "a dark, dry patch at the fruit's blossom end",
  "look-closer.sign.fruit-bleached": "a pale, papery patch on the fruit's sunny side",
  "look-closer.sign.fruit-spots-raised": "raised, scabby spots on fruit",
  "look-closer.sign.fruit-sunken-spots": "sunken spots on fruit",
  "look-closer.sign.fruit-rings": "rings on fruit",
  "look-closer.sign.fruit-holes": "holes in fruit, or maggots inside",
  "look-closer.sign.fruit-water-soaked": "soft, wet-looking patches on fruit",
  "look-closer.sign.fruit-misshapen": "fruit misshapen or rough",
  "look-closer.sign.insects-seen": "insects on the plants",
  "look-closer.sign.eggs-seen": "eggs on the plants",
  "look-closer.sign.mites-seen": "specks that walk, through a lens",
  "look-closer.sign.leaves-stippled": "leaves finely speckled pale",
  "look-closer.sign.leaves-silvery": "silvery streaks or undersides of leaves",
  "look-closer.sign.leaves-torn": "leaves torn or shredded",
  "look-closer.sign.leaves-dark-limp": "leaves dark, limp and glassy after a night",
  "look-closer.sign.seedlings-fallen": "seedlings fallen over at the soil",
  "look-closer.sign.white-threads-at-soil": "white threads, or tan seed-like balls, on the stem at the soil",
  "look-closer.sign.stem-bored": "a hole in the stem, or sawdust at it",

  "look-closer.part.old-leaves": "old leaves",
  "look-closer.part.young-leaves": "young leaves",
  "look-closer.part.all-leaves": "all leaves",
  "look-closer.part.stem": "stem",
  "look-closer.part.roots": "roots",
  "look-closer.part.flowers": "flowers",
  "look-closer.part.fruit": "fruit",
  "look-closer.part.whole-plant": "whole plant",
  "look-closer.pattern.single-plants": "single plants",
  "look-closer.pattern.patch": "a patch",
  "look-closer.pattern.low-spot": "the low spot",
  "look-closer.pattern.edge": "the edge",
  "look-closer.pattern.along-row": "along a row",
  "look-closer.pattern.windward": "the side the wind comes from",
  "look-closer.pattern.everywhere": "everywhere alike",
  "look-closer.speed.overnight": "overnight",
  "look-closer.speed.days": "in days",
  "look-closer.speed.weeks": "in weeks",
  "look-closer.speed.since-planting": "since planting",
  "look-closer.weather.warm-wet": "warm and wet",
  "look-closer.weather.hot-wet": "hot and wet, with warm nights",
  "look-closer.weather.hot-dry": "hot and dry",
  "look-closer.weather.cool": "cool",
  "look-closer.weather.cool-wet": "cool and wet",
  "look-closer.weather.dry": "dry, and not watered",
  "look-closer.weather.soaked": "rain that saturates soil",
  "look-closer.weather.hot": "hot days",
  "look-closer.weather.cold": "cold nights",
  "look-closer.weather.uneven-water": "drought, heat or drenching",
  "look-closer.weather.windy": "strong wind",
  "look-closer.clue.herbicide": "a spraying against weeds in or beside this bed",
  "look-closer.clue.residue-in-manure": "manure or compost in the last year",
  "look-closer.clue.insects-sprayed": "a spraying against insects, after which mites may rise",
  "look-closer.clue.salty": "salt by soil or water test",
  "look-closer.clue.short-K": "potassium by soil test",
  "look-closer.clue.short-P": "phosphorus by soil test",
  "look-closer.clue.short-Mg": "magnesium by soil test",
  "look-closer.clue.short-Ca": "calcium by soil test",
  "look-closer.clue.nitrogen-given": "nitrogen given in the four weeks before",
  "look-closer.clue.high-ph": "the soil's pH, lime and ash",
  "look-closer.clue.host-before": "crops in this bed before that carry it",
  "look-closer.clue.newly-set-out": "newly set out, or not yet",
  "look-closer.history.phytophthora-blight": "Phytophthora blight",
  "look-closer.history.verticillium-wilt": "Verticillium wilt",
  "look-closer.history.bacterial-leaf-spot": "bacterial leaf spot",
  "look-closer.history.southern-blight": "southern blight",
};
