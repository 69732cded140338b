import type { Step } from "../../core/rule.ts";
import { HOT_DAY_C } from "../../tables/stressHeat.ts";
import { type Message, measure, onDay, say, wordOf } from "../../text/message.ts";
import type { Asked } from "./ask.ts";
import { countsOf, type PungencyEvidence } from "./evidence.ts";
import type { ZoneLine } from "./line.ts";
import type { YieldLoss } from "./loss.ts";
import type { SensorLine } from "./sensors.ts";
import type { HoldReason, Signs, StopSign } from "./signs.ts";

const steps = (messages: Message[]): Step[] => messages.map((text) => ({ text }));
const because = (reasons: readonly (HoldReason | StopSign)[], { hottest }: Signs): Message[] =>
  reasons.map((reason) =>
    reason === "heat" && hottest
      ? say("hotter.because.heat", {
          day: onDay(hottest.day),
          hot: measure(hottest.tMaxC, "C"),
          limit: measure(HOT_DAY_C.default, "C"),
        })
      : say(`hotter.because.${reason}`),
  );

/** Ends the drought now. */
export const stopSteps = (signs: Signs): Step[] =>
  steps([...because(signs.stop, signs), say("hotter.step.refill"), say("hotter.step.tell-stopped")]);

/** Waits, and says for what. */
export const holdSteps = (signs: Signs): Step[] =>
  steps([...because(signs.hold, signs), say("hotter.step.full-water"), say("hotter.step.when-over")]);

/** What it may bring, what it costs, and how a half is tried. */
export function trySteps(
  asked: Asked,
  evidence: PungencyEvidence,
  z: ZoneLine,
  loss: YieldLoss,
  sensor: SensorLine,
): Step[] {
  const { species, marketType } = z.zone.planting;
  const type = wordOf(`hotter.type.${marketType}`);
  const d = z.on(z.start);
  const share = measure(100 * asked.etShare, "pct");
  const messages = [
    evidence.species.studies > 0
      ? say("hotter.step.species", { ...countsOf(evidence.species), species })
      : say("hotter.step.species-none", { species }),
    evidence.type.studies > 0
      ? say("hotter.step.type", { ...countsOf(evidence.type), type })
      : say("hotter.step.type-none", { type }),
    say("hotter.step.price", { share, days: loss.days, loss: measure(loss.lossPct, "pct") }),
  ];
  if (loss.kg !== undefined) {
    const kg = measure(loss.kg, "kg");
    messages.push(
      loss.money === undefined
        ? say("hotter.step.cost-fruit", { kg })
        : say("hotter.step.cost-money", { kg, money: Math.round(loss.money) }),
    );
  }
  messages.push(
    say("hotter.step.half"),
    say("hotter.step.line", {
      line: measure(d.lineMm, "mm"),
      raw: measure(d.rawMm, "mm"),
      days: Math.max(1, Math.round(z.cycleDays)),
    }),
  );
  if (z.held) {
    messages.push(
      say("hotter.step.held", {
        line: measure(d.lineMm, "mm"),
        raw: measure(d.rawMm, "mm"),
        from: onDay(asked.from),
      }),
    );
  }
  if (sensor.paired) {
    messages.push(say("hotter.step.tension", { kPa: measure(sensor.paired.kPa, "kPa"), n: sensor.paired.n }));
  }
  if (!asked.chosen) {
    const begun = asked.from <= asked.today;
    messages.push(
      say(begun ? "hotter.step.enter-share-begun" : "hotter.step.enter-share", {
        share,
        from: onDay(asked.from),
      }),
    );
  }
  messages.push(
    say("hotter.step.stop-rules", { hot: measure(HOT_DAY_C.default, "C") }),
    say("hotter.step.measure"),
  );
  return steps(messages);
}
