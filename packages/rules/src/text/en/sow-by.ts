/** What sow-by says, in English. Keys start with the rule's id. */
export const sowBy: Record<string, string> = {
  "sow-by.not.ended": "This planting has ended.",
  "sow-by.not.sown": "These seeds are sown already.",
  "sow-by.not.overwintered": "These plants were kept over winter; there is nothing to sow.",
  "sow-by.not.no-date":
    "By past years no setting-out date within the accepted risk comes for plants sown now. Sow for next year, or plan a cover.",

  "sow-by.decision.sow": "Sow between {from} and {by} to set out on {out}.",
  "sow-by.decision.sow-earlier":
    "Sow by {by}, not on {sown}: later plants will not be ready to set out on {out}.",
  "sow-by.decision.sow-later":
    "Wait with sowing until {from}; sown on {sown}, plants would stand too long before {out}.",
  "sow-by.decision.too-late":
    "Too late for {out}: that took sowing by {by}. Sown today, plants are ready from {soonest}.",

  "sow-by.ends": "Sowing ends it, and so does another setting-out day.",

  "sow-by.stakes.delay": "Each day late is a day of the season.",
  "sow-by.stakes.late": "The day is missed already; each more takes from the season's end.",

  "sow-by.step.seeds":
    "Sow {seeds} seeds for {plants} plants: {germination} come up normal, {loss} are lost later, and this gives enough with a chance of {chance}.",
  "sow-by.step.emerge": "At {c} in the medium, day and night, seedlings show after about {days}.",
  "sow-by.step.warmer":
    "A medium at {c} saves about {days}. On a heat mat, measure in the medium, set a thermostat there, and mind the caution about mats.",
  "sow-by.step.cooler":
    "At this heat only {pct} come up normal. Near {c} they come as fast and more of them live.",
  "sow-by.step.late":
    "Sow today and set out later, or buy plants of the right age; do not skip hardening to win days.",
  "sow-by.step.pot-on":
    "Sown on the last day, pot on at the first or second true leaf, about {from} to {to}.",
  "sow-by.step.harden": "Harden them off from {day}.",
  "sow-by.step.out": "Set out on {day}, if the nights then allow it.",
  "sow-by.step.leaves":
    "Count leaves, not weeks: 6 to 8 true leaves, stocky, no open flower. Lift trays off the heat once most have come up.",

  "sow-by.missing.day":
    "The day the grower has in mind for setting out, or at least eight years of a nearby station's daily minima and maxima.",
  "sow-by.missing.day-moves":
    "Sowing is {least} to {most} before it; without it the day may lie anywhere in the season.",

  "sow-by.limit.weeks-memory":
    "Six to eight weeks from seedlings showing, hardening within them, is the usual figure of growers' guides, and was not re-read. A handbook from warm places gives 25 to 35 days from sowing, for smaller plants.",
  "sow-by.limit.table":
    "Days and seedlings are from one series of trials with even temperatures, 13 mm (1/2 in) deep. Swings, crusts and old seed make it longer.",
  "sow-by.limit.not-adjusted":
    "The weeks are not adjusted to {c} where they grow on: the published rates of leaves are of other peppers, in warm houses. Cooler takes longer.",
  "sow-by.limit.by-years":
    "Nobody planned a day, so it is the earliest that past years allow for hardened plants.",
  "sow-by.limit.species": "The table is for common pepper. Other species are often slower to come up.",

  "sow-by.change.medium": "A thermometer in the medium for a day and a night.",
  "sow-by.change.germination": "The germination on the packet, or twenty seeds in a damp cloth.",
  "sow-by.change.loss": "How many seedlings were lost in other years.",
  "sow-by.change.day": "The day the grower has in mind.",
  "sow-by.change.own-weeks": "The weeks this grower's own plants took in other years.",

  "sow-by.chart.title": "Days until seedlings show, by warmth of the medium",
  "sow-by.chart.medium": "Medium",
  "sow-by.chart.days": "Days",
  "sow-by.chart.table": "Published",
  "sow-by.chart.yours": "This medium",
};
