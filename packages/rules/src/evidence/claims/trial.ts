import type { Claim } from "../types.ts";

export const trialClaims: Claim[] = [
  {
    id: "trial.by-lot",
    rule: "trial",
    finding:
      "Treatments that are repeated, and given to plots by lot, can be told from differences of the ground; side by side without repeats they cannot.",
    sources: [{ key: "unl-on-farm" }, { key: "fisher-1935" }],
    design: "Guide for on-farm research; Fisher from memory",
    size: null,
    effect: null,
    grade: "moderate",
    limits: "The lot protects against the ground, not against a plot that is treated differently on purpose.",
    conflicts: [],
    wouldChange: "Nothing known: it follows from what chance is.",
  },
  {
    id: "trial.repeats",
    rule: "trial",
    finding:
      "Four to six complete blocks, or six to seven pairs of strips, are held to be enough for most farms.",
    sources: [{ key: "msstate-p3930" }, { key: "unl-on-farm", locator: "at least five pairs left" }],
    design: "Two guides for on-farm research",
    size: null,
    effect: null,
    grade: "weak",
    limits:
      "How many are needed depends on the spread of the plots and the difference that matters; reckon it.",
    conflicts: [],
    wouldChange: "The spread of plots on the farm itself.",
  },
  {
    id: "trial.variance",
    rule: "trial",
    finding:
      "Analysis of variance sets the differences of treatments against those of plots treated alike, and gives certified results on certified data.",
    sources: [{ key: "nist-strd-anova" }, { key: "fisher-1925" }],
    design: "A method; eleven certified data sets, Fisher from memory",
    size: "eleven data sets",
    effect: null,
    grade: "strong",
    limits:
      "Holds for plots that vary alike and do not touch one another; shares and small counts often do not.",
    conflicts: [],
    wouldChange: "Residuals that fan out or bend.",
  },
  {
    id: "trial.all-pairs",
    rule: "trial",
    finding:
      "Tukey's method keeps its promise for all pairs of means at once, and more than keeps it where plots are unequal.",
    sources: [{ key: "nist-handbook-tukey" }, { key: "kramer-1956" }],
    design: "A method; Kramer's extension from memory",
    size: null,
    effect: null,
    grade: "strong",
    limits:
      "Asks for plots that vary alike in all treatments. Finds less than a comparison planned beforehand.",
    conflicts: [],
    wouldChange: "A single comparison that was named before the trial began.",
  },
  {
    id: "trial.missing",
    rule: "trial",
    finding:
      "With plots missing, the model is fitted to those that are in; one degree of freedom goes with each plot.",
    sources: [{ key: "allan-wishart-1930", locator: "abstract" }, { key: "yates-1934" }],
    design: "A method; Yates from memory",
    size: null,
    effect: null,
    grade: "moderate",
    limits: "Holds only where what was lost was not lost by the treatment.",
    conflicts: [],
    wouldChange: "Word of why each plot is missing.",
  },
  {
    id: "trial.one-season",
    rule: "trial",
    finding: "The same trial on the same ground may come out differently the following year.",
    sources: [{ key: "msstate-p3930" }],
    design: "Guide for on-farm research",
    size: null,
    effect: null,
    grade: "weak",
    limits: "How much differs by crop, place and what is compared.",
    conflicts: [],
    wouldChange: "Repeats over seasons and farms.",
  },
];
