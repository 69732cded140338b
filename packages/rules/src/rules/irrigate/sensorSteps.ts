import type { Step } from "../../core/rule.ts";
import { measure, onDay, say } from "../../text/message.ts";
import { contentDepletionMm, dayOfWord, type SensorWord } from "../../water/soilSensor.ts";
import type { ValveReading } from "./decide.ts";
import type { ZoneReading } from "./reading.ts";
import { bedOf, type ValveSetting } from "./setting.ts";

/** What each soil sensor says beside the book, and which of them decided; or why it is not used. */
export const sensorSteps = (setting: ValveSetting, { zones }: ValveReading): Step[] =>
  zones.flatMap((z) => {
    const used = z.sensors.filter((s) => s.used);
    const contents = used.filter((s) => s.kind === "water-content").length;
    const words = z.sensors.map((s) => wordFor(setting, z, s, contents < 2 && s === used[0]));
    return (contents < 2 ? words : [...words, meanOf(setting, z)]).map((text) => ({ text }));
  });

const meanOf = (setting: ValveSetting, z: ZoneReading) =>
  say("irrigate.step.sensor-mean", {
    bed: bedOf(setting, z.zone.bed),
    missing: measure(contentDepletionMm(z.sensors) ?? 0, "mm"),
    book: measure(z.bookDepletionMm, "mm"),
  });

function wordFor(setting: ValveSetting, z: ZoneReading, s: SensorWord, decides: boolean) {
  const said = {
    bed: bedOf(setting, z.zone.bed),
    depth: measure(s.depthCm, "cm"),
    value: s.kind === "water-content" ? measure(100 * s.value, "pct") : measure(s.value, "kPa"),
    book: measure(z.bookDepletionMm, "mm"),
  };
  if (!s.used) {
    const day = onDay(dayOfWord(s, setting.state.site.timeZone));
    return say(`irrigate.sensor.${s.why}`, { ...said, day });
  }
  if (s.kind === "water-content") {
    const missing = measure(s.depletionMm, "mm");
    return say(decides ? "irrigate.step.sensor-content" : "irrigate.step.sensor-content-too", {
      ...said,
      missing,
    });
  }
  const start = { low: measure(s.start.low, "kPa"), high: measure(s.start.high, "kPa") };
  if (!decides) return say("irrigate.step.sensor-tension-too", { ...said, ...start });
  return say(s.says === "water" ? "irrigate.step.sensor-water" : "irrigate.step.sensor-wait", {
    ...said,
    ...start,
    ready: measure(z.today.rawMm, "mm"),
  });
}
