/** What hardening says, in English. Keys start with the rule's id. */
export const hardening: Record<string, string> = {
  "hardening.not.ended": "This planting has ended.",
  "hardening.not.out": "These plants already stand in the bed.",
  "hardening.not.unsown": "These seeds are not up yet.",
  "hardening.not.done": "These plants were noted as hardened on {day}.",
  "hardening.not.no-date":
    "No setting-out date opens in the next 90 days, so there is nothing to harden for yet.",
  "hardening.not.no-plan":
    "Nobody has planned a setting-out day, and too few years of weather are at hand to look for one.",
  "hardening.not.too-early": "Hardening begins on {day}, ten days before {out}.",

  "hardening.decision.begin": "Begin hardening on {day}; ready from {ready}, to set out on {out}.",
  "hardening.decision.go-on": "Go on hardening: {day} is day {nth}. Ready from {ready}, to set out on {out}.",
  "hardening.decision.hold":
    "Do not harden these plants now: they were noted as checked. Let them grow on warm first.",

  "hardening.ends": "Setting out ends it, and so do signs that they have stopped: no new leaf, a dead tip.",
  "hardening.ends.hold": "A new leaf or a living growing point, noted, ends this.",

  "hardening.stakes.soft": "Soft plants set out bare scorch, tear and stand still for weeks.",
  "hardening.stakes.hold": "Cooler and drier air on top of a check may stop them for good.",

  "hardening.step.day-sheltered":
    "{day}: outside for {hours}, in shade and out of the wind, once the air is at {c}. In again after.",
  "hardening.step.day":
    "{day}: outside for {hours}, with sun and a little wind, once the air is at {c}. In for the night.",
  "hardening.step.day-night":
    "{day}: outside all day, and out for the night too; {night} is expected at the plants.",
  "hardening.step.day-night-if":
    "{day}: outside all day; out for the night too if it keeps above {floor}, else in before sunset.",
  "hardening.step.day-bring-in":
    "{day}: outside all day, but in before sunset: {night} is expected, below {floor}.",
  "hardening.step.in-cold": "{day}: keep them in; the day stays below {c}. It does not count.",
  "hardening.step.in-wind": "{day}: keep them in; too much wind for soft leaves. It does not count.",
  "hardening.step.water":
    "Water less often than inside, and let the top of the mix dry between: drier, but never so far that a leaf wilts. Look twice a day; wind and sun dry a tray in an hour or two.",
  "hardening.step.no-nitrogen": "No extra nitrogen while they harden.",
  "hardening.step.wind-first": "More sun and more wind by steps, never both at once; cold is not the aim.",
  "hardening.step.done":
    "Done from {ready} if leaves are darker and firmer, stems stiff, tips alive, and new leaves still come. Then note them as hardened.",
  "hardening.step.set-out-later":
    "Seven days outside end on {ready}, after {out}: set out later, or under a cover.",
  "hardening.step.hold": "Hold them at {c} or more at night, in good light, evenly moist.",
  "hardening.step.hold-until":
    "Wait for a new leaf. Note it, or a living growing point, and ask again; then harden gently, the full ten days.",

  "hardening.limit.memory":
    "Seven to ten days of cooler, drier air and more wind is the usual figure of growers' guides, and was not re-read. The hours of each day are common practice.",
  "hardening.limit.pepper-cold":
    "Peppers do not learn to stand cold: growth all but stops below 10 to 13 °C (50 to 55 °F), hardened or not. Sun and wind are what they learn.",
  "hardening.limit.no-forecast":
    "No forecast was given, so no day or night is kept in by it. Look at the sky.",
  "hardening.limit.by-set-out":
    "The day is set-out's own earliest, {day}. It moves with the weather, and the plan with it.",

  "hardening.case.not-begun": "If they have not been outside yet",
  "hardening.case.later":
    "Begin with the first day's hours today. They are ready from {ready}, later than {out}.",
  "hardening.case.begin":
    "Begin with the first day's hours today; they are ready from {ready}, in time for {out}.",

  "hardening.case.begun": "If they have been going out for a week or more",
  "hardening.case.ready": "Note them as hardened; then set-out alone decides.",

  "hardening.change.note": "Word that they are hardened, or how long they have been going out.",
  "hardening.change.forecast": "A forecast with wind, not older than a day.",
  "hardening.change.look": "A look at growing points and new leaves.",

  "hardening.chart.hours": "Hours outside, by day",
  "hardening.chart.nights": "Nights at the plants, as forecast",
  "hardening.chart.day": "Day",
  "hardening.chart.hours-axis": "Hours outside",
  "hardening.chart.minimum": "Night minimum",
  "hardening.chart.floor": "Floor",
};
