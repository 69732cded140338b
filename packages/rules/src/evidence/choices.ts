/**
 * Where published sources conflict and an office may say which reading it follows. What it chose is in the settings of
 * every state, so the ledger keeps which was in force.
 */

export const CHOICE_IDS = [
  "setting-depth.leggy",
  "topping.default",
  "stage.base-temperature",
  "rotation.interval",
] as const;
export type ChoiceId = (typeof CHOICE_IDS)[number];

export interface Choice {
  id: ChoiceId;
  rule: string;
  /** What is to be decided, for the office. */
  question: string;
  /** `claims` are ids of the evidence register that speak for it. */
  options: { id: string; says: string; claims: string[] }[];
  /** Id of the option that holds where nobody chose. */
  default: string;
}

export const choices: Choice[] = [
  {
    id: "setting-depth.leggy",
    rule: "setting-depth",
    question: "How deep is a leggy plant with a green stem set where the soil is warm?",
    options: [
      {
        id: "trade-rule",
        says: "Never bury a stem: the top of the root ball, and a stake.",
        claims: ["setting-depth.trade-rule"],
      },
      {
        id: "trials",
        says: "To the seed leaves, at most the first true leaf.",
        claims: ["setting-depth.lodging", "setting-depth.georgia"],
      },
    ],
    default: "trials",
  },
  {
    id: "topping.default",
    rule: "topping",
    question: "Is the tip taken out of young plants?",
    options: [
      {
        id: "no-unless-time",
        says: "No; where fruit would still colour before frost after the longest delay published, on half a bed.",
        claims: ["topping.potted-delay", "topping.gap"],
      },
      {
        id: "practice",
        says: "Yes in the ground, no in containers, as growers in cool seasons do.",
        claims: ["topping.practice"],
      },
      {
        id: "published",
        says: "Yes for the yield, where fruit would still colour before frost after the longest delay published.",
        claims: ["topping.chitwan", "topping.baitadi", "topping.lamjung", "topping.lalitpur"],
      },
    ],
    default: "no-unless-time",
  },
  {
    id: "rotation.interval",
    rule: "rotation",
    question:
      "Sources give a shortest and a longest rest for a bed. Which one holds where no disease was found?",
    options: [
      {
        id: "shortest",
        says: "The shortest that is published; the longest where that disease was found in the bed.",
        claims: ["rotation.phytophthora", "rotation.verticillium-uc", "rotation.chile"],
      },
      {
        id: "longest",
        says: "The longest that is published, always.",
        claims: ["rotation.phytophthora", "rotation.verticillium-uconn", "rotation.chile"],
      },
    ],
    default: "shortest",
  },
  {
    id: "stage.base-temperature",
    rule: "stage",
    question:
      "Above which temperature is heat counted where a variety's own base is not known? Published bases disagree.",
    options: [
      {
        id: "heat-units",
        says: "12.8 C (55 F), the base that the published heat sums of field chile were counted with.",
        claims: ["stage.heat-sums"],
      },
      {
        id: "compact-9.3",
        says: "9.3 C, as fitted to a compact hot cultivar.",
        claims: ["stage.base-compact"],
      },
      {
        id: "compact-13.3",
        says: "13.3 C, as fitted to a compact sweet cultivar.",
        claims: ["stage.base-compact"],
      },
      {
        id: "biquinho-16.8",
        says: "16.8 C, as found in two biquinho cultivars.",
        claims: ["stage.base-biquinho"],
      },
      {
        id: "compact-17.8",
        says: "17.8 C, as fitted to another compact hot cultivar.",
        claims: ["stage.base-taquito"],
      },
    ],
    default: "heat-units",
  },
];

/** The choice of an id; every id has one. */
function choiceOf(id: ChoiceId): Choice {
  const choice = choices.find((c) => c.id === id);
  if (!choice) throw new Error(`no choice ${id}`);
  return choice;
}

interface Chosen {
  choices?: Partial<Record<ChoiceId, string>> | undefined;
}

/** What an office chose, where the option exists. */
function chosenOption(choice: Choice, settings: Chosen): string | undefined {
  const chosen = settings.choices?.[choice.id];
  return choice.options.some((o) => o.id === chosen) ? chosen : undefined;
}

/** The option in force; an unknown one counts as not chosen. */
export function optionOf(id: ChoiceId, settings: Chosen): string {
  const choice = choiceOf(id);
  return chosenOption(choice, settings) ?? choice.default;
}

/** Which reading is in force, whether the office chose it or it holds by default, and the claims that speak for it. */
export interface InForce {
  option: string;
  by: "office" | "default";
  claims: string[];
}

export function inForce(id: ChoiceId, settings: Chosen): InForce {
  const choice = choiceOf(id);
  const option = optionOf(id, settings);
  return {
    option,
    by: chosenOption(choice, settings) === undefined ? "default" : "office",
    claims: choice.options.find((o) => o.id === option)?.claims ?? [],
  };
}
