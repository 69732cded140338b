/** What set-out says, in English. Keys start with the rule's id. */
export const setOut: Record<string, string> = {
  "set-out.not.ended": "This planting has ended.",
  "set-out.not.already-out": "These plants already stand in the bed.",
  "set-out.not.unsown": "These seeds are not sown yet.",
  "set-out.not.too-far": "The planned day is more than 90 days away. Ask again nearer to it.",

  "set-out.decision.go": "Set them out on {day}.",
  "set-out.decision.protect": "On {day} only under {protection}; without it wait until {open}.",
  "set-out.decision.protect-only":
    "On {day} only under {protection}; without it no date in the next 90 days is within the accepted risk.",
  "set-out.decision.go-kept-out":
    "By the cold they could go out on {day}, but not into this bed: rotation keeps peppers out of it until {from}.",
  "set-out.decision.protect-kept-out":
    "By the cold they could go out on {day} under {protection}, without it from {open}, but not into this bed: rotation keeps peppers out of it until {from}.",
  "set-out.decision.protect-only-kept-out":
    "By the cold they could go out on {day} under {protection}, without it on no date in the next 90 days, but not into this bed: rotation keeps peppers out of it until {from}.",
  "set-out.decision.wait": "Wait. The earliest date within the accepted risk is {day}.",
  "set-out.decision.none": "Wait. No date in the next {days} is within the accepted risk.",

  "set-out.protection.heavy-fleece": "a heavy row cover",
  "set-out.protection.fleece-and-plastic": "a row cover with plastic on hoops above it",

  "set-out.ends.colder": "A forecast of frost, or of a run of nights colder than usual, ends this.",
  "set-out.ends.none": "Nothing opens before the 90 days are over; ask again each week.",

  "set-out.stakes.delay": "Each day of waiting costs a day of the season, and no plant.",
  "set-out.stakes.cold":
    "Going out bare on the planned day: {beyond} chance of more cold than these plants should meet, {frost} chance of frost.",
  "set-out.stakes.cold-standing":
    "Going out on the planned day under the cover that stands there: {beyond} chance of more cold than these plants should meet, {frost} chance of frost.",

  "set-out.step.kept-out":
    "The advice on rotation keeps peppers out of this bed until {from}: {crop} stood here in {last}. Give these plants a bed that has rested. What is said here is about the cold alone.",
  "set-out.step.keep-warm": "Keep the plants inside; hold at least {c} at night.",
  "set-out.step.harden":
    "Harden them first: {days} of cooler, drier air and some wind, out by day and in at night. They are ready on {day}.",
  "set-out.step.leaves":
    "They have {leaves, plural, one {# true leaf} other {# true leaves}}; wait for {ready}. Small plants stand less cold.",
  "set-out.step.warm-soil":
    "The soil at 10 cm (4 in) is put at {c} for {day} and should be at {floor} or more. Black or clear film laid two weeks ahead warms it.",
  "set-out.step.soil-thermometer":
    "Push a thermometer 10 cm (4 in) into the bed at breakfast time on three mornings. Plant when the mean is {c} or more.",
  "set-out.step.earlier-with": "Under {protection} they could go out from {day}.",
  "set-out.step.ask-again": "Look again when the forecast is new: a warm spell may open a date sooner.",
  "set-out.step.put-up":
    "Put up {protection} the same day; it holds the night about {c} above the air outside.",
  "set-out.step.evening": "Plant late in the day or under cloud, and water each plant in.",
  "set-out.step.vent":
    "Uncover or vent by the time the air inside reaches {c}; on a sunny day that is often before nine. Close again before sunset.",
  "set-out.step.uncover":
    "Take the cover off for good by {day}, or when the first flower opens, whichever comes first.",
  "set-out.step.uncover-flowers": "Take the cover off for good when the first flower opens.",
  "set-out.step.chance":
    "Set out on {day} {cover}, plants would have met more than {nights, plural, one {# night} other {# nights}} or {degreeHours} below {floor} within two weeks in {hits} of {n} years, read as a chance of {beyond} (between {low} and {high}). Frost: {frosts} of {n}.",

  "set-out.under.none": "with no cover",
  "set-out.under.standing": "under the cover that stands there",
  "set-out.under.heavy-fleece": "under a heavy row cover",
  "set-out.under.fleece-and-plastic": "under a row cover with plastic on hoops above it",

  "set-out.way.go": "going out bare",
  "set-out.way.heavy-fleece": "a heavy row cover",
  "set-out.way.fleece-and-plastic": "a row cover with plastic on hoops above it",
  "set-out.step.wait-heat":
    "Waiting {days}, until {until}, forgoes about {heat} of heat units at the bed; inside, plants grow on meanwhile.",
  "set-out.step.wait-heat-open":
    "No date opens; {days} of waiting, until {until}, forgo about {heat} of heat units at the bed.",
  "set-out.step.wait-harvest":
    "By past autumns waiting takes {lost} from {days} of harvest before the first frost: {share}.",
  "set-out.step.wait-money": "At the yield goal and price given, that is about {money} in money.",
  "set-out.step.protect-cheaper":
    "Under {way} from the wanted day: {heat}; about {money} in money ({materials} for material, and {hours}). That is less than waiting costs.",
  "set-out.step.protect-dearer":
    "Under {way} from the wanted day: {heat}; about {money} in money ({materials} for material, and {hours}). Waiting costs no more.",
  "set-out.step.protect-not-enough":
    "Going out on the wanted day under {way} is not within the accepted risk; it would bring {heat} and take about {materials} in money for material and {hours}.",
  "set-out.step.protect-money":
    "Under {way} from the wanted day: {heat}; about {money} in money ({materials} for material, and {hours}).",
  "set-out.step.protect-hours":
    "Under {way} from the wanted day: {heat}; about {materials} in money for material, and {hours}.",
  "set-out.change.lacks-days-to-maturity":
    "Days to maturity, as the seed list prints them, would say how many days of harvest waiting takes.",
  "set-out.change.lacks-autumns":
    "The station's autumns have gaps, so the days of harvest that waiting takes cannot be counted.",
  "set-out.change.lacks-yield-goal": "A yield goal is missing, so waiting has no price.",
  "set-out.change.lacks-price": "An expected price is missing, so waiting has no price.",
  "set-out.change.lacks-labour": "The office has set no wage, so the hours have no price.",
  "set-out.change.lacks-own-hours":
    "The hours for covers are common practice. What putting one up and opening it takes here, once written down, is counted instead.",
  "set-out.step.fuel":
    "What heating would take instead of a cover is said by the advice on night heat for the house.",

  "set-out.limit.weighed":
    "Costs of covers are common practice, a day waited is counted as a day of harvest, and warmer days under a cover are left out. The risk decides, not the money.",

  "set-out.chart.heat": "Heat units won by not waiting",
  "set-out.chart.wait-until": "Waiting until",
  "set-out.chart.heat-units": "Heat units",

  "set-out.missing.years":
    "Daily minima and maxima of a nearby station for at least {fewest} years; there {n, plural, =0 {are none} one {is # whole year} other {are # whole years}}.",
  "set-out.missing.years-move":
    "From {n, plural, =0 {no years} one {# year} other {# years}} the risk on any date may be anything up to {high}, even if none of them was cold; eight would bring that down to {enough}. The answer can move from go to wait.",
  "set-out.missing.heat": "Temperatures logged in the heated house for a week, at plant height.",
  "set-out.missing.heat-move":
    "If the heater holds the floor they may go in today; if it does not, they have the nights outside. Nothing published stands between.",

  "set-out.limit.line-is-practice":
    "The floor, the allowed nights and degree-hours and the accepted risk are the office's own line or common practice. No trial sets them.",
  "set-out.limit.few-years":
    "Only {n} years stand behind these chances. Fewer than 20 say little about rare cold, so read the interval and not the middle.",
  "set-out.limit.no-forecast": "No forecast was given: the next two weeks are taken from past years alone.",
  "set-out.limit.blend":
    "How much the forecast counts by day ahead is common practice, and is not fitted to this forecast's record here.",
  "set-out.limit.no-offset":
    "Nobody has compared this site's nights with the station's. It may be {c} colder or warmer, and the interval is that much wider.",
  "set-out.limit.cover":
    "The warmth under a cover is a published figure for some nights elsewhere. In still, clear or windy nights it may be less.",
  "set-out.limit.soil-memory":
    "The soil floor is the usual figure of growers' guides, and was not re-read for this advice.",

  "set-out.change.forecast": "A forecast not older than a day.",
  "set-out.change.offset":
    "Ten or more nights of minima at the bed beside the station's: the earliest date lies between {early} and {late} until then.",
  "set-out.change.offset-open":
    "Ten or more nights of minima at the bed beside the station's: the earliest date may be {early}, or beyond the 90 days.",
  "set-out.change.offset-none":
    "Ten or more nights of minima at the bed beside the station's; no date opens yet at either end of the interval.",
  "set-out.change.soil": "Three mornings with a soil thermometer at 10 cm (4 in).",
  "set-out.change.years": "A station with more than {n} years of daily minima and maxima.",
  "set-out.change.hardened": "Word that the plants are hardened.",
  "set-out.change.leaves": "A count of true leaves.",
  "set-out.change.inside": "A week of minima under the cover beside those outside.",

  "set-out.case.done": "If they did go out on {day}",
  "set-out.case.done-decision": "They have met the nights since; what those did is for the cold record.",
  "set-out.case.done-step": "Note the day they went out, and count leaves and look at the growing points.",
  "set-out.case.not-done": "If they are still inside",
  "set-out.case.not-done-decision": "Today's answer above holds.",

  "set-out.chart.risk": "Chance of too much cold, by setting-out date",
  "set-out.chart.dose": "Cold in the two weeks after setting out, by date",
  "set-out.chart.nights-by-date": "Nights below the floor in the two weeks after setting out, by date",
  "set-out.chart.date": "Setting-out date",
  "set-out.chart.chance": "Chance",
  "set-out.chart.degree-hours": "Degree-hours below the floor",
  "set-out.chart.low": "Low end of the interval",
  "set-out.chart.high": "High end of the interval",
  "set-out.chart.beyond": "More cold than allowed",
  "set-out.chart.protected": "The same with the added cover",
  "set-out.chart.frost": "Frost",
  "set-out.chart.one-night": "One night below the floor (does not decide)",
  "set-out.chart.accepted": "Accepted risk",
  "set-out.chart.p10": "Warmest tenth of years",
  "set-out.chart.p50": "Middle year",
  "set-out.chart.p90": "Coldest tenth of years",
  "set-out.chart.nights": "Nights below the floor",
  "set-out.chart.allowed": "Allowed",
};
