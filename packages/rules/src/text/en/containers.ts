/** What containers says, in English. Keys start with the rule's id. */
export const containers: Record<string, string> = {
  "containers.not.ground": "These plants stand in the ground, not in containers.",
  "containers.not.ended": "The plants have been cleared.",
  "containers.not.not-out": "No plants stand in these containers yet.",
  "containers.decision.flush":
    "Flush the containers with clear water, {litres} each, before the next feed: salt has gathered.",
  "containers.decision.correct-ph": "Put the pH right: the drain read {ph} on {day}.",
  "containers.decision.steady-daily":
    "Give each plant {plant} {times, plural, one {once a day} other {# times a day}}, with {ppm} of nitrogen added.",
  "containers.decision.steady-days":
    "Give each plant {plant} every {days, plural, one {day} other {# days}}, with {ppm} of nitrogen added.",
  "containers.step.water-daily":
    "{plant} for each plant, {pot} for each container, {times, plural, one {once a day} other {# times a day, spread from morning to late afternoon}}. All containers together take {all} a day.",
  "containers.step.water-days":
    "{plant} for each plant, {pot} for each container, every {days, plural, one {day} other {# days}}. All containers together take {all} a day.",
  "containers.step.range":
    "A plant takes from {least} on the mildest of these days to {most} on the thirstiest. Lift a pot before you water: a heavy one can wait.",
  "containers.step.thirstiest":
    "On {day}, the thirstiest of them, give {plant} for each plant {times, plural, one {once} other {# times}}.",
  "containers.step.thirstiest-recent":
    "A day like {day} asks for {plant} for each plant {times, plural, one {once} other {# times}}.",
  "containers.step.drain-unknown":
    "Catch what runs out of a few containers. {share} of what you give, about {out} each, should drain, so that salt does not gather; {low} to {high} is right. Tell us what you see.",
  "containers.step.drain-dry":
    "On {day} only {seen} drained; {low} to {high} is right. From now on {share} is to drain, about {out} for each container.",
  "containers.step.drain-wasteful":
    "On {day} {seen} drained, more than the {low} to {high} that is right: feed and water run away. From now on {share} is to drain, about {out} for each container.",
  "containers.step.drain-right":
    "On {day} {seen} drained, which is right ({low} to {high}). Keep it at {share}, about {out} for each container.",
  "containers.step.hot":
    "It gets to {c}: shade the pots themselves, or set them close so that they shade one another. Roots in dark pots stop growing in the heat.",
  "containers.step.stale": "The drain was last read on {day}. That is too long ago to use: read it again.",
  "containers.step.salt-unjudged":
    "The drain read {ec} on {day}. Without the clear water's own conductivity nobody can say whether that is much: measure it.",
  "containers.step.flush":
    "The drain read {ec} on {day}, more than {margin} above the feed ({feed} at most). Give each container {litres} of clear water in {portions} portions half an hour apart, and read the drain again. Go on until it is within {margin} of the feed.",
  "containers.step.hungry":
    "The drain read {ec} on {day}, less than the feed ({feed}): the plants take up all they get. If leaves pale, feed a little more.",
  "containers.step.salt-right":
    "The drain read {ec} on {day}; the feed has at most {feed}. No salt gathers. Flush when the drain is more than {margin} above the feed.",
  "containers.step.ph-sour":
    "The drain's pH was {ph} on {day}, below {low}: iron and manganese can poison leaves. Stop any acid, take a feed with less ammonium, and read again in a week.",
  "containers.step.ph-alkaline":
    "The drain's pH was {ph} on {day}, above {high}: iron runs short and young leaves pale. Have the water's alkalinity tested, and take a feed whose label says that it acidifies.",
  "containers.step.ph-alkaline-water":
    "The drain's pH was {ph} on {day}, above {high}: iron runs short and young leaves pale. The water brings the lime (below): take a feed whose label says that it acidifies, or ask whether acid is to be injected.",
  "containers.step.ph-right": "The drain's pH was {ph} on {day}, between {low} and {high}: right.",
  "containers.step.ph-rises": "It has risen by {change} in four weeks. Read it every week.",
  "containers.step.ph-falls": "It has fallen by {change} in four weeks. Read it every week.",
  "containers.step.alkalinity":
    "The water's alkalinity, {alkalinity} as CaCO3, is no more than the {most} that is desirable. It brings {load} of lime a week into each container.",
  "containers.step.alkalinity-high":
    "The water's alkalinity, {alkalinity} as CaCO3, is above the {most} that is desirable: each week it brings {load} of lime into each container, and the pH creeps up. {above} meq/L lie above. How much of which acid that takes, the laboratory or the supplier says; rain water mixed in takes it down too.",
  "containers.step.feed":
    "Feed {target} of nitrogen with every watering: {week} of nitrogen a week for each container. The water's own nitrate is not known and not taken off.",
  "containers.step.feed-less-water":
    "Feed {target} of nitrogen in all with every watering. The water brings {water}, so add {add}: {week} of nitrogen a week for each container.",
  "containers.step.feed-none":
    "The water alone brings {water} of nitrogen, no less than the {target} that is wanted. Add none.",
  "containers.step.meter":
    "The meter should show {low} to {high} in the feed, the clear water's own in it. The label's figure comes first.",
  "containers.step.meter-above":
    "The meter should show {low} to {high} more in the feed than in clear water. Measure the clear water and subtract it; the label's figure comes first.",
  "containers.step.why-120":
    "More is waste: in one trial peppers fed 175 ppm bore no more to sell than at 120, took 10 % more water and drained 250 % more nitrate.",
  "containers.step.lean":
    "Leaner by stage: {ppm} while {stage}. It saves feed; in that trial the lean course (60, 90, 120 ppm) bore smaller fruit and less weight than 175.",
  "containers.stage.vegetative": "no fruit has set",
  "containers.stage.early-fruit": "the first fruit grows",
  "containers.stage.late-fruit": "fruit is picked",
  "containers.step.product":
    "Of {what} that is {inCan} in {can} of water, {week} a week for each container. It brings {potash} of K2O along.",
  "containers.step.injector":
    "Through the injector at 1:{ratio} (1 part in {ratio} parts of finished feed): {grams} of {what} in {tank} of stock. One tank lasts about {days}.",
  "containers.step.too-strong":
    "At 1:{set} that would be {strength} in {litre} of stock; a published label stops at {most}. Make the stock weaker and set the injector to 1:{ratio}.",
  "containers.step.does-not-dissolve":
    "At 1:{set} that would be {strength} in {litre} of stock; at {tank} no more than {most} of {what} dissolves. Make the stock weaker and set the injector to 1:{ratio}.",
  "containers.step.stock-too-cold":
    "No solubility of {what} is published for a stock tank as cold as {tank}. Keep the stock at {coldest} or warmer, or feed by hand.",
  "containers.step.stock-cannot-dissolve":
    "{what} does not dissolve at {tank} in as much water as the feed itself has. Choose another material.",
  "containers.step.choose":
    "Several materials of the shed could feed these plants. Choose one in the feeding plan, and its grams are said here.",
  "containers.step.no-material":
    "No material with nitrogen that dissolves and may be used here is in the shed. Feed by the label of one that is.",
  "containers.step.unfit": "The {what} chosen is not used for containers: {why}.",
  "containers.why.another-chosen": "another was chosen",
  "containers.why.not-certified": "it is not allowed on this ground",
  "containers.why.proof-expired": "the proof of its certified use has expired",
  "containers.why.no-proof": "nothing says until when its certified use is proven",
  "containers.why.not-soluble": "it does not dissolve",
  "containers.why.raw-manure": "raw manure never goes on a standing crop",
  "containers.why.liming-material": "it limes the mix",
  "containers.why.no-food": "it feeds nothing that is asked for",
  "containers.why.no-nitrogen": "it holds no nitrogen",
  "containers.why.soil-ph": "it sours the mix",
  "containers.why.ash-with-ammonium": "ash and ammonium do not go together",
  "containers.step.slow":
    "Instead, not beside it: controlled-release fertiliser (14-14-14) mixed in, about {spoons} US tablespoons ({granules}) for each container, then clear water. Two gardening pages agree on it; the label's own rate comes first.",
  "containers.step.potting-test":
    "The potting-mix test of {day} is not read here: no published ranges for its extraction were found that hold for peppers. Read the drain instead.",
  "containers.step.soil-test":
    "The soil test of {day} is of ground and not of this mix. It says nothing about these containers.",
  "containers.step.size":
    "Each plant has {own} to root in. The one published size read, {eggplant} for an eggplant, is no more.",
  "containers.step.size-small":
    "Each plant has {own} to root in; the one published size read, for eggplant, is {eggplant}. A smaller pot works, but dries out sooner and heats up faster.",
  "containers.ends": "Another forecast, a reading of the drain, or a change of stage ends this.",
  "containers.stakes.flush": "Salt burns roots, and fruit rots at its end.",
  "containers.stakes.correct-ph": "Leaves pale or scorch slowly while the pH is wrong.",
  "containers.stakes.steady": "Nothing presses; pots are watered as they dry.",
  "containers.limit.ground":
    "The plants' thirst is reckoned for the ground the bed takes, all of it covered in time. Pots that stand apart, or in wind or beside a warm wall, differ: lift them.",
  "containers.limit.mix":
    "What a potting mix can give is common practice, not a measurement. Weigh a watered and a wilting pot to know yours.",
  "containers.limit.mineral-soil":
    "Garden soil in pots drains badly and stays wet at the bottom. Water less and look more.",
  "containers.limit.recent": "No forecast is at hand: the last days' weather is taken to go on.",
  "containers.limit.cover-seen":
    "Here the plants' cover is taken as seen. The advice for a valve on these containers goes by stage alone and can differ.",
  "containers.limit.under-plastic":
    "Under a tunnel or in a house sun, warmth and moisture are those of the open. Plants there usually use less than is said, in heat sometimes more.",
  "containers.limit.rockwool":
    "The nitrogen trial was one sweet pepper in rockwool in a Florida greenhouse. A mix with compost feeds by itself.",
  "containers.limit.thresholds":
    "When to flush and how much should drain are common practice; no published threshold was found.",
  "containers.limit.nitrogen-only":
    "Only nitrogen is dosed here. Potash, calcium, magnesium and traces must be in the feed too: a mix holds next to none.",
  "containers.change.drain": "The drain: its conductivity, its pH and how much of a watering runs out.",
  "containers.change.water": "A water test: conductivity, alkalinity, nitrate.",
  "containers.change.weigh":
    "The mix's own field capacity and wilting point, from a watered and a wilting pot weighed.",
  "containers.change.cover": "The share of the ground that the plants cover, seen from straight above.",
  "containers.change.forecast": "A forecast for the next days.",
  "containers.change.label": "The feed label's own conductivity table.",
  "containers.missing.weather": "A forecast with highest and lowest temperatures, or those of the last days.",
  "containers.missing.weather-moves":
    "A grown plant here takes {low} on a day when grass uses {cool}, and {high} on one when it uses {hot}.",
  "containers.missing.texture": "The texture of the garden soil in the containers, by feel.",
  "containers.missing.texture-moves":
    "From the soil that holds least to the one that holds most, a container gives {low} to {high} before plants are held back.",
  "containers.chart.ahead": "Water that a container will use, by the forecast",
  "containers.chart.recent": "Water that a container would have used on the last days",
  "containers.chart.day": "day",
  "containers.chart.litres": "water of one container",
  "containers.chart.use": "used in the day",
  "containers.chart.ready": "what one filling gives before plants are held back",
  "containers.chart.drain-title": "Salt in the drain",
  "containers.chart.ec": "conductivity",
  "containers.chart.drain": "in the drain",
  "containers.chart.feed": "in the feed, at most",
  "containers.chart.flush": "flush above this",
};
