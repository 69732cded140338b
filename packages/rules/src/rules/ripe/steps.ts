import type { Step } from "../../core/rule.ts";
import { AT_5C, COLOURING, FRUIT_CHILLS_C, STORAGE } from "../../tables/fruitStorage.ts";
import { type Message, measure, onDay, say } from "../../text/message.ts";
import type { Reading } from "./reading.ts";
import { windowMessage } from "./say.ts";

/** What to do now, at each picking, before frost, and with what was picked. */
export function stepsOf(r: Reading): Step[] {
  return [...closedSteps(r), ...nowSteps(r), ...frostSteps(r), ...keepingSteps(r)].map((text) => ({ text }));
}

const closedSteps = (r: Reading): Message[] =>
  r.harvestFrom === null ? [] : [say("ripe.step.closed", { from: onDay(r.harvestFrom) })];

function nowSteps(r: Reading): Message[] {
  const sign = say(`ripe.step.sign-${r.at}`);
  const how = say("ripe.step.how");
  switch (r.code) {
    case "frost":
      return [say("ripe.step.before-frost", { evening: onDay(r.frostNight?.evening ?? r.today) }), how];
    case "frost-closed":
      if (r.shutAtFrost) return [say("ripe.step.stay-out")];
      return [say("ripe.step.cover", { evening: onDay(r.frostNight?.evening ?? r.today) })];
    case "pick":
      return [sign, how, say(`ripe.step.again-${r.at}`)];
    case "closed":
      return [sign];
    case "look":
      return [say(`ripe.step.look-${r.at}`), sign, how];
    default:
      return [
        sign,
        ...(r.green ? [windowMessage("green", r.green)] : []),
        ...(r.colour ? [windowMessage("colour", r.colour)] : []),
      ];
  }
}

function frostSteps(r: Reading): Message[] {
  const { low, likely } = r.autumn?.dates ?? {};
  return [
    ...(r.chillNight && !r.frostNight && r.code !== "wait"
      ? [
          say("ripe.step.chill", {
            evening: onDay(r.chillNight.evening),
            min: measure(r.chillNight.minC, "C"),
            mark: measure(FRUIT_CHILLS_C, "C"),
          }),
        ]
      : []),
    ...(low && likely && !r.frostNight
      ? [say("ripe.step.autumn", { low: onDay(low), likely: onDay(likely) })]
      : []),
    ...(r.code === "wait" || r.code === "frost-closed"
      ? []
      : [
          say("ripe.step.breakers", {
            low: measure(COLOURING.lowC, "C"),
            high: measure(COLOURING.highC, "C"),
            rh: measure(COLOURING.rhPct, "pct"),
          }),
        ]),
  ];
}

function keepingSteps(r: Reading): Message[] {
  if (r.code === "wait" || r.code === "none-before-frost" || r.code === "frost-closed") return [];
  return [
    say("ripe.step.keep", {
      low: measure(STORAGE.lowC, "C"),
      high: measure(STORAGE.highC, "C"),
      rhLow: measure(STORAGE.rhLowPct, "pct"),
      rhHigh: measure(STORAGE.rhHighPct, "pct"),
      daysLow: measure(STORAGE.daysLow, "days"),
      daysHigh: measure(STORAGE.daysHigh, "days"),
    }),
    say("ripe.step.not-colder", {
      mark: measure(FRUIT_CHILLS_C, "C"),
      five: measure(5, "C"),
      daysLow: measure(AT_5C.daysLow, "days"),
      daysHigh: measure(AT_5C.daysHigh, "days"),
    }),
  ];
}
