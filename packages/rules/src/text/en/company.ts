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
};
