/** What topping says, in English. Keys start with the rule's id. */
export const topping: Record<string, string> = {
  "topping.not.ended": "This planting has ended.",
  "topping.not.unsown": "These seeds are not sown yet.",
  "topping.not.overwintered":
    "Plants kept over winter are cut back by other rules than the tip of a young plant.",
  "topping.not.taken": "The tip was taken on {day}, and it is taken once at most.",
  "topping.not.buds": "They show buds or more, and a tip taken now takes the first flowers with it.",
  "topping.not.past": "They have more than {to} true leaves, so the tip stays.",
  "topping.not.no-start": "The day the seedlings showed is not known, so their leaves cannot be forecast.",
  "topping.not.no-warmth": "No day ahead is known to bring them to six true leaves.",
  "topping.not.early":
    "They are likely to have {from} true leaves on {day}; three weeks before it this is answered.",

  "topping.decision.leave": "Leave the tips on.",
  "topping.decision.wait": "Not now: leave the tips on until what stands below is past.",
  "topping.decision.half-bed":
    "Try it on half of them: take the tip from {plants, plural, one {# plant} other {# plants}}, and leave the rest.",
  "topping.decision.take": "Take the tip, once, from {plants, plural, one {# plant} other {all # plants}}.",

  "topping.because.containers":
    "They stand in containers, where the trade finds little in it and the one trial in pots had fruit later.",
  "topping.because.sick":
    "Somebody noted disease, or signs that may be a virus or bacteria. A cut would carry it from plant to plant.",
  "topping.because.no-time":
    "By the published delay, ripe fruit would come before frost in {chance} of years, and {wanted} are asked for. With the tip left on it is {left}.",
  "topping.because.season-unknown":
    "How often frost would come before ripe fruit cannot be said, and the trials found flowers later.",
  "topping.because.one-plant": "One plant shows nothing by itself.",
  "topping.because.before":
    "They have about {leaves, plural, one {# true leaf} other {# true leaves}}, and the tip is taken between {from} and {to} if at all.",
  "topping.because.count":
    "By the heat so far they have about {leaves, plural, one {# true leaf} other {# true leaves}}. Count them first: between {from} and {to}, seed leaves not counted.",
  "topping.because.checked":
    "Cold has checked them, or they stand still. A plant that does not grow does not branch. Wait for two new leaves.",
  "topping.because.unhardened":
    "Nobody has noted them as hardened, and two weeks in the open bed have not passed. One strain at a time.",
  "topping.because.wet": "It rains today. Wet leaves and fresh cuts spread bacteria. Wait for a dry day.",
  "topping.because.time-enough":
    "Even after the longest delay published, ripe fruit would come before frost in {chance} of years, and {wanted} are asked for. No trial in a season like this was found, so half is a trial and the whole would be a guess.",
  "topping.because.practice":
    "Your office follows the trade, which takes the tip in the ground for earlier flowers and more branches.",
  "topping.because.published":
    "Your office follows the published yields. After the longest delay published, ripe fruit would still come before frost in {chance} of years.",

  "topping.step.window":
    "They are likely to have {from} to {to} true leaves from {opens} to {closes}. If that passes before the rest is right, leave the tips on.",
  "topping.step.when":
    "Choose a dry morning, with dry leaves and a dry day to follow. Count on a few plants: {from} to {to} true leaves, seed leaves not counted.",
  "topping.step.how":
    "Take the growing point alone, the tip above the youngest open leaf, and leave every open leaf. {plants, plural, one {# plant} other {# plants}}, once, and not again this season.",
  "topping.step.clean":
    "Wash hands with soap first and between beds. Wipe the blade after each plant with a disinfectant, as its label says. Leave out any plant with spots, mottle or curled leaves.",
  "topping.step.expect":
    "Expect lower plants with more branches. Trials of chilli in warm, long seasons had more fruit and later flowers; two more say flowers came sooner. The only days printed are {days} and {other}, for potted plants cut harder. The trade expects flowers earlier. No yield is promised.",
  "topping.half-bed.leave": "If the grower wants to see for themselves, at six to eight leaves",
  "topping.half-bed.wait": "To see what holds here, once they are fit and have six to eight leaves",
  "topping.half-bed.half-bed": "To learn from it",
  "topping.half-bed.take": "To learn from it, leave half of them as they are",
  "topping.step.half-bed":
    "{begins}: mark {pairs} pairs of strips side by side, {plantsPerStrip} plants to a strip, and toss a coin in each pair for the strip whose tips are taken, {plantsEachWay} plants each way. Treat them alike. Note the first flower and the first ripe fruit, and weigh the picking, strip by strip.",
  "topping.step.every-other":
    "{begins}: every other plant, {each, plural, one {# plant} other {# plants}} each way. So few show only a large difference.",
  "topping.step.note": "Note the day as tip taken, so that nobody takes it twice.",

  "topping.ends": "More than {to} true leaves, or the first bud, ends this.",
  "topping.stakes.window": "The leaves at which it is done pass. Leaving the tip on loses nothing else.",
  "topping.stakes.none": "Leaving the tip on loses nothing.",

  "topping.table.title": "The first ripe fruit before frost, by the published delay",
  "topping.table.way": "Tip",
  "topping.table.early": "Early, one year in ten",
  "topping.table.likely": "Likely",
  "topping.table.late": "Late, one year in ten",
  "topping.table.chance": "Before frost",
  "topping.table.left": "left on",
  "topping.table.taken": "taken",

  "topping.chart.title": "True leaves ahead, and the leaves at which a tip is taken",
  "topping.chart.day": "Day",
  "topping.chart.leaves": "True leaves",
  "topping.chart.low": "Early",
  "topping.chart.likely": "Likely",
  "topping.chart.high": "Late",
  "topping.chart.from": "Six leaves",
  "topping.chart.to": "Eight leaves",

  "topping.limit.default-no-unless-time":
    "Practice and trials differ. The careful reading is followed, no unless there is time for the longest delay published. That is the default: your office has not chosen.",
  "topping.limit.office-no-unless-time":
    "Practice and trials differ. Your office chose the careful reading: no, unless there is time for the longest delay published.",
  "topping.limit.office-practice":
    "Practice and trials differ. Your office chose to follow the trade: yes in the ground, no in containers.",
  "topping.limit.office-published":
    "Practice and trials differ. Your office chose to follow the published yields, where there is time for later fruit.",
  "topping.limit.gap":
    "No field trial of topping was found for short seasons, and none for bell peppers outdoors in a cool climate.",
  "topping.limit.warm-trials":
    "The yields are of chilli and capsicum in warm, long seasons, mostly pinched twice, 15 to 45 days after setting out. They do not carry over to one tip in a short season.",
  "topping.limit.delay":
    "The delay is of two potted ornamental peppers cut harder than a tip. No days were printed by the field trials. It is counted as heat, so in a cool autumn it lasts longer.",
  "topping.limit.leaf-heat":
    "Leaves are forecast with the heat per leaf of another species, corrected by this planting's notes. A count decides.",
  "topping.limit.no-years":
    "Fewer than eight years of daily minima and maxima are known here, so nothing is said of autumn.",
  "topping.limit.green": "Ripe means mature green here, because these are picked green.",
  "topping.limit.cold-unknown":
    "No temperature at the plants is known for the last two weeks. Look whether they grow before a tip is taken.",
  "topping.limit.odd-notes": "Some notes on stages contradict each other and were left out.",

  "topping.change.count": "A count of true leaves on a few plants.",
  "topping.change.hardened": "Word that they are hardened.",
  "topping.change.years": "Eight years of daily minima and maxima from a station nearby.",
  "topping.change.days": "Days to maturity from the seed list, or this farm's earlier first picks.",
  "topping.change.trial": "Half a bed each way on this farm, and over seasons more than one.",
};
