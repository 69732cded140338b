import { daysBetween, localDay } from "../../core/days.ts";
import { relationOf } from "../../soil-acidity/limeNeed.ts";
import { qualityOf } from "../../soil-acidity/quality.ts";
import { acidSoilOf } from "../../soil-acidity/soil.ts";
import type { SoilTest } from "../../states/parts.ts";
import type { BedState } from "../../states/states.ts";
import { isLime, LIME_MATERIALS, type LimeKind } from "../../tables/limeMaterials.ts";
import { agedSd, CP, RETEST } from "../published.ts";
import type { UncertainInput } from "../types.ts";

type Input = UncertainInput<BedState>;

/** A sample's pH drifts so much a year with rain, lime and ammonium (common practice). */
const PH_DRIFT_A_YEAR = 0.1;
/** Of the depth stated, how much shallower or deeper a bed is really worked (common practice). */
const DEPTH_OFF = 0.25;
/** Farm lime nobody tested: of the pure kind's neutralising value, and of full fineness (common practice). */
const UNTESTED = { neutralising: 0.85, effective: 0.6 } as const;

/** What a bed's lime rests on that is not known for sure. */
export function limeInputs(state: BedState, decidedKind: LimeKind | undefined): Input[] {
  const today = localDay(state.asOf, state.site.timeZone);
  const soil = acidSoilOf(state.soilTests, today);
  if (!soil) return [];
  const { test, waterPh, depthCm } = soil;
  const years = Math.max(0, daysBetween(test.sampledOn, today)) / 365;
  const withTest =
    (change: (value: number) => Partial<SoilTest>): Input["apply"] =>
    (s, value) => ({
      ...s,
      soilTests: s.soilTests.map((t) => (t.id === test.id ? { ...t, ...change(value) } : t)),
    });
  const phSd = agedSd(RETEST.phSd, PH_DRIFT_A_YEAR, years);
  const inputs: Input[] = [
    {
      id: "soil-ph",
      spread: {
        shape: "normal",
        unit: "pH",
        mean: waterPh,
        sd: phSd,
        least: 3,
        most: 10,
        source: RETEST.source,
      },
      cost: "laboratory",
      apply: withTest((value) => ({ waterPh: value })),
    },
  ];
  const relation = relationOf(soil);
  if ("lacks" in relation) return inputs;
  if (relation.bufferPh !== undefined && test.bufferPh) {
    const { method, value: mean } = test.bufferPh;
    inputs.push({
      id: "buffer-ph",
      spread: {
        shape: "normal",
        unit: "pH",
        mean,
        sd: RETEST.phSd,
        least: 4,
        most: 8,
        source: RETEST.source,
      },
      cost: "laboratory",
      apply: withTest((value) => ({ bufferPh: { method, value } })),
    });
  } else if (relation.acidityCmolPerKg !== undefined) {
    const mean = relation.acidityCmolPerKg;
    inputs.push({
      id: "acidity",
      spread: {
        shape: "normal",
        unit: "share",
        mean: 1,
        sd: RETEST.contentCv,
        least: 0.5,
        most: 1.5,
        source: RETEST.source,
      },
      cost: "laboratory",
      apply: withTest((value) => ({ acidityCmolPerKg: Math.min(50, mean * value) })),
    });
  }
  inputs.push({
    id: "worked-depth",
    spread: {
      shape: "uniform",
      unit: "cm",
      low: depthCm * (1 - DEPTH_OFF),
      high: depthCm * (1 + DEPTH_OFF),
      source: CP,
    },
    cost: "free",
    apply: withTest((value) => ({ depthCm: value })),
  });
  const quality = qualityInput(state, decidedKind);
  return quality ? [...inputs, quality] : inputs;
}

/** The worth of the lime that is advised, where its label was not read. */
function qualityInput(state: BedState, kind: LimeKind | undefined): Input | undefined {
  if (!kind) return undefined;
  const own = state.shed?.find((m) => m.kind === kind);
  const { untested } = qualityOf(kind, own);
  if (!untested.fineness && !untested.neutralisingValue) return undefined;
  const low =
    (untested.fineness ? UNTESTED.effective : 1) * (untested.neutralisingValue ? UNTESTED.neutralising : 1);
  return {
    id: "lime-quality",
    spread: { shape: "uniform", unit: "share", low, high: 1, source: CP },
    cost: "free",
    apply: (s, value) => ({ ...s, shed: labelled(s, kind, value) }),
  };
}

/** The shed with its limes of that kind worth so much of the pure kind; where it holds none, one to be bought. */
function labelled(state: BedState, kind: LimeKind, share: number): NonNullable<BedState["shed"]> {
  const shed = state.shed ?? [];
  const worth = { ccePct: LIME_MATERIALS[kind].ccePct * share, finenessPct: 100 };
  const inShed = shed.some((m) => isLime(m.kind) && m.kind === kind);
  if (inShed) {
    return shed.map((m) => {
      if (m.kind !== kind) return m;
      const { untested, neutralisingValuePct } = qualityOf(kind, m);
      const stated = untested.neutralisingValue ? 1 : neutralisingValuePct / LIME_MATERIALS[kind].ccePct;
      const fine = untested.fineness ? 1 : (m.finenessPct ?? 100) / 100;
      return { ...m, ccePct: worth.ccePct * stated * fine, finenessPct: 100 };
    });
  }
  return [
    ...shed,
    {
      id: "lime-to-buy",
      kind,
      nPct: 0,
      p2o5Pct: 0,
      k2oPct: 0,
      soluble: false,
      certifiedUse: "allowed",
      certifiedProofUntil: "2200-12-31",
      canBuy: true,
      ...worth,
    },
  ];
}
