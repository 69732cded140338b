/** What lime says, in English. Keys start with the rule's id. */
export const lime: Record<string, string> = {
  "lime.decision.lime":
    "pH {ph} is below {target}. Give {kg} of {material} on the bed's {area} ({perM2}, {perHa}) and work it in.",
  "lime.decision.lime-after-crop":
    "pH {ph} is below {target}. When the crop that stands there is over (about {from}), give {kg} of {material} on the bed's {area} ({perM2}) and work it in.",
  "lime.decision.lime-wait":
    "pH {ph} is below {target}. Not before {from}, a month after ammonium or urea: give {kg} of {material} on the bed's {area} ({perM2}) and work it in.",
  "lime.decision.lime-next-part":
    "pH {ph} is below {target}. Not before {from}, {months} months after the part before: give {kg} of {material} on the bed's {area} ({perM2}) and work it in.",
  "lime.decision.still-working":
    "pH {ph} is below {target}, but what was given earlier is still at work. Give none now.",
  "lime.decision.sulfur":
    "pH {ph} is above what peppers stand well. Work {kg} of {material} into the bed's {area}, and test again before any more.",
  "lime.decision.fizz-first":
    "pH {ph} is above what peppers stand well. First see whether the soil fizzes with vinegar. Only if it does not: {kg} of {material} on the bed's {area}.",
  "lime.decision.sulfur-after-crop":
    "pH {ph} is above what peppers stand well. When the crop that stands there is over (about {from}), work {kg} of {material} into the bed's {area}, and test again before any more.",
  "lime.decision.fizz-first-after-crop":
    "pH {ph} is above what peppers stand well. First see whether the soil fizzes with vinegar. Only if it does not, and when the crop that stands there is over (about {from}): {kg} of {material} on the bed's {area}.",
  "lime.decision.sulfur-at-work":
    "pH {ph} is above what peppers stand well, but sulfur was given since the sample. Give no more before a new test.",
  "lime.decision.free-lime":
    "pH {ph} comes from free lime in this soil. No sulfur puts that right: do not try.",
  "lime.decision.gypsum":
    "pH {ph} needs no lime, but calcium is short. Feeding doses gypsum where the shed holds it.",
  "lime.decision.magnesium":
    "pH {ph} needs no lime, but magnesium is low. Feeding doses it where the shed holds it.",

  "lime.step.unanswered":
    "What we advised to spread on {day} nobody has answered. This advice takes it as spread, so that nothing is given twice. Tell us if it was not.",
  "lime.step.spread":
    "Spread {kg} of {material} evenly on the bed's {area}: {perM2}, which is {perHa} of the ground limed.",
  "lime.step.spread-first":
    "Spread a first {kg} of {material} evenly on the bed's {area}: {perM2}, which is {perHa} of the ground limed.",
  "lime.step.split":
    "So much lime is given in {times} parts, {months} months apart: {whole} on the bed in all ({perM2}, {perHa}). Test again before the last one.",
  "lime.step.alleys":
    "That is the bed without its alleys; counted over all {cropped} of cropped land it comes to {over}. Where the alleys are limed and tilled too, the whole takes {kg}.",
  "lime.step.work-in":
    "Work it in {depth} deep, as deep as the sample was taken. Lime left on top stays on top.",
  "lime.step.stock-enough": "The shed holds {stock}; {left} would be left.",
  "lime.step.stock-unknown": "How much the shed holds is not known: weigh it first.",
  "lime.step.stock-short":
    "The shed holds {stock}: {buy} too little, and no more is listed to be bought. Give what is there; it counts.",
  "lime.step.buy": "The shed holds {stock}; {buy} more is needed for the whole.",
  "lime.step.buy-bags":
    "The shed holds {stock}; buy {bags, plural, one {# bag} other {# bags}} for the whole ({buy} more).",
  "lime.step.buy-cost":
    "The shed holds {stock}; {buy} more is needed for the whole, about {cost} at your price.",
  "lime.step.buy-bags-cost":
    "The shed holds {stock}; buy {bags, plural, one {# bag} other {# bags}} for the whole ({buy} more), about {cost} at your price.",
  "lime.step.hours":
    "Spreading it takes {times, plural, one {# giving} other {# givings}}, about {hours} by what one took here.",
  "lime.step.wages":
    "Spreading it takes {times, plural, one {# giving} other {# givings}}, about {hours} by what one took here: {wages} at the office's wage, {sum} with what is bought.",
  "lime.step.not-in-shed":
    "The shed lists no {material} that may be used here: the amount is for one of full strength. Read its label and say so.",
  "lime.step.untested":
    "Its neutralising value or fineness is not known, and it is taken as good as its kind can be. If the label gives ENV, ECCE or ENP, put it in: a coarse lime takes more.",
  "lime.step.effective": "Of its weight {effective} acts as lime within a few years.",
  "lime.step.dolomitic":
    "Magnesium reads {mg}, which is low: dolomitic lime brings {brings} of it with the lime.",
  "lime.step.instead":
    "Or from the shed: {kg} of {material} on the bed in all ({perM2}; {effective} of it acts).",
  "lime.step.instead-bought":
    "Or bought: {kg} of {material} on the bed in all ({perM2}; {effective} of it acts).",
  "lime.step.not-certified": "Not the {material}: it may not be used on this bed's ground.",
  "lime.step.no-proof":
    "Not the {material}: nothing in the shed's record proves until when it may be used on this bed's ground. Put in the last day of the proof.",
  "lime.step.proof-expired":
    "Not the {material}: the proof that it may be used on this bed's ground has run out.",
  "lime.step.credit":
    "Lime and ash given earlier and still to act is taken off: {working} as calcium carbonate.",
  "lime.step.ash-counted":
    "Wood ash given since the sample is in that: by its analysis, else by the least lime value that is published for ash, so that the bed does not get too little lime.",
  "lime.step.still-working":
    "Earlier lime and ash still to act is worth {working} as calcium carbonate; the soil asks for {call}.",
  "lime.step.in-time":
    "Ground limestone needs {least} to {most} months. Plants go out on {out}: spread it by {by}, better sooner.",
  "lime.step.late":
    "Ground limestone needs {least} to {most} months, and plants go out on {out}. It is late for this crop, which gets a part of it; spread on {from}, it has acted fully between {acts} and {done}.",
  "lime.step.after-crop":
    "Lime is worked in, so not while plants stand. Spread it when the crop is over, from about {from}; it needs {least} to {most} months.",
  "lime.step.no-date":
    "Ground limestone needs {least} to {most} months: spread on {from}, it has acted between {acts} and {done}. Autumn suits spring planting.",
  "lime.step.ph-first":
    "By the {method} relation the first part leaves about pH {ph} in {depth} of soil, when it has acted.",
  "lime.step.ph-all":
    "By the {method} relation it leaves about pH {ph} in {depth} of soil, when it has acted.",
  "lime.step.ph-by-method":
    "The amount is made for pH {ph} by {method}; that relation does not say what a part of it leaves.",
  "lime.step.not-with-ammonium":
    "Keep ammonium and urea fertilisers, fresh manure and wood ash off that ground for a month before and after: limed on {from}, until {until}.",
  "lime.step.after-ammonium":
    "Ammonium, urea or manure was given on {day}: spread no lime before {from}, a month later, or the nitrogen goes off as ammonia.",
  "lime.step.after-part":
    "Lime was given on {day}. So large an amount goes in parts {months} months apart: the next from {from}.",
  "lime.step.retest": "Test again a year after the last part, by the same laboratory.",
  "lime.step.gypsum":
    "Calcium is below what Georgia's sheet wants at a pH that asks for no lime: gypsum brings it there and does not change the pH.",
  "lime.step.by-feeding":
    "The rule feeding doses it for each planting, where a guide for this soil test asks for it and the shed holds it. Give none besides.",
  "lime.step.magnesium":
    "Magnesium reads {mg}, which is low. With no lime due dolomitic lime is not the way to bring it; Epsom salts are.",
  "lime.step.epsom":
    "Epsom salts hold {holds} of magnesium; {from} and more of them go in two parts {months} months apart.",
  "lime.step.fizz":
    "Drop vinegar on a spoonful of dry soil from each depth. If it fizzes there is free lime: stop, no amount of sulfur is enough. Write down what you saw.",
  "lime.step.sulfur":
    "Spread {kg} of {material} on the bed's {area} ({perM2}, {perHa}) for pH {target}, and work it in.",
  "lime.step.sulfur-split":
    "Spread {first} of {material} on the bed's {area} and work it in. The whole is {kg} ({perM2}, {perHa}) for pH {target}: give it in {times} parts half a year apart, with a test before each.",
  "lime.step.sulfur-alleys": "With its alleys, {cropped} in all, the bed would take {kg}.",
  "lime.step.ferrous": "Ferrous sulfate does the same at eight times the weight: {kg} in all.",
  "lime.step.sulfur-rhs":
    "The Royal Horticultural Society gives more for such a soil: {perM2} ({perHa}). Less is given here because too much cannot be taken back.",
  "lime.step.sulfur-western-handbook": "A handbook's table, from memory, gives {perM2} ({perHa}).",
  "lime.step.sulfur-when":
    "It works by living things in warm, moist soil and takes a season or more: spread it well before plants go out.",
  "lime.step.sulfur-after-crop":
    "Work it in when the crop is over, from about {from}: it must not touch young roots.",
  "lime.step.sulfur-retest": "Test again after a year, and before any more is given.",
  "lime.step.live-with-it":
    "Spend nothing on sulfur: each tonne of lime in the soil eats up a third of a tonne of it.",
  "lime.step.watch-iron":
    "Watch young leaves for yellow between green veins (iron, manganese, zinc). Feed ammonium rather than nitrate, and bring compost.",
  "lime.step.containers":
    "Where it matters, grow in containers or a raised bed of another soil. No lime and no wood ash here.",

  "lime.case.done": "If what was advised for {day} was spread:",
  "lime.case.not-done": "If it was not:",

  "lime.method.mehlich": "Mehlich buffer",
  "lime.method.adams-evans": "Adams-Evans buffer",
  "lime.method.smp": "SMP buffer",
  "lime.method.exchangeable-acidity": "exchangeable acidity",

  "lime.not.containers": "Containers are limed with their mix, by its maker's recipe. This reads field soil.",
  "lime.not.in-range": "pH {ph} is within {low} to {high}. No lime and no sulfur.",
  "lime.not.above-range":
    "pH {ph} is above {low} to {high}, but within what peppers stand (up to {most}). Add no lime and no wood ash; no sulfur is needed.",
  "lime.not.at-target": "pH {ph} has reached the office's target of {target}. No lime.",
  "lime.not.no-acidity":
    "pH {ph} is low, but the {method} finds no acidity that lime would have to meet. Test again before liming.",

  "lime.missing.ph": "A soil test of this bed with its pH, and the laboratory's buffer pH with its name.",
  "lime.missing.ph-moves": "Without a pH the bed may need lime, sulfur or nothing.",
  "lime.missing.buffer":
    "The laboratory's buffer pH with its name (Mehlich, Adams-Evans or SMP), or the exchangeable acidity. The pH alone does not say how much lime.",
  "lime.missing.buffer-sikora":
    "The Sikora buffer's coefficients were not found published, so it is not read. Exchangeable acidity, or a Mehlich, Adams-Evans or SMP buffer pH would do; so would the laboratory's own lime figure.",
  "lime.missing.buffer-modified-mehlich":
    "The Modified Mehlich buffer's coefficients were not found published, so it is not read. Exchangeable acidity, or a Mehlich, Adams-Evans or SMP buffer pH would do; so would the laboratory's own lime figure.",
  "lime.missing.buffer-woodruff":
    "The Woodruff buffer's coefficients were not found published, so it is not read. Exchangeable acidity, or a Mehlich, Adams-Evans or SMP buffer pH would do; so would the laboratory's own lime figure.",
  "lime.missing.buffer-moves":
    "From {low} of calcium carbonate on a light soil to {high} on a heavy one, for the same pH.",
  "lime.missing.texture": "The texture of this bed's soil, by feel or from the laboratory.",
  "lime.missing.texture-moves": "Clay takes twice as much sulfur as sand.",

  "lime.ends": "A newer test, lime given, or plants set out end this.",
  "lime.stakes.outside": "The pH is outside what peppers stand well: food is there and cannot be taken up.",
  "lime.stakes.off": "The pH is a little low, and lime needs {months} months to act.",
  "lime.stakes.fine": "Nothing presses.",

  "lime.limit.soil":
    "For mineral soil in the field, mixed to the depth said. Surface lime and no-till act far more slowly.",
  "lime.limit.shared-stock":
    "The {stock} of {material} in the shed is one stock for all beds together: what another bed is to get is not taken off here. Plan it once.",
  "lime.limit.mehlich":
    "The Mehlich relation's page prints no depth; a slice of 17 cm (6.67 in) is taken. It is made for North Carolina's soils.",
  "lime.limit.adams-evans":
    "The Adams-Evans relation is from memory, and made for sandy red-yellow soils of the Southeast. Where your laboratory prints its own figure, that one wins.",
  "lime.limit.smp":
    "The SMP table is from memory, and made for soils with much acidity: on sandy soils it asks too much. Where your laboratory prints its own figure, that one wins.",
  "lime.limit.exchangeable-acidity":
    "Pennsylvania's relation has figures for pH 6.5 and 7.0 only, for 18 cm (7 in) of soil.",
  "lime.limit.target-moved":
    "Reckoned to pH {target}, not {wanted}: the {method} relation has no figure for that.",
  "lime.limit.sulfur":
    "Published sulfur rates for one soil differ two- to threefold; the smaller that was read is taken. Carbonate in irrigation water brings the pH back.",
  "lime.limit.georgia":
    "Calibrated in Georgia, and for magnesium also in Ohio and in the guide of the extractant.",
  "lime.limit.old": "The sample of {day} {year} is more than three years old.",

  "lime.change.fineness": "The lime's fineness: if only 60 % of it acts, the whole would be {kg}.",
  "lime.change.depth": "Worked in only {half} deep, half is enough: {kg}.",
  "lime.change.target": "Another target pH, set by your office.",
  "lime.change.history": "Lime given in the last year: what has not acted yet is taken off.",
  "lime.change.magnesium": "Magnesium in the soil test: it decides between calcitic and dolomitic lime.",
  "lime.change.set-out": "The day plants go out next: lime needs half a year before it.",
  "lime.change.test": "A new test, or the laboratory's own lime figure.",

  "lime.chart.title": "What lime does to this soil's pH",
  "lime.chart.lime": "pure lime",
  "lime.chart.ph": "pH",
  "lime.chart.target": "target",
};
