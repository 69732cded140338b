import type { Step } from "../../core/rule.ts";
import { type Message, measure, onDay, say } from "../../text/message.ts";
import type { Hardening, HardeningDay } from "./plan.ts";

/** What to do, day by day and on each of them. */
export function stepsOf(h: Hardening): Step[] {
  if (h.code === "hold") {
    return [
      { text: say("hardening.step.hold", { c: measure(16, "C") }) },
      { text: say("hardening.step.hold-until") },
    ];
  }
  const steps: Message[] = [
    ...h.plan.days.map((d) => dayStep(d, h.floorC)),
    say("hardening.step.water"),
    say("hardening.step.no-nitrogen"),
    say("hardening.step.wind-first"),
    say("hardening.step.done", { ready: onDay(h.plan.readyOn) }),
    ...(h.plan.readyOn > h.out.day
      ? [say("hardening.step.set-out-later", { ready: onDay(h.plan.readyOn), out: onDay(h.out.day) })]
      : []),
  ];
  return steps.map((text) => ({ text }));
}

function dayStep(d: HardeningDay, floorC: number): Message {
  const params = {
    day: onDay(d.day),
    hours: measure(d.hours, "hours"),
    c: measure(d.fromC, "C"),
    floor: measure(floorC, "C"),
    ...(d.nightC !== null && { night: measure(d.nightC, "C") }),
  };
  if (d.keptIn) return say(`hardening.step.in-${d.keptIn}`, params);
  if (d.bringIn) return say("hardening.step.day-bring-in", params);
  if (d.nightOut)
    return say(d.nightC === null ? "hardening.step.day-night-if" : "hardening.step.day-night", params);
  return say(d.sheltered ? "hardening.step.day-sheltered" : "hardening.step.day", params);
}
