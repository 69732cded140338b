/** What the season record says, in English. */
export const seasonRecord: Record<string, string> = {
  "season-record.missing.no-certifier":
    "The bed is certified or in transition, and nobody wrote down by whom.",
  "season-record.missing.no-soil-test": "No soil test of this bed in {season}.",
  "season-record.missing.no-water-test": "No test of the water in {season}.",
  "season-record.missing.no-nitrate":
    "The water's nitrate was not measured for every watering: the nitrogen it brought is missing from the balance.",
  "season-record.missing.no-lot": "{material} was given without a lot.",
  "season-record.missing.no-labour": "Nobody wrote down how long giving {material} took.",
  "season-record.missing.use-unknown":
    "{material} was given on certified ground, and whether it may be used there is not written down.",
  "season-record.missing.use-prohibited": "{material} was given on certified ground, where it is prohibited.",
  "season-record.missing.use-restricted":
    "{material} was given on certified ground, where it is restricted: have the certifier's conditions at hand.",
  "season-record.missing.no-proof":
    "{material} is allowed on certified ground, and its proof is not written down.",
  "season-record.missing.proof-ended": "The proof for {material} ended on {until}, before it was given.",
  "season-record.missing.compost-unknown":
    "Whether {material} was composted to the rule is not written down: it counts as raw.",
  "season-record.missing.no-registration":
    "{product} was sprayed without its registration number written down.",
  "season-record.missing.no-amount": "How much water {valve} gave is not known.",
  "season-record.missing.no-harvest-lot": "{planting} was picked without a lot.",
  "season-record.missing.no-marketable":
    "How much of the {planting} picked was marketable is not written down.",
  "season-record.missing.no-hours": "Nobody wrote down how long picking {planting} took.",
  "season-record.missing.more-than-picked":
    "Marketable and culls of {planting} are more than what was picked.",
  "season-record.missing.not-set-out":
    "{planting} was picked, and the day it was set out is not written down.",
  "season-record.missing.interval-not-kept":
    "Picked before the interval was over: {what} of {given} allows picking from {from}.",
  "season-record.missing.unanswered":
    "Whether this was done is unknown, because nobody answered the advice for {subject}: {decision}",
  "season-record.missing.no-records":
    "Something stood in this bed, and nothing done to it in {season} is written down.",
  "season-record.note.rates":
    "Rates are per hectare of cropped land, alleys included. What went on more ground than the bed counts with the bed's share.",
  "season-record.note.water":
    "Water is what a meter said, else minutes times the valve's flow, shared over the valve's beds by their cropped ground as they lie today.",
  "season-record.note.removal":
    "What left with the fruit is reckoned from the published contents of bell pepper fruit (UC, at 50,000 lb an acre); other types are taken to be like it. What leached, ran off or went into the air is not in the balance.",
  "season-record.note.culls":
    "All that was picked counts as leaving the field. Culls left on the bed took nothing away.",
  "season-record.note.labour":
    "Hours are those written down. Where some are missing the sum is a least, and how many are missing stands beside it.",
  "season-record.note.people": "The name is of who wrote it down.",
  "season-record.note.trace":
    "What went onto a bed counts for all that was picked from it later, whichever planting it was meant for.",
};
