/** What the shed says, in English. Keys start with the rule's id. */
export const shed: Record<string, string> = {
  "shed.not.no-demands": "No planting of this farm has a need worked out that the shed could serve.",
  "shed.not.nothing-asked": "No planting asks for anything more from the shed.",
  "shed.missing.shed": "What the shed holds, and what can be bought at which price and in which bag.",
  "shed.missing.shed-moves":
    "{plantings, plural, one {One planting still needs} other {# plantings still need}} food, and no material is written down.",

  "shed.decision.buy": "Buy for {cost}: with what the shed holds that feeds all plantings at least cost.",
  "shed.decision.buy-unpriced":
    "Buy for {cost}, and what has no price here besides: that feeds all plantings.",
  "shed.decision.in-hand": "Buy nothing: the shed holds what all plantings still need.",
  "shed.decision.in-hand-unpriced": "Buy nothing: the shed holds what all plantings still need.",
  "shed.decision.cannot-be-met":
    "Not everything can be met: {short} of {plantings, plural, one {# planting} other {# plantings}} {short, plural, one {goes} other {go}} short. The plan that falls short least costs {cost}.",
  "shed.decision.cannot-be-met-unpriced":
    "Not everything can be met: {short} of {plantings, plural, one {# planting} other {# plantings}} {short, plural, one {goes} other {go}} short. The plan that falls short least costs {cost}, and what has no price here besides.",

  "shed.step.buy-bags":
    "Buy {bags, plural, one {# bag} other {# bags}} of {material} ({grade}), {bag} each: {cost}. {spare} of it stays over.",
  "shed.step.buy-loose": "Buy {kg} of {material} ({grade}): {cost}.",
  "shed.step.hours":
    "Giving it takes {givings, plural, one {# giving} other {# givings}} at least, about {hours} by what one took here.",
  "shed.step.labour":
    "Giving it takes {givings, plural, one {# giving} other {# givings}} at least, about {hours} by what one took here: {wages} at the office's wage, {sum} with the materials.",
  "shed.change.lacks-hours":
    "Nobody wrote down how long giving takes here, so the work is in no cost: minutes beside an application would say it.",
  "shed.change.lacks-wage": "The office has set no wage, so the hours have no price.",
  "shed.step.unpriced":
    "{kg} more of {material} ({grade}) is needed than the shed holds. What that costs is not written down: write the price down.",
  "shed.step.uncounted":
    "{kg} of {material} ({grade}) is needed. How much is there, and what more would cost, is not written down: write it down.",
  "shed.step.take":
    "Take {kg} of {material} ({grade}) from the shed; {left} is left. It is paid for and costs nothing here.",
  "shed.step.short": "Planting {planting} goes short of {rate} of {nutrient}.",
  "shed.step.conflicts":
    "Which demands cannot all hold, and the smallest change with which all fits, stand in the tables beneath.",

  "shed.condition.floor":
    "at least {rate} of {nutrient} for planting {planting}{others, plural, =0 {} one { and one like it} other { and # like it}}",
  "shed.condition.ceiling":
    "at most {rate} of {nutrient} for planting {planting}{others, plural, =0 {} one { and one like it} other { and # like it}}",
  "shed.condition.label":
    "the label's most of {material} ({grade}), {rate}, on planting {planting}{others, plural, =0 {} one { and one like it} other { and # like it}}",
  "shed.condition.stock": "{kg} of {material} ({grade}) in the shed, and no more to buy at a known price",
  "shed.condition.chloride":
    "at most {value} of chloride on planting {planting}{others, plural, =0 {} one { and one like it} other { and # like it}}",
  "shed.condition.salt":
    "at most {value} of salt, as sodium nitrate, on planting {planting}{others, plural, =0 {} one { and one like it} other { and # like it}}",
  "shed.condition.ammonium":
    "at most {value} % of the nitrogen as ammonium or urea on planting {planting}{others, plural, =0 {} one { and one like it} other { and # like it}}",
  "shed.condition.ca-mg":
    "at least {value} of calcium to one of magnesium, by equivalents, on planting {planting}{others, plural, =0 {} one { and one like it} other { and # like it}}",
  "shed.condition.ca-k":
    "at least {value} of calcium to one of potassium, by equivalents, on planting {planting}{others, plural, =0 {} one { and one like it} other { and # like it}}",

  "shed.why.in-stock": "In: it is in the shed and paid for.",
  "shed.why.in-bought":
    "In: {count, plural, =0 {it eases a bound at least cost} other {with the others it brings {nutrients} at least cost}}.",
  "shed.why.in-unpriced": "In: nothing with a known price can do it without.",
  "shed.why.stock-used-up": "All of it is used.",
  "shed.why.label-reached": "The label allows no more.",
  "shed.why.not-allowed": "Out: {why}.",
  "shed.why.not-listed": "Out: no planting lists it among what may be used there.",
  "shed.why.no-stock-no-price": "Out: none in the shed, and no price to buy it at.",
  "shed.why.no-price": "Out: its stock or its price is not known, and others can do it.",
  "shed.why.unknown-chloride":
    "Out: a planting limits chloride, and nothing says how much of it this holds. Its label or maker can say.",
  "shed.why.unknown-salt":
    "Out: a planting limits salt, and no salt index is known of this. Its label or maker can say.",
  "shed.why.brings-nothing": "Out: it brings nothing that is asked for.",
  "shed.why.too-dear": "Out: a kilogram costs {by} more than it would save.",
  "shed.why.whole-bag": "Out: a part of a bag would pay, a whole bag does not.",
  "shed.why.bound": "Out: it would press against a limit that is reached already:",
  "shed.why.not-needed": "Out: what it brings is covered.",
  "shed.left-out.another-chosen": "another material was chosen there",
  "shed.left-out.not-certified": "it may not be used on certified ground",
  "shed.left-out.proof-expired": "the proof of its use on certified ground has run out",
  "shed.left-out.no-proof": "nothing says until when its use on certified ground is proven",
  "shed.left-out.not-soluble": "it does not dissolve fully and may not go through drip lines",
  "shed.left-out.raw-manure":
    "it is raw manure, spread before the plants; the manure rule says when it may still be",
  "shed.left-out.liming-material": "it limes the soil and is judged by soil pH",
  "shed.left-out.no-food": "it holds nothing that is asked for",
  "shed.left-out.soil-ph": "the soil's pH speaks against it",
  "shed.left-out.ash-with-ammonium":
    "it holds ammonium or urea, and ash or lime was spread there less than a month ago",

  "shed.ends": "A new price, a delivery, anything given, or a planting's changed need ends this.",
  "shed.stakes": "Money alone hangs on this; what a planting loses by going short its own feeding says.",

  "shed.limit.prices":
    "The prices are those written down here. Freight, storing and what else a material does are not in them, and the least cost is that of the materials: work is reckoned beside it.",
  "shed.limit.search":
    "Whole bags were searched through up to a set count: another plan may cost up to {gap} less. None costs less than {least}.",
  "shed.limit.weights":
    "Least short is counted as each shortfall's share of what is asked, by area; N, P2O5 and K2O weigh {main}, the others {others} (common practice).",

  "shed.change.prices": "Another price or another bag can make another mixture cheapest.",
  "shed.change.stock":
    "One kilogram more of {material} ({grade}) in the shed would save {worth}, if bags could be split.",

  "shed.planting": "Planting {planting}",
  "shed.material": "{material} ({grade})",
  "shed.nutrient": "{nutrient}",
  "shed.table.shares": "What each planting gets",
  "shed.table.planting": "planting",
  "shed.table.material": "material",
  "shed.table.amount": "amount",
  "shed.table.rate": "on cropped land",
  "shed.table.from-stock": "of it from the shed",
  "shed.table.why-title": "Why each material is in or out",
  "shed.table.why": "why",
  "shed.table.supplied": "Given and asked for",
  "shed.table.nutrient": "nutrient",
  "shed.table.least": "at least",
  "shed.table.most": "at most",
  "shed.table.given": "given",
  "shed.table.binding": "What holds the cost where it is",
  "shed.table.limit": "limit",
  "shed.table.by": "one more",
  "shed.table.saves": "saves, with these bags",
  "shed.table.saves-split": "saves, if bags could be split",
  "shed.unit.kg": "kg",
  "shed.unit.pct": "% of the nitrogen",
  "shed.unit.ratio": "in the ratio",
  "shed.table.conflicts": "What cannot all hold",
  "shed.table.nth": "conflict",
  "shed.table.together": "demands and limits",
  "shed.table.conflict":
    "{nth}: {count, plural, one {cannot be met by anything here} other {these # cannot all hold; without any one the others can}}",
  "shed.table.relaxation": "The smallest change with which all fits",
  "shed.table.change": "change",
  "shed.table.change-less": "{by} less",
  "shed.table.change-more": "{by} more",
  "shed.chart.materials": "Where each material comes from",
  "shed.chart.amount": "amount",
  "shed.chart.from-stock": "from the shed",
  "shed.chart.bought": "bought",
  "shed.chart.supplied": "{nutrient} given and asked for",
  "shed.chart.rate": "on cropped land",
  "shed.chart.given": "given",
  "shed.chart.least": "asked for",
};
