/** What rules say about a choice that is tried, in English. Keys start with `what-if`. */
export const whatIf: Record<string, string> = {
  "what-if.not.refused":
    "What is stored about this planting cannot be read by the rule; its draft says what to mend.",
  "what-if.not.no-valve": "The bed hangs on no valve that Pith knows.",
  "what-if.not.not-out": "The plants do not stand in the bed yet.",

  "what-if.cover.none": "in the open",
  "what-if.cover.fleece": "under a light row cover",
  "what-if.cover.low-tunnel": "under a low tunnel",
  "what-if.cover.fleece-and-low-tunnel": "under a row cover with a low tunnel over it",
  "what-if.cover.high-tunnel": "in the high tunnel",

  "what-if.set-out.chance":
    "Set out on {day} {cover}: {beyond} chance (between {low} and {high}) of more cold in two weeks than the plants may meet; {accepted} is accepted. Frost: {frost}, of which {frostAccepted} is accepted.",
  "what-if.set-out.dose":
    "In the middle year that is {middle} below {floor}, in a cold one {cold}; {allowed} is allowed.",

  "what-if.depth.as-ruled": "To bury {tried} of stem is what the rule advises here.",
  "what-if.depth.less":
    "To bury {tried} is less than the {ruled} the rule advises. It harms no plant; a leggy one wants a stake.",
  "what-if.depth.deeper": "To bury {tried} is deeper than the {ruled} the rule allows here.",
  "what-if.depth.too-deep": "To bury {tried} is past the first true leaf: {most} is the most on any plant.",

  "what-if.topping.ripe-left":
    "With the tip left: first ripe fruit about {likely}, between {low} and {high}.",
  "what-if.topping.ripe-taken":
    "With the tip taken: first ripe fruit about {likely}, between {low} and {high}.",
  "what-if.topping.never-left": "With the tip left, no ripe fruit comes in a middle year of this season.",
  "what-if.topping.late-left":
    "With the tip left: first ripe fruit about {likely} in a middle year, in a late one none this season.",
  "what-if.topping.never-taken": "With the tip taken, no ripe fruit comes in a middle year of this season.",
  "what-if.topping.late-taken":
    "With the tip taken: first ripe fruit about {likely} in a middle year, in a late one none this season.",
  "what-if.topping.chance-left":
    "Tip left: {chance} chance that it is ripe before the first frost; {wanted} is asked for.",
  "what-if.topping.chance-taken":
    "Tip taken: {chance} chance that it is ripe before the first frost; {wanted} is asked for.",

  "what-if.water.line":
    "With {withheld} withheld the ground dries until {line} is missing before each watering; {raw} is what plants bear without harm.",
  "what-if.water.loss":
    "Held from {from} to {until} it would cost about {loss} of the yield {plantings, plural, one {of the planting} other {of all # plantings}} on this valve.",
  "what-if.water.kg": "At the yield goal that is {kg} of fruit.",

  "what-if.potash.left":
    "With that {given} of potash is given of the {need} the season needs; {left} is left to give.",
  "what-if.potash.over":
    "With that {given} of potash is given where the season needs {need}: {over} too much.",
  "what-if.potash.above-most":
    "With that {given} of potash is given; no published sheet goes above {most} a year.",
  "what-if.potash.unread":
    "With that {given} of potash is given. How much the season needs is not known: no soil test tells.",
  "what-if.potash.as-held": "The dose is {kg} of {material} from the shed on this bed.",
  "what-if.potash.as-usual":
    "The dose would be {kg} of {material} on this bed; the shed holds no potash this planting may have.",
  "what-if.potash.salt":
    "Along the rows it salts the ground like {salt} of sodium nitrate; the office set no limit.",
  "what-if.potash.salt-within":
    "Along the rows it salts the ground like {salt} of sodium nitrate; the office allows {most} a season.",
  "what-if.potash.salt-over":
    "Along the rows it salts the ground like {salt} of sodium nitrate, more than the {most} the office allows a season.",
  "what-if.potash.alone":
    "Here the shed is this planting’s alone. In the draft it is shared out over the whole farm.",

  "what-if.ash.none": "No ash is tried.",
  "what-if.ash.brings":
    "{kg} on this bed brings {k2oLow} to {k2oHigh} of potash, and limes like {limeLow} to {limeHigh} of pure lime.",
  "what-if.ash.ph": "The soil is at pH {ph} and would come to {low} to {high}.",
  "what-if.ash.ph-above":
    "The soil is at pH {ph} and could come to {high} (at least {low}): above pH {ceiling} no ash should be given.",
  "what-if.ash.ph-unknown":
    "The soil is at pH {ph}. Where ash would take it cannot be told from this test: it has no buffer pH that can be turned round.",
  "what-if.ash.within-cap":
    "With the past year’s that is {all} of ash; the strictest source allows {most} a year.",
  "what-if.ash.over-cap":
    "With the past year’s that is {all} of ash, more than the {most} a year the strictest source allows.",

  "what-if.chart.potash": "Potash of the season by what is given today",
  "what-if.chart.dose": "potash given today",
  "what-if.chart.given": "potash given this season",
  "what-if.chart.need": "what the season needs",
  "what-if.chart.most": "most in any published sheet",
  "what-if.chart.tried": "as tried",
  "what-if.chart.ph": "Soil pH by ash",
  "what-if.chart.ash": "ash",
  "what-if.chart.ph-axis": "pH",
  "what-if.chart.ph-low": "by the least lime the ash may hold",
  "what-if.chart.ph-high": "by the most",
  "what-if.chart.ceiling": "no ash above",

  "what-if.not.past": "{day} has gone by: choose another day.",
  "what-if.not.nothing": "Nothing is tried that is not so already.",

  "what-if.do.set-out": "Set these plants out on {day}, {cover}.",
  "what-if.do.cover": "Have the bed {cover} on the day the plants go out.",
  "what-if.do.water": "Hold back {withheld} of the water: from today give {given} of what the plants use.",
  "what-if.do.water-full": "Give the water in full again from today.",
  "what-if.do.potash": "Give {dose} of potash today: {kg} of {material} on this bed.",
  "what-if.do.ash": "Spread {dose} of wood ash today: {kg} on this bed.",
  "what-if.do.depth": "Bury {cm} of stem when you set these plants.",
  "what-if.do.depth-none": "Bury no stem: set these plants to the top of the root ball.",
  "what-if.do.tips-none": "Leave the tips of these plants in.",
  "what-if.do.tips-half": "Take the tip out of every other plant.",
  "what-if.do.tips-all": "Take the tip out of each of these plants.",

  "what-if.ends": "Ask again when anything about the planting changes.",
  "what-if.stakes": "Your agent chose this after trying it on the planting’s own numbers.",
  "what-if.limit.choice":
    "This is your agent’s choice. Where a rule says otherwise, its own answer stands beside it in the table.",
  "what-if.change.numbers": "A new soil test, count, forecast or record may make the rules answer otherwise.",

  "what-if.table.reckoned": "What was reckoned",
  "what-if.table.said": "By the rules of this choice",
  "what-if.table.rules": "What the rules say",
  "what-if.table.question": "About",
  "what-if.table.as-is": "As things are",
  "what-if.table.tried": "With this choice",
  "what-if.rule.set-out": "Setting out",
  "what-if.rule.setting-depth": "Depth",
  "what-if.rule.topping": "Tips",
  "what-if.rule.hotter": "Less water on purpose",
  "what-if.rule.irrigate": "Water",
  "what-if.rule.feeding": "Food",
  "what-if.rule.wood-ash": "Wood ash",
};
