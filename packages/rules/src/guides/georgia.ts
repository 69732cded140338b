import { classesUpTo } from "./classes.ts";
import type { Guide, GuideReading } from "./types.ts";

const levels = (low: number, medium: number, high: number): GuideReading => ({
  extractant: "mehlich-1",
  decimals: 0,
  classes: classesUpTo(0, [
    ["low", low, "responds"],
    ["medium", medium, "may-respond"],
    ["high", high, "unlikely"],
    ["very-high", null, "unlikely"],
  ]),
  note: "the top of high is also printed as the start of very high; it is read as high",
});

const magnesium = (low: number, medium: number): GuideReading => ({
  extractant: "mehlich-1",
  decimals: 0,
  classes: classesUpTo(0, [
    ["low", low, "responds"],
    ["medium", medium, "may-respond"],
    ["high", null, "unlikely"],
  ]),
});

const sheet = {
  source: { key: "uga-crop-176", locator: "pepper transplants" },
  status: "seen",
  unit: "lb/A",
  medium: "mineral-soil",
  note: "The sheet does not name its extractant; the laboratory used Mehlich-1 at the time of the sheet.",
} as const;

/** Pepper transplants, Georgia, Coastal Plain, pounds per acre. Source: UGA crop sheet 176 (SN-206). */
export const georgiaCoastalPlain: Guide = {
  ...sheet,
  id: "ga-coastal-plain",
  title: "Georgia Coastal Plain, pepper transplants",
  region: "Georgia, Coastal Plain",
  nutrients: { P: levels(30, 60, 100), K: levels(70, 170, 275), Mg: magnesium(60, 120) },
};

/** The same for the Piedmont, Mountains and Limestone Valley (SN-207). */
export const georgiaPiedmont: Guide = {
  ...sheet,
  id: "ga-piedmont",
  title: "Georgia Piedmont, Mountains and Limestone Valley, pepper transplants",
  region: "Georgia, Piedmont, Mountains and Limestone Valley",
  nutrients: { P: levels(20, 40, 75), K: levels(120, 250, 400), Mg: magnesium(120, 240) },
};
