import { addDays, localDay } from "../core/days.ts";
import { ashesOf, contentOf } from "../rules/wood-ash/ash.ts";
import type { PlantingState, ValveState } from "../states/states.ts";
import type { CoverStep, WhatIf } from "../states/whatIf.ts";
import { bedAreaM2, croppedAreaM2 } from "../water/ground.ts";
import { potashCarrier } from "./potashCarrier.ts";

/** What a what-if speaks about: a planting, and the valve that waters it where something stands on it. */
export interface Subjects {
  planting: PlantingState;
  valve: ValveState | null;
}

type Covers = PlantingState["bed"]["covers"];
const COVERS_OF: Record<CoverStep, Covers[number]["cover"][]> = {
  none: [],
  fleece: ["fleece"],
  "low-tunnel": ["low-tunnel"],
  "fleece-and-low-tunnel": ["fleece", "low-tunnel"],
};

export const todayOf = ({ asOf, site }: PlantingState | ValveState): string => localDay(asOf, site.timeZone);

/** The day for which something is put up over the bed: the wanted one, today where none is. */
export function wantedDay(state: PlantingState): string {
  const today = todayOf(state);
  const { plannedSetOutOn } = state.planting;
  return plannedSetOutOn !== undefined && plannedSetOutOn > today ? plannedSetOutOn : today;
}

/**
 * The same subjects with what is tried in the fields that the rules read. How deep and whether tips are taken is in none:
 * there the rule decides, and what it says about the choice is asked for by itself.
 */
export function put({ planting, valve }: Subjects, whatIf: WhatIf): Subjects {
  let state = planting;
  const { setOutOn, cover, k2oKgPerHa, ashGPerM2, withheldPct } = whatIf;
  if (setOutOn !== undefined)
    state = { ...state, planting: { ...state.planting, plannedSetOutOn: setOutOn } };
  if (cover !== undefined) state = { ...state, bed: { ...state.bed, covers: coveredBy(state, cover) } };
  const given = [
    ...(k2oKgPerHa ? [potashGiven(planting, k2oKgPerHa)] : []),
    ...(ashGPerM2 ? ashGiven(planting, ashGPerM2) : []),
  ];
  if (given.length > 0) {
    // Its share of the shed was worked out without these: here it has the shed to itself, and its feeding says so.
    const { allotted: _, ...feeding } = state.feeding;
    state = { ...state, feeding, applications: [...state.applications, ...given] };
  }
  return {
    planting: state,
    valve: valve && withheldPct !== undefined ? withheld(valve, withheldPct) : valve,
  };
}

/** What is put up for the day stands from then on, instead of what of its kind stood or was planned. */
function coveredBy(state: PlantingState, step: CoverStep): Covers {
  const from = wantedDay(state);
  const before = addDays(from, -1);
  const kept = state.bed.covers.flatMap((c) => {
    if (c.cover !== "fleece" && c.cover !== "low-tunnel") return [c];
    if (c.from >= from) return [];
    return [c.to === undefined || c.to >= from ? { ...c, to: before } : c];
  });
  return [...kept, ...COVERS_OF[step].map((cover) => ({ cover, from }))];
}

/** One valve gives one water: what is withheld is withheld from all that stands on it. */
function withheld(valve: ValveState, pct: number): ValveState {
  const zones = valve.zones.map((zone) => {
    const { deficit, ...planting } = zone.planting;
    if (pct === 0) return { ...zone, planting };
    const kept = {
      from: deficit?.from ?? todayOf(valve),
      ...(deficit?.to !== undefined && { to: deficit.to }),
    };
    return { ...zone, planting: { ...planting, deficit: { etShare: (100 - pct) / 100, ...kept } } };
  });
  return { ...valve, zones };
}

function potashGiven(state: PlantingState, kgPerHa: number): PlantingState["applications"][number] {
  const { material, kg } = potashCarrier(state, kgPerHa);
  const { id: materialId, kind, nPct, p2o5Pct, k2oPct } = material;
  const areaM2 = croppedAreaM2(state.bed);
  return { on: todayOf(state), materialId, kind, nPct, p2o5Pct, k2oPct, amountKg: kg, areaM2 };
}

/** Written down as the shed's ash would be: where it was not analysed, with the least of what is published. */
function ashGiven(state: PlantingState, gPerM2: number): PlantingState["applications"] {
  const ash = ashesOf(state, todayOf(state))?.ash;
  if (!ash) return [];
  const { k2oPct, p2o5Pct } = contentOf(ash.material);
  const areaM2 = bedAreaM2(state.bed);
  return [
    {
      on: todayOf(state),
      materialId: ash.material.id,
      kind: "wood-ash",
      nPct: 0,
      p2o5Pct: p2o5Pct.low,
      k2oPct: k2oPct.low,
      amountKg: (gPerM2 * areaM2) / 1000,
      areaM2,
    },
  ];
}
