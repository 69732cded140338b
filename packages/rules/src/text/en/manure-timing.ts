/** What manure-timing says, in English. Keys start with the rule's id. */
export const manureTiming: Record<string, string> = {
  "manure-timing.not.ended": "The plants have been cleared.",
  "manure-timing.not.none": "No manure was given here, and none lies in the shed.",
  "manure-timing.not.composted":
    "Only composted manure was given or lies in the shed: no interval before harvest holds for it. Keep the record of the pile: its temperatures day by day and each turning. Without that record it counts as raw.",
  "manure-timing.not.passed":
    "The interval after the raw manure is over: since {day} fruit may be picked, as far as the manure goes.",
  "manure-timing.not.standing":
    "Raw manure lies in the shed and the plants stand in the bed. Never give it to a standing crop; keep it for next year's ground or compost it to the rule.",
  "manure-timing.decision.picked-too-early":
    "Fruit was picked on {pick}, before it may be: nothing is to be picked before {from}.",
  "manure-timing.decision.hold-harvest":
    "Do not pick before {from}: raw manure was given, and {days} days must pass.",
  "manure-timing.decision.clear-at-harvest":
    "The raw manure is early enough: the first picking is expected about {pick}, and from {from} fruit may be picked.",
  "manure-timing.decision.spread-by":
    "Raw {what} may be worked in here up to {by}, no later: the first picking is expected about {pick}.",
  "manure-timing.decision.too-late":
    "Too late for raw {what} here: it had to be worked in by {by} for a first picking about {pick}.",
  "manure-timing.step.counted":
    "Raw manure was given on {given}. Count {days} days from the day it was worked in: the first day to pick is {from}. If it was worked in later than noted, tell us that day.",
  "manure-timing.step.assumed-raw":
    "Nobody said whether the {what} was composted, so it counts as raw. If it was, note it, and keep the record of the pile.",
  "manure-timing.step.assumed-raw-shed":
    "Nobody said whether the {what} in the shed is composted, so it counts as raw.",
  "manure-timing.step.broken-us-certified":
    "Keep what was picked from {pick} on apart, do not sell it as certified, and call your certifier today. Pick nothing before {from}.",
  "manure-timing.step.broken-office-days":
    "Keep what was picked from {pick} on apart and ask the office for produce safety before any of it is sold or eaten raw. Pick nothing before {from}.",
  "manure-timing.step.on-crop":
    "It was given on {given} to plants that already stood here. Manure that touched leaves or fruit is not made safe by waiting: do not eat or sell fruit that it touched.",
  "manure-timing.step.staked":
    "The plants are on stakes. If your certifier agrees in writing that no fruit hangs or is splashed near the soil, {days} days are enough: from {from}. We count the longer time, because low fruit of this type hangs.",
  "manure-timing.step.low-fruit":
    "We count fruit of this type on stakes as clear of the soil. If any hangs low or is splashed with soil, {days} days hold for it.",
  "manure-timing.step.early-fruit":
    "Fruit that ripens before {from}: take it off and leave it as waste, or let it hang until then. Do not eat, sell, give away or feed it.",
  "manure-timing.step.rule-us-certified":
    "This is the law on certified ground in the United States (7 CFR 205.203(c)): {days} days here. Your certifier decides in doubt.",
  "manure-timing.step.rule-office-days":
    "Your own produce-safety rule and your buyers come first. Where they set no days, {days} days are taken here as a prudent default, the same as on certified ground.",
  "manure-timing.step.not-on-crop": "More raw {what} lies in the shed: never give it to a standing crop.",
  "manure-timing.step.spread-by":
    "Work raw {what} in by {day}: that leaves {days} days to the first picking about {pick}. A later spreading moves the first picking back, day for day.",
  "manure-timing.step.work-in":
    "Work it in the same day. Left lying it loses a third of its ammonium to the air, and the days to harvest count only from when it is worked in.",
  "manure-timing.step.rain":
    "{rain} of rain is forecast by {day}. Spread after it and not before: it washes manure into ditches and wells.",
  "manure-timing.step.compost-instead":
    "Raw {what} worked in today would put off the first picking from about {pick} to {from}. Compost it to the rule, keep it for ground that rests, or give something else.",
  "manure-timing.step.compost-record":
    "Composted manure has no interval, if it was made so: carbon to nitrogen between 25 and 40 to 1, then {low} to {high} for 3 days in a vessel or a static aerated pile, or for 15 days in a windrow turned at least five times. Keep the record of temperatures and turnings; aged or stacked manure counts as raw.",
  "manure-timing.step.nitrogen":
    "{tonne} of this {what} give about {workedIn} of nitrogen in the first year worked in, {lying} left lying; {release} of what is bound comes free in the first year, some of the rest in the next two. Feeding counts it: enter it once as given.",
  "manure-timing.step.analyse":
    "Have this {what} analysed for dry matter, total and ammonium nitrogen: then the nitrogen it gives can be said.",
  "manure-timing.step.nitrate":
    "Its nitrate washes out easily: {inch} of water more than the soil holds can take {low} to {high} of nitrogen. Give no more than the crop takes up, and test after heavy rain.",
  "manure-timing.ends.harvest": "The first day on which may be picked, or more raw manure, ends this.",
  "manure-timing.ends.spread": "Setting out ends it, or another day of the first picking.",
  "manure-timing.stakes.held": "What ripens before the day may not be sold or eaten.",
  "manure-timing.stakes.would-hold": "Spread now, it would block what ripens in the next months.",
  "manure-timing.stakes.spread": "Spread later, the first picking moves back with it.",
  "manure-timing.stakes.clear": "Nothing is lost: the days are over before the first picking.",
  "manure-timing.limit.us-certified":
    "The interval is law and not a proof of safety: germs were found alive in soil after longer times.",
  "manure-timing.limit.office-days":
    "The Produce Safety Rule of the United States names no days where manure does not touch produce; elsewhere other rules hold. These days are a default and not a proof of safety.",
  "manure-timing.limit.worked-in":
    "The law counts from the day the manure is worked in. The day noted as given is taken for it.",
  "manure-timing.limit.maturity":
    "The first picking is reckoned from the seed list's days. A warm year brings it forward; then the day to pick still holds.",
  "manure-timing.limit.no-pick": "When the first fruit will be ripe is not known here.",
  "manure-timing.limit.upright":
    "That fruit of this type stands clear of the soil is common practice and not the law's word.",
  "manure-timing.change.composted": "Whether the manure was composted, with the record of the pile.",
  "manure-timing.change.maturity": "Days to maturity, as the seed list prints them.",
  "manure-timing.change.pick": "The day of the first picking, once it is there.",
  "manure-timing.change.staked": "Stakes, and your certifier's word that no fruit touches soil.",
  "manure-timing.change.office": "The produce-safety rule of your place and the days your buyers ask for.",
  "manure-timing.missing.maturity": "Days to maturity of this variety, as the seed list prints them.",
  "manure-timing.missing.set-out": "The day on which the plants are to go out.",
  "manure-timing.missing.moves":
    "Between a quick and a slow pepper the last day to work raw manure in moves from {early} to {late}.",
};
