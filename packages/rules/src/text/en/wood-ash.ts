/** Before the first thing asked for: an answer that asks carries no cautions beside it, and somebody has that ash in hand. */
const CAUSTIC =
  "{first, select, yes {Wood ash is caustic: it burns eyes, skin and lungs. Wear goggles, gloves and a mask, and never spread it in wind. Only from clean, untreated wood. } other {}}";

/** What wood-ash says, in English. Keys start with the rule's id. */
export const woodAsh: Record<string, string> = {
  "wood-ash.decision.spread":
    "Yes, a little: at most {kg} of ash on the bed's {area}, between {from} and {to}.",
  "wood-ash.decision.wait":
    "Yes, a little, but not yet: at most {kg} of ash on the bed's {area}, between {from} and {to}.",
  "wood-ash.decision.too-late": "Not for this crop: there is no time left in which ash would be safe.",
  "wood-ash.decision.after-crop":
    "Not while plants stand. Keep the ash dry, and ask again when the crop is over, about {from}.",
  "wood-ash.decision.no-potash-need": "No ash: the soil gives the potash this crop needs.",
  "wood-ash.decision.no-lime-need": "No ash: the soil needs no lime now, and ash is lime.",
  "wood-ash.decision.cap-reached": "No more ash this year: the bed has had the most it should.",
  "wood-ash.decision.ph-too-high": "No ash: pH {ph} is above {ceiling}.",
  "wood-ash.decision.not-this-ash": "No: this ash may not go on this bed.",

  "wood-ash.step.spread":
    "Spread {kg} on the bed's {area}: {perM2} ({perHa} of the bed; {over} counted over cropped land with its alleys).",
  "wood-ash.step.volume": "That is about {litres} of it, loose.",
  "wood-ash.step.bound-cap": "The strictest published cap for a year sets the amount.",
  "wood-ash.step.bound-lime": "What the soil needs in lime sets the amount.",
  "wood-ash.step.bound-potash": "What the crop still needs in potash sets the amount.",
  "wood-ash.step.bound-stock": "What the shed holds sets the amount.",
  "wood-ash.step.bound-label": "The most its label allows sets the amount.",
  "wood-ash.step.bounds":
    "The smallest of these is taken: the cap allows {cap}, the need for lime {lime}, the need for potash {potash}.",
  "wood-ash.step.caps":
    "Published caps differ tenfold, from {least} to {most} a year. The strictest is kept: {bed} on this bed.",
  "wood-ash.step.window":
    "Between {from} and {to}: not later than a month before plants, because fresh ash is too salty and too caustic for them, and what feeds them on the day may hold ammonium.",
  "wood-ash.step.after-ammonium":
    "Ammonium, urea or manure was given on {day}: wait a month, until {from}, or the nitrogen goes off as ammonia.",
  "wood-ash.step.after-ammonium-perhaps":
    "Ammonium, urea or manure was advised for {day} and nobody said whether it was given: wait until {from}, or say that it was not.",
  "wood-ash.step.planned-ammonium":
    "The feeding plan holds {material}: none of it on this bed until a month after the ash.",
  "wood-ash.step.no-ammonium":
    "No ammonium or urea fertiliser and no fresh manure on this bed until a month after the ash.",
  "wood-ash.step.how":
    "On a still day, on moist soil, thin and even, no lumps and no heaps: a heap of ash burns with salt. Rake it in at once, {depth} deep, before any mulch is laid.",
  "wood-ash.step.potash":
    "It brings {k2oOne, select, yes {{k2oHigh}} other {{k2oLow} to {k2oHigh}}} of potash (K2O): {shareOne, select, yes {{shareHigh}} other {{shareLow} to {shareHigh}}} of the {need} still needed.",
  "wood-ash.step.phosphate":
    "It brings {p2o5One, select, yes {{p2o5High}} other {{p2o5Low} to {p2o5High}}} of phosphate (P2O5): {shareOne, select, yes {{shareHigh}} other {{shareLow} to {shareHigh}}} of what is still needed.",
  "wood-ash.step.phosphate-unneeded":
    "It brings {p2o5One, select, yes {{p2o5High}} other {{p2o5Low} to {p2o5High}}} of phosphate (P2O5), which no test asks for.",
  "wood-ash.step.lime":
    "It does the work of {limeOne, select, yes {{limeHigh}} other {{limeLow} to {limeHigh}}} of lime: {shareOne, select, yes {{shareHigh}} other {{shareLow} to {shareHigh}}} of the {need} the soil asks for. The rest is limestone's.",
  "wood-ash.step.ph":
    "The soil's pH of {now} would become {one, select, yes {about {high}} other {{low} to {high}}}, by the {method} relation, if it is mixed evenly into {depth} of soil and has all dissolved.",
  "wood-ash.step.ph-unknown":
    "What pH it would leave is not predicted: the relation of this soil test cannot say for so little.",
  "wood-ash.step.never-for":
    "Never on seedlings or young leaves, never where seed is sown, never where potatoes will grow (scab), never near blueberries, azaleas or rhododendrons.",
  "wood-ash.step.clean":
    "Only ash of clean, untreated wood. None of trash, cardboard, coal, or of painted, stained, glued or pressure-treated wood.",
  "wood-ash.step.keep-dry":
    "Keep it dry: rain washes two thirds of the potash out ({leached} is left), and what is left is lime all the same.",
  "wood-ash.step.analyse":
    "Have it analysed for potash, lime value and heavy metals: until then the most that is published bounds it and the least is counted on.",
  "wood-ash.step.store": "Keep ash in a lidded metal bin on bare ground: embers in it start fires for days.",
  "wood-ash.step.dispose": "Keep it off every bed. Your waste authority says where it may go.",
  "wood-ash.step.ceiling":
    "pH {ph} is above {least}, the strictest of the published ceilings, which is kept; others go up to {most}. Where potash is short take another source.",
  "wood-ash.step.at-target":
    "pH {ph} has reached the {target} from which no lime is due, and ash is lime. Where potash is short take another source.",
  "wood-ash.step.after-crop":
    "Ash burns leaves and young roots, and must be raked in. The next time it can be is when this crop is over, about {from}; test the soil first.",
  "wood-ash.step.too-late":
    "From {from} on it would be allowed, but the last day before these plants was {to}. Keep it dry for next season.",
  "wood-ash.step.no-potash-need":
    "Ash is given only where potash is short as well. More of it hinders calcium and feeds end rot.",
  "wood-ash.step.no-lime-need":
    "What was limed before is still at work, or the buffer finds no acidity. Test again before any ash.",
  "wood-ash.step.cap-reached": "A year after the last ash, and with a new soil test, ask again.",
  "wood-ash.step.not-clean":
    "One ash comes of treated or mixed stuff: metals, boron and residues stay in the soil for good. Not on any bed.",
  "wood-ash.step.manure-ash-certified":
    "One ash is of burnt manure: it is prohibited on certified ground (7 CFR 205.602(a)).",
  "wood-ash.step.manure-ash":
    "One ash is of burnt manure: no published value holds for it. Have it analysed first.",
  "wood-ash.step.not-certified": "One ash is not allowed on this bed's ground.",
  "wood-ash.step.no-proof":
    "For one ash nothing proves until when it may be used on this bed's ground. Put in the last day of the proof.",
  "wood-ash.step.proof-expired":
    "For one ash the proof that it may be used on this bed's ground has run out.",

  "wood-ash.method.mehlich": "Mehlich buffer",
  "wood-ash.method.adams-evans": "Adams-Evans buffer",
  "wood-ash.method.smp": "SMP buffer",
  "wood-ash.method.exchangeable-acidity": "exchangeable acidity",

  "wood-ash.not.ended": "The planting has ended.",
  "wood-ash.not.none": "The shed holds no wood ash.",
  "wood-ash.not.containers": "No ash in containers: so little soil cannot take up its lime and salt.",

  "wood-ash.missing.ph": `${CAUSTIC}A soil test of this bed with its pH. Without it no ash is spread.`,
  "wood-ash.missing.origin": `${CAUSTIC}What was burnt: only ash of clean, untreated wood may be used.`,
  "wood-ash.missing.goal": `${CAUSTIC}A yield goal: what the crop needs in potash follows from it.`,
  "wood-ash.missing.set-out": `${CAUSTIC}The day plants go out: ash must be a month before them.`,
  "wood-ash.missing.potash": `${CAUSTIC}Potassium in the soil test, with its extractant: ash is given only where potash is short.`,
  "wood-ash.missing.buffer": `${CAUSTIC}The laboratory's buffer pH with its name, or the exchangeable acidity: how much lime the soil can take.`,
  "wood-ash.missing.other-buffer": `${CAUSTIC}Exchangeable acidity, or a Mehlich, Adams-Evans or SMP buffer pH: the coefficients of this test's buffer were not found published.`,
  "wood-ash.missing.moves": "Between none and {most} on this bed.",

  "wood-ash.ends": "A new soil test, ash, lime, ammonium or urea given, or plants set out end this.",
  "wood-ash.stakes.spread": "Bought potash and lime would do the same; the ash saves some of both.",
  "wood-ash.stakes.none": "Nothing is lost by leaving it.",

  "wood-ash.limit.sources":
    "What is known of ash comes from extension columns and guides that differ widely; no trial on peppers was found.",
  "wood-ash.limit.cap": "The strictest cap is printed for lawns.",
  "wood-ash.limit.records": "Only ash that was logged on this planting counts towards the year's cap.",
  "wood-ash.limit.shared-stock":
    "The {stock} of ash in the shed is one stock for all beds together: what another planting is to get is not taken off here. Plan it once.",
  "wood-ash.limit.unanalysed":
    "Ashes differ by wood, fire and rain: two to three times in potash and in lime value.",
  "wood-ash.limit.predicted":
    "The relation is made for limestone, mixed in. Ash acts faster and does not last as long.",

  "wood-ash.limit.old": "The sample of {day} {year} is more than three years old.",

  "wood-ash.change.analysis": "An analysis of this ash: potash, phosphate and lime value.",
  "wood-ash.change.test": "A newer soil test.",
  "wood-ash.change.potash": "A soil test that reads potassium short.",
  "wood-ash.change.ph-too-high": "A newer soil test with a pH of 6.0 or lower.",
  "wood-ash.change.no-lime-need": "A newer soil test with a lower pH, or another target pH of your office.",
  "wood-ash.change.after-crop": "The day this planting is cleared.",
  "wood-ash.change.not-this-ash": "Ash of clean wood, with what was burnt and its analysis written down.",

  "wood-ash.case.done": "If the ash advised for {day} was spread:",
  "wood-ash.case.not-done": "If it was not:",
};
