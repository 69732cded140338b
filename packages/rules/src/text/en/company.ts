/** What company says, in English. Keys start with the rule's id. */
export const company: Record<string, string> = {
  "company.breach.unplaced": "Planting {block} has no bed yet.",
  "company.breach.unknown-bed": "Planting {block} stands in a bed that this plan does not have.",
  "company.breach.rows":
    "Planting {block} reaches row {last}; bed {bed} takes {rows, plural, one {# row} other {# rows}}.",
  "company.breach.length": "Planting {block} needs {needs} from {from} on; bed {bed} is {length} long.",
  "company.breach.overlap": "Plantings {block} and {other} stand on the same ground in bed {bed}.",
  "company.breach.rotation.pepper":
    "Planting {block}: bed {bed} had {crop} in {season}. Peppers after peppers ask for {years, plural, one {# season} other {# seasons}} between, so not before {from}.",
  "company.breach.rotation.phytophthora-blight":
    "Planting {block}: bed {bed} had {crop} in {season}. Phytophthora blight asks for {years, plural, one {# season} other {# seasons}} between, so not before {from}.",
  "company.breach.rotation.verticillium-wilt":
    "Planting {block}: bed {bed} had {crop} in {season}. Verticillium wilt asks for {years, plural, one {# season} other {# seasons}} between, so not before {from}.",
  "company.breach.rotation.bacterial-leaf-spot":
    "Planting {block}: bed {bed} had {crop} in {season}, and bacterial leaf spot was found there. It asks for {years, plural, one {# season} other {# seasons}} between, so not before {from}.",
  "company.breach.rotation.sclerotinia":
    "Planting {block}: bed {bed} had {crop} in {season}, and white mold was found there. It asks for {years, plural, one {# season} other {# seasons}} between, so not before {from}.",
  "company.breach.water-valve":
    "Plantings {block} and {other} hang on one valve, and only one of them is to be kept short of water.",
  "company.breach.water-bed":
    "Plantings {block} and {other} share bed {bed}, and only one of them is to be kept short of water.",
  "company.breach.isolation":
    "Plantings {block} and {other} stand {gap} apart. Seed kept from one of them asks for {needed}.",

  "company.cost.clump": "Varieties standing in more than one place",
  "company.cost.shade": "Plants in the noon shadow of a taller planting",
  "company.cost.outside-shade": "Plants in beds that trees or a house shade",
  "company.cost.walk": "Way between plantings picked in the same week",
  "company.cost.mixing": "Sweet and hot plantings close enough to mix up fruit",

  "company.not.no-plantings": "This plan has no plantings yet.",
  "company.not.no-beds": "This plan has no beds yet.",

  "company.missing.history":
    "What stood in {n, plural, one {one bed of this plan} other {# beds of this plan}} in the last five seasons.",
  "company.missing.history-moves": "A host of blight or wilt among it closes a bed to peppers for years.",
  "company.missing.place":
    "Where {n, plural, one {one bed lies} other {# beds lie}} on the farm: a corner, and which way the bed runs.",
  "company.missing.place-moves":
    "Seed is kept, and how far apart the plantings stand decides whether it comes true.",

  "company.decision.fits":
    "This plan holds: {plantings, plural, one {one planting} other {# plantings}}, {points} points.",
  "company.decision.better": "This plan holds, at {points} points. Moving one planting would save {saves}.",
  "company.decision.breaks":
    "This plan breaks {n, plural, one {one hard rule} other {# hard rules}}: mend that first.",
  "company.decision.unplaced": "{n, plural, one {One planting has} other {# plantings have}} no bed yet.",

  "company.step.propose": "Drag them into beds, or ask for a proposal: it leaves what is pinned where it is.",
  "company.step.move": "Planting {block} to bed {bed}, from row {row}, from {from} on, saves {saves} points.",
  "company.step.place":
    "Bed {bed}: planting {block} in {rows, plural, one {row {first}} other {rows {first} to {last}}}, from {from} to {to}: {plants} plants, {spacing} apart.",
  "company.step.table": "All {n} plantings stand in the table.",

  "company.ends": "A planting that moves, a new bed, or what stood in a bed changes it.",

  "company.stakes.broken": "A plan that breaks a hard rule loses plants, seed or a season of a bed.",
  "company.stakes.better": "What is left is walking, shade and order.",

  "company.limit.microbes":
    "Why the same variety together: it is easier to work. The microbes round pepper roots differ by variety, in one field; that clumps yield more nobody has shown, and that peppers know their kin is not claimed.",
  "company.limit.rotation":
    "Together in one season is not in one place for years. Where all peppers stand together the other beds rest; next year they move on as one.",
  "company.limit.weights":
    "How much each cost counts is common practice and this farm may see it otherwise. The units stand beside the points.",
  "company.limit.noon":
    "Shade is that of noon on 1 September, north of the equator, or 1 March, south of it. A tall row to the east or west shades too, in the morning and evening, and is not counted.",
  "company.limit.isolation":
    "Distances for seed are those for home seed: {sweet} between sweet ones, {hot} where one is hot, with a barrier crop between. Certified and commercial seed ask for others. Other species of pepper can cross too.",
  "company.limit.unknown-height":
    "{n, plural, one {One planting has} other {# plantings have}} no height: no shade is counted for them.",
  "company.limit.unknown-place":
    "{n, plural, one {One bed has} other {# beds have}} no place on the plan: shade and distance to and from them are not counted, and walking only as if they lay side by side.",
  "company.limit.unknown-first-pick":
    "{n, plural, one {One planting has} other {# plantings have}} no day of first pick: the way to them is not counted.",

  "company.change.move": "Moving a planting by hand: what it would cost is shown before it is dropped.",
  "company.change.proposal": "A proposal with another seed, or with other plantings pinned.",

  "company.table.title": "What stands where",
  "company.table.bed": "Bed",
  "company.table.planting": "Planting",
  "company.table.rows": "Rows",
  "company.table.from": "From",
  "company.table.to": "To",
  "company.table.plants": "Plants",
  "company.table.water": "Water",
  "company.table.bed-name": "{bed}",
  "company.table.planting-name": "{block}",
  "company.table.row-range": "{rows, plural, one {{first}} other {{first} to {last}}}",
  "company.table.water-full": "full",
  "company.table.water-deficit": "kept short",
};
