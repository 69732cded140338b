import { type Message, measure, onDay, say } from "../../text/message.ts";
import { DRAIN_PH, FLUSH_ABOVE_FEED_DS_PER_M } from "./drain.ts";
import { ALKALINITY_DESIRABLE, drainAboveFeed, type PotReading } from "./judge.ts";
import { volume } from "./say.ts";

/** A flush is a container's own volume of clear water (common practice). */
const FLUSH_VOLUMES = 1;
const PORTIONS = 3;

/** What the drain says: salt, hunger, sourness; and the lime of the water. */
export function drainSteps(r: PotReading): Message[] {
  return [...staleStep(r), ...saltSteps(r), ...phSteps(r), ...limeSteps(r)];
}

const staleStep = ({ drain }: PotReading): Message[] =>
  drain.staleOn === undefined ? [] : [say("containers.step.stale", { day: onDay(drain.staleOn) })];

function saltSteps({ code, drain, feed, potted }: PotReading): Message[] {
  if (drain.ec === undefined) return [];
  const seen = { ec: measure(drain.ec.value, "dS/m"), day: onDay(drain.ec.on) };
  const above = drainAboveFeed(drain, feed);
  const { measuredLow, measuredHigh } = feed.ec;
  if (above === undefined || measuredLow === null || measuredHigh === null) {
    return [say("containers.step.salt-unjudged", seen)];
  }
  const fed = {
    ...seen,
    feed: measure(measuredHigh, "dS/m"),
    margin: measure(FLUSH_ABOVE_FEED_DS_PER_M, "dS/m"),
  };
  if (code === "flush") {
    const litres = volume(FLUSH_VOLUMES * potted.pots.volumeL);
    return [say("containers.step.flush", { ...fed, litres, portions: PORTIONS })];
  }
  if (drain.ec.value < measuredLow) {
    return [say("containers.step.hungry", { ...seen, feed: measure(measuredLow, "dS/m") })];
  }
  return [say("containers.step.salt-right", fed)];
}

function phSteps({ drain, lime }: PotReading): Message[] {
  if (drain.ph === undefined) return [];
  const { value, on } = drain.ph;
  const seen = { ph: value, day: onDay(on), low: DRAIN_PH.low, high: DRAIN_PH.high };
  const limy = lime !== undefined && lime.alkalinity > ALKALINITY_DESIRABLE;
  const key =
    value < DRAIN_PH.low
      ? "containers.step.ph-sour"
      : value > DRAIN_PH.high
        ? limy
          ? "containers.step.ph-alkaline-water"
          : "containers.step.ph-alkaline"
        : "containers.step.ph-right";
  const { phDrift } = drain;
  return [
    say(key, seen),
    ...(phDrift === undefined
      ? []
      : [
          say(phDrift > 0 ? "containers.step.ph-rises" : "containers.step.ph-falls", {
            change: Math.round(10 * Math.abs(phDrift)) / 10,
          }),
        ]),
  ];
}

function limeSteps({ lime }: PotReading): Message[] {
  if (!lime) return [];
  const params = {
    alkalinity: measure(lime.alkalinity, "mg/L"),
    most: measure(ALKALINITY_DESIRABLE, "mg/L"),
    load: measure(lime.gPerPotWeek, "g"),
    above: Math.round(10 * lime.aboveMmolcPerL) / 10,
  };
  return [
    say(
      lime.alkalinity > ALKALINITY_DESIRABLE
        ? "containers.step.alkalinity-high"
        : "containers.step.alkalinity",
      params,
    ),
  ];
}
