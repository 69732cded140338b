/** What setting-depth says, in English. Keys start with the rule's id. */
export const settingDepth: Record<string, string> = {
  "setting-depth.not.ended": "This planting has ended.",
  "setting-depth.not.already-out": "These plants already stand in the bed.",
  "setting-depth.not.unsown": "These seeds are not sown yet.",

  "setting-depth.decision.root-ball": "Set them with the top of the root ball at the soil's surface.",
  "setting-depth.decision.seed-leaves":
    "Set them down to the seed leaves, at most to the first true leaf: about {cm} of stem.",

  "setting-depth.step.root-ball": "Draw about {cm} of soil over the root ball, no more, and firm it.",
  "setting-depth.step.seed-leaves":
    "Bury the stem to the seed leaves; where those have dropped, to their scar. Stop below the first true leaf, never more than {cm}.",
  "setting-depth.step.stake": "Tie them to a stake: that holds a weak stem better than soil around it.",
  "setting-depth.step.half-bed":
    "To see what holds here, mark {pairs} pairs of strips side by side, {plantsPerStrip} plants to a strip, and toss a coin in each pair: one strip to the seed leaves, the other at the root ball, {plantsEachWay} plants each way. Treat them alike. After each storm count what leans, and weigh the first red fruit, strip by strip.",
  "setting-depth.step.early": "Do it at planting. Soil heaped around the stem later does not make up for it.",

  "setting-depth.because.grafted":
    "They are grafted: the union stays at least {union} above the soil, or the top roots past the rootstock.",
  "setting-depth.because.woody": "The stem is woody: buried wood does not root and may rot.",
  "setting-depth.because.not-leggy":
    "Nobody has noted them as leggy, so there is nothing to gain from going deeper.",
  "setting-depth.because.stem-unknown":
    "Nobody has noted whether the stem is green or woody, so no stem goes under.",
  "setting-depth.because.soil-unknown": "The soil's temperature is not known, and deeper soil is colder.",
  "setting-depth.because.soil-cold": "The soil is at {soil}, below {warm}, and deeper soil is colder still.",
  "setting-depth.because.trade-rule":
    "They are leggy, the stem is green and the soil is at {soil}: the trials would bury the stem to the seed leaves, and the trade's rule, which your office follows, would not.",
  "setting-depth.because.leggy-green-warm":
    "They are leggy, the stem is green, and the soil is at {soil}, {warm} or more: in trials plants set so lodged less.",

  "setting-depth.ends": "Planting ends this; so does a new note on stem or soil.",

  "setting-depth.stakes.union": "A buried graft union gives away what the graft was bought for.",
  "setting-depth.stakes.depth": "Depth decides a little about lodging and how early the red fruit comes.",

  "setting-depth.limit.differ":
    "The trade says not to bury peppers; trials found that plants set to the seed leaves or first leaf lodged less. This answer went {way}.",
  "setting-depth.way.root-ball": "with the trade's rule",
  "setting-depth.way.seed-leaves": "with the trials",
  "setting-depth.limit.default-trials":
    "Where the two differ, leggy plants with a green stem in warm soil, the trials are followed. That is the default: your office has not chosen.",
  "setting-depth.limit.office-trials":
    "Where the two differ, leggy plants with a green stem in warm soil, your office chose to follow the trials.",
  "setting-depth.limit.office-trade-rule":
    "Where the two differ, leggy plants with a green stem in warm soil, your office chose to follow the trade's rule.",
  "setting-depth.limit.trials":
    "The trials were in Florida, Massachusetts and Georgia. In Massachusetts yield did not change, more red fruit came in one of two years, and soil at the roots was colder the deeper they stood.",
  "setting-depth.limit.contradicted-green":
    "Notes call the stem both woody and green. The later one, green, counts.",
  "setting-depth.limit.contradicted-woody":
    "Notes call the stem both green and woody. The later one, woody, counts.",

  "setting-depth.change.stem": "A look at the stem at soil level: green, or brown and hard.",
  "setting-depth.change.leggy": "Word that the plants are leggy.",
  "setting-depth.change.soil": "Three mornings with a soil thermometer at 10 cm (4 in).",
  "setting-depth.change.trial": "Half a bed set each way on this farm.",
};
