/** What night-heat says, in English. Keys start with the rule's id. */
export const nightHeat: Record<string, string> = {
  "night-heat.not.over": "Heating ended on {day}.",
  "night-heat.not.yet": "Heating begins on {day}. This is reckoned from two months before.",
  "night-heat.not.warm":
    "No night ahead is colder than {floor} outside: nothing to heat, by the years on record and the forecast.",

  "night-heat.decision.heat":
    "To keep {plants} at the plants through a night of {outside} outside, the house needs {load}.",
  "night-heat.decision.unrated":
    "To keep {plants} at the plants through a night of {outside} outside, the house needs {load}. Whether its heaters give that nobody has written down.",
  "night-heat.decision.short":
    "The heater gives {rated}, and a night of {outside} outside needs {load}: it cannot keep {plants}.",
  "night-heat.decision.no-heater":
    "Nothing stands here to heat with. To keep {plants} through a night of {outside} outside takes {load}.",

  "night-heat.step.load":
    "Size for {load}: one night in a hundred of the heated weeks was colder than {outside}, by {n} years.",
  "night-heat.step.load-forecast":
    "Size for {load}: the coldest night of the forecast is {outside}. Without years of record nobody knows the colder ones.",
  "night-heat.step.rating-unknown":
    "Read the output on the heater's plate and compare it with that: nobody has written it down.",
  "night-heat.step.colder-site":
    "This place was never compared with its station. If its nights are {c} colder, the same night takes {load}: leave that much in hand.",
  "night-heat.step.short":
    "Find the missing {missing}: a second heater, a second layer, or fewer square metres to heat on the coldest nights.",
  "night-heat.step.worst-night":
    "The dearest night of the forecast is that of {day}, {outside} at its coldest: about {kWh}.",
  "night-heat.step.season":
    "The {nights, plural, one {heated night} other {# heated nights}} ahead take about {mean}; by year between {low} and {high}.",
  "night-heat.step.fuel":
    "By {fuel} that is {amount} for {nights, plural, one {one night} other {# nights}}. Its price is not known.",
  "night-heat.step.fuel-money":
    "By {fuel} that is {amount} for {nights, plural, one {one night} other {# nights}}: {money} in money, {night} a night.",
  "night-heat.step.with-inner-film":
    "A second film drawn inside at night would save about {saved} of it ({share}).",
  "night-heat.step.with-fleece":
    "Fleece over the plants at night lets the air be cooler and would save about {saved} ({share}).",
  "night-heat.step.waiting": "Starting {days} later would save about {saved} ({share}).",
  "night-heat.step.mats":
    "Mats under the trays ({trays, plural, one {one tray} other {# trays}}) draw {low} to {high}: roots and seed need warmth more than the air does.",
  "night-heat.step.thermometer":
    "Hang a thermometer that keeps its minimum at the height of the plants, out of the heater's blast, and write the minimum down each morning.",
  "night-heat.fuel.electricity": "electricity",
  "night-heat.fuel.natural-gas": "natural gas",
  "night-heat.fuel.propane": "propane",
  "night-heat.fuel.fuel-oil": "heating oil",
  "night-heat.fuel.firewood": "firewood",
  "night-heat.fuel.wood-pellets": "wood pellets",

  "night-heat.ends": "A warmer forecast, another layer or the last heated night ends it.",
  "night-heat.stakes.heat":
    "The heater can hold all but about one night in a hundred; what is at stake is its fuel.",
  "night-heat.stakes.unrated": "Nobody knows yet whether the heaters hold the coldest nights.",
  "night-heat.stakes.short":
    "On the coldest nights seedlings would stand too cold, and cold nights set them back.",

  "night-heat.limit.sun":
    "The sun, and the warmth that soil, water and benches give back at night, are left out: a real house needs a little less.",
  "night-heat.limit.wind":
    "A windy night, a torn film or an open gable needs more than said. The values for glazing and leaks are a handbook's, from memory.",
  "night-heat.limit.hours":
    "Hours between a day's extremes are drawn by a model of the daily course, where the forecast does not say them.",
  "night-heat.limit.labour":
    "Prices are of the fuel alone. Firing and minding a heater is work too, wood the most, and nobody writes its hours down here.",
  "night-heat.limit.years": "The energy rests on {n} years of nights at the station, moved to the site.",
  "night-heat.limit.no-climate":
    "There are no years on record here: only the nights of the forecast are reckoned.",

  "night-heat.change.meter":
    "Fuel really burnt over a week, with the minimum outside: it tells what this house loses better than any table.",
  "night-heat.change.u": "The cover's heat transfer from its maker.",
  "night-heat.change.offset":
    "Paired minima of this place and its station: without them its nights may be {c} colder or warmer.",

  "night-heat.missing.nights": "Eight years of daily extremes of a station near by, or a forecast.",
  "night-heat.missing.nights-moves":
    "Without nights nothing can be sized. Each degree colder outside adds the same again to the heat.",

  "night-heat.chart.nights": "Heat each night takes",
  "night-heat.chart.night": "night of",
  "night-heat.chart.heat": "heat",
  "night-heat.chart.years": "mean of {n} years",
  "night-heat.chart.forecast": "by the forecast",
  "night-heat.chart.load": "Heat needed by the temperature outside",
  "night-heat.chart.outside": "outside",
  "night-heat.chart.needed": "needed",
  "night-heat.chart.rated": "what the heaters give",
};
