import { z } from "zod";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import type { SourceRef } from "../../core/working.ts";

const BLOG: SourceRef = {
  key: "delaware-feed-ec-2008",
  locator: "two makers of 20-20-20 and 15-0-15 (SN-808)",
};

/**
 * Conductivity of a feed above clear water, per ppm of nitrogen in it, least and most of six published feeds [dS/m per mg/L]:
 * 20-20-20 0.0041 and 0.0046, 20 % N 0.0064, 15-5-15 0.0074, 15-0-15 0.0069 and 0.0076 (SN-806 to SN-808).
 */
export const FEED_EC_PER_PPM_N = { low: 0.0041, high: 0.0076, source: BLOG } as const;

export interface FeedEcInput {
  /** Nitrogen that the feed adds to the water [mg/L]. */
  ppmN: number;
  /** As the label says; left out: the published span [dS/m per mg/L of N]. */
  ecPerPpmN?: number | undefined;
  /** Of the clear water [dS/m]. */
  waterEcDsPerM?: number | undefined;
}

/**
 * What the meter should show in a feed: what the feed adds, and that on top of the clear water's own (SN-813) [dS/m].
 * Null where the water's is not known: missing is not zero.
 */
function feedEc({ ppmN, ecPerPpmN, waterEcDsPerM }: FeedEcInput): {
  feedLowDsPerM: number;
  feedHighDsPerM: number;
  measuredLowDsPerM: number | null;
  measuredHighDsPerM: number | null;
} {
  const feedLowDsPerM = ppmN * (ecPerPpmN ?? FEED_EC_PER_PPM_N.low);
  const feedHighDsPerM = ppmN * (ecPerPpmN ?? FEED_EC_PER_PPM_N.high);
  const onTop = (feed: number) => (waterEcDsPerM === undefined ? null : feed + waterEcDsPerM);
  return {
    feedLowDsPerM,
    feedHighDsPerM,
    measuredLowDsPerM: onTop(feedLowDsPerM),
    measuredHighDsPerM: onTop(feedHighDsPerM),
  };
}

const ON_TOP: SourceRef = { key: "delaware-feed-ec-2008", locator: "subtract clear water (SN-813)" };

/** `feed-ec`: see {@link feedEc}. */
export const feedEcQuantity = defineQuantity({
  id: "feed-ec",
  question: "What should the conductivity meter show in this feed?",
  schema: z.strictObject({
    ppmN: num("nitrogen that the feed adds", "mg/L", 0, 5000),
    ecPerPpmN: num(
      "conductivity per ppm of nitrogen, from the label",
      "dS/m per mg/L",
      0.001,
      0.05,
    ).optional(),
    waterEcDsPerM: num("conductivity of the clear water", "dS/m", 0, 50).optional(),
  }),
  outputs: {
    feedLowDsPerM: { meaning: "what the feed adds, least", unit: "dS/m" },
    feedHighDsPerM: { meaning: "what the feed adds, most", unit: "dS/m" },
    measuredLowDsPerM: {
      meaning: "on top of the clear water, least; null where that is not known",
      unit: "dS/m",
    },
    measuredHighDsPerM: {
      meaning: "on top of the clear water, most; null where that is not known",
      unit: "dS/m",
    },
  },
  sources: [
    BLOG,
    { key: "msu-fertigation", locator: "SN-806" },
    { key: "injector-newsletter-38", locator: "SN-807" },
  ],
  compute(input, w) {
    const value = feedEc(input);
    const label = input.ecPerPpmN;
    if (label === undefined)
      w.estimate("ecPerPpmN", "0.0041 to 0.0076, the span of six published feeds", BLOG);
    const factor = (end: "low" | "high") => label ?? FEED_EC_PER_PPM_N[end];
    const source = label === undefined ? BLOG : null;
    const expression = (end: "low" | "high") => `${input.ppmN} mg/L x ${factor(end)}`;
    w.line("ECfeed,low", "what the feed adds, least", expression("low"), value.feedLowDsPerM, "dS/m", source);
    w.line(
      "ECfeed,high",
      "what the feed adds, most",
      expression("high"),
      value.feedHighDsPerM,
      "dS/m",
      source,
    );
    const onTop = input.waterEcDsPerM === undefined ? "water not tested" : `ECfeed + ${input.waterEcDsPerM}`;
    w.line("EC,low", "meter in the feed, least", onTop, value.measuredLowDsPerM, "dS/m", ON_TOP);
    w.line("EC,high", "meter in the feed, most", onTop, value.measuredHighDsPerM, "dS/m", ON_TOP);
    return value;
  },
});
