/** What cold-tonight says, in English. Keys start with the rule's id. */
export const coldTonight: Record<string, string> = {
  "cold-tonight.not.ended": "This planting has ended.",
  "cold-tonight.not.unsown": "These seeds are not sown yet.",
  "cold-tonight.not.harmless":
    "Tonight does not hurt: about {minimum} at the plants, and for {phase} one night may fall to {floor}.",

  "cold-tonight.phase.indoors": "plants raised indoors",
  "cold-tonight.phase.hardening": "seedlings that harden outside",
  "cold-tonight.phase.young": "plants just set out",
  "cold-tonight.phase.established": "established plants",
  "cold-tonight.phase.flowering": "plants in flower",
  "cold-tonight.phase.fruit": "plants with ripe fruit",
  "cold-tonight.phase.overwintered": "plants kept over winter",

  "cold-tonight.decision.frost-tonight":
    "Frost tonight: about {minimum} at the plants near sunrise at {sunrise}. Cover them by {time}.",
  "cold-tonight.decision.cover-tonight":
    "Cover tonight: about {minimum} at the plants near sunrise at {sunrise}, below {floor} for {phase}. Be done by {time}.",
  "cold-tonight.decision.cover-tonight-may-freeze":
    "Cover tonight: about {minimum} at the plants near sunrise at {sunrise}, and it may freeze. Be done by {time}.",
  "cold-tonight.decision.bring-in":
    "Bring in what stands outside by {time}: about {minimum} in the open tonight, and {phase} want {floor}.",
  "cold-tonight.decision.heat-tonight":
    "Hold the heat tonight: about {minimum} where they stand by morning, below {floor} for {phase}. See to it by {time}.",

  "cold-tonight.step.cover":
    "Have the plants covered by {time}, {ahead} from now: before sunset a cover still keeps the warmth of the ground. Peg the edges down all round.",
  "cold-tonight.step.cover-now":
    "Cover the plants now, edges pegged down all round: every hour open costs warmth.",
  "cold-tonight.step.close":
    "Close what stands over them by {time}, {ahead} from now: doors, ends and edges, before the sun is down.",
  "cold-tonight.step.close-now": "Close what stands over them now: doors, ends and edges.",
  "cold-tonight.step.holds-floor": "Enough: {cover}. It would leave about {inside}, against {floor} wanted.",
  "cold-tonight.step.holds-frost":
    "Keeps frost out, and no more: {cover}. It would leave about {inside}, against {floor} wanted.",
  "cold-tonight.step.holds-nothing": "Not enough: {cover}. It would leave about {inside}.",
  "cold-tonight.step.nothing-heavier":
    "No published figure says what more over this would bring. A second layer does no harm; only a thermometer tells.",
  "cold-tonight.step.none-enough":
    "No cover we know figures for keeps this frost out. Bring in what can be moved, pick what can be used, and cover the rest all the same: damage is seldom even.",
  "cold-tonight.step.pots":
    "Bring pots in, or stand them together against a house wall: roots in pots freeze first.",
  "cold-tonight.step.pick":
    "Pick ripe and full-sized fruit by {time}: frozen fruit is lost, chilled fruit keeps badly.",
  "cold-tonight.step.uncover":
    "Tomorrow open or take the cover off by {time}, when the open air reaches {mark}, and sooner if the sun stands on it.",
  "cold-tonight.step.uncover-sun":
    "Tomorrow open the cover as soon as the sun stands on it, and close it again if the day stays cold.",
  "cold-tonight.step.look": "At sunrise read the lowest temperature at the plants and note it.",
  "cold-tonight.step.look-frost":
    "At sunrise read the lowest temperature at the plants and note it. Leave frozen plants alone until they have thawed.",
  "cold-tonight.step.bring-in":
    "Carry the trays in by {time}, {ahead} from now. What cannot be carried goes under a cover against a house wall.",
  "cold-tonight.step.bring-in-now": "Carry the trays in now.",
  "cold-tonight.step.bring-out":
    "Put them out again when the open air is above {floor}, and not in cold wind.",
  "cold-tonight.step.heat":
    "By {time}, {ahead} from now, set the heat so that the plants have {floor}: {lift} more than the night would leave.",
  "cold-tonight.step.heat-now":
    "Set the heat now so that the plants have {floor}: {lift} more than the night would leave.",
  "cold-tonight.step.layer": "Draw a second layer over the bench, clear of heaters and lamps.",
  "cold-tonight.step.alarm":
    "Stand a thermometer with an alarm among the plants and set it a little below {floor}.",

  "cold-tonight.cover.light-fleece": "a light fleece",
  "cold-tonight.cover.heavy-fleece": "a heavier fleece",
  "cold-tonight.cover.fleece-and-plastic": "a fleece with plastic over it",

  "cold-tonight.way.forecast": "the forecast brought to the plants",
  "cold-tonight.way.measured-lift": "the forecast and past nights' readings",
  "cold-tonight.way.own-clear-nights": "this place's own clear, calm nights",
  "cold-tonight.way.calm-cooling": "sky and dew point of a calm night",
  "cold-tonight.way.corrected": "the forecast, put right by a reading now",
  "cold-tonight.way.read-tonight": "a reading of tonight",
  "cold-tonight.way.same-heat": "what the heat held on past nights",

  "cold-tonight.case.covered": "If they were covered on the last warning:",
  "cold-tonight.case.covered-decision": "leave it, see that the edges hold, and open in the morning.",
  "cold-tonight.case.open": "If they stand open:",
  "cold-tonight.case.open-decision": "cover them by {time}.",

  "cold-tonight.ends": "Sunrise ends this, or a fresh forecast that says otherwise.",

  "cold-tonight.stakes.frost":
    "Pepper is killed between {frost} and {killed}; what is dead in the morning stays dead.",
  "cold-tonight.stakes.may-freeze":
    "Freezing lies within what the site leaves open, and frost kills what it reaches.",
  "cold-tonight.stakes.chill": "One night too cold checks young plants and drops flowers; it kills none.",
  "cold-tonight.stakes.slow": "Cool nights slow young plants and kill none.",

  "cold-tonight.missing.forecast":
    "A forecast for tonight. None has come in, which is itself an alarm: see whether its source still answers.",
  "cold-tonight.missing.stale":
    "A fresh forecast: this one is {age} old, and for tonight it may be {fresh}. That none has come since is itself an alarm: see whether its source still answers.",
  "cold-tonight.missing.night":
    "Tonight's lowest temperature: the forecast has neither its hours nor tomorrow's minimum.",
  "cold-tonight.missing.inside":
    "Temperatures where these plants stand, through at least one night: the weather outside says nothing of a heated place.",
  "cold-tonight.missing.move":
    "Without it nobody knows whether to cover tonight. Until it is there, cover or bring in whenever the evening is clear, calm and cool.",

  "cold-tonight.limit.no-chance":
    "No chance is given. How far this forecast misses here is not known until its archive has been scored, and a guess would look like knowledge.",
  "cold-tonight.limit.ways":
    "The ways to tell it differ: {coldest} by {way}, {warmest} by {other}. The colder one is used.",
  "cold-tonight.limit.heat":
    "Inside, tonight is judged by what the heat held on the coldest of the nights read. A heater that fails is not in it.",
  "cold-tonight.limit.site":
    "What this place differs from its station leaves {plusMinus} either way open in four nights of five, from {nights, plural, one {# paired night} other {# paired nights}}. The forecast's own error comes on top.",
  "cold-tonight.limit.site-unknown":
    "No nights here were paired with the station's, so this place may be {plusMinus} warmer or colder. The forecast's own error comes on top.",
  "cold-tonight.limit.sky-unknown":
    "The forecast gives no cloud or wind for the night. If it turns clear and calm, it gets colder than this, and leaves colder than the air beside them.",
  "cold-tonight.limit.cover":
    "Covers are reckoned with one published figure each. On a windy or very clear night they hold less.",
  "cold-tonight.limit.course":
    "The hours were reckoned from the day's highest and lowest; the true course differs.",
  "cold-tonight.limit.no-course": "The hours before sunrise are not known; only the lowest is.",
  "cold-tonight.limit.no-readings": "Nobody measures at the plants now; all this rests on the forecast.",
  "cold-tonight.limit.floor-indoors": "The night floor indoors is common practice or the office's own.",
  "cold-tonight.limit.floor-hardening":
    "The floor for seedlings outside is common practice or the office's own.",
  "cold-tonight.limit.floor-young":
    "Injury below this is a textbook value for long exposure, not re-read for this advice; one night does less.",
  "cold-tonight.limit.floor-established":
    "The floor for established plants on one night is common practice alone.",
  "cold-tonight.limit.floor-flowering":
    "The floor for flowers comes from weeks of such nights in two cultivars. One old study found more set at {low} to {high}, without seed.",
  "cold-tonight.limit.floor-fruit":
    "The floor for fruit is a storage limit, carried over to fruit on the plant for want of another.",
  "cold-tonight.limit.floor-overwintered": "The floor for plants kept over winter is common practice alone.",

  "cold-tonight.change.fresh":
    "A fresher forecast, and the sky at dusk: cloud or wind makes the night milder.",
  "cold-tonight.change.measure": "A thermometer at the plants, read after sunset.",
  "cold-tonight.change.hours": "A forecast by the hour, with cloud, wind and dew point.",
  "cold-tonight.change.pairs": "A few weeks of minima here beside the station's.",

  "cold-tonight.chart.title": "Tonight, hour by hour",
  "cold-tonight.chart.hour": "Hour, the site's clock",
  "cold-tonight.chart.temperature": "Temperature",
  "cold-tonight.chart.plants": "At the plants",
  "cold-tonight.chart.open": "In the open, forecast",
  "cold-tonight.chart.floor": "Floor",
  "cold-tonight.chart.freezing": "Freezing",
};
