import type { trialRoutes } from "@pith/contract";
import { beds, type TrialPlan, type TrialPlot, type Tx } from "@pith/db";
import { layTrial, responseUnitOf } from "@pith/rules";
import { and, eq, inArray } from "drizzle-orm";
import { ServiceError } from "../errors.ts";
import type { OfFarm } from "../farms/ofFarm.ts";
import type { BodyOf } from "../wellFormed.ts";

type NewTrial = BodyOf<typeof trialRoutes.addTrial>;

/** A design with ids of its own for what people named. */
export function planOf({ factors, responses, ...value }: NewTrial): TrialPlan {
  const { design, blocks, alpha, plotLengthM, gapM } = value;
  const id = () => globalThis.crypto.randomUUID();
  return {
    design,
    seed: value.seed ?? drawnSeed(),
    factors: factors.map((f) => ({
      id: id(),
      name: f.name,
      levels: f.levels.map((level) => ({ id: id(), name: level.name })),
    })),
    blocks,
    responses: responses.map((response) => ({ id: id(), ...response, unit: unitFor(response) })),
    alpha,
    plotLengthM,
    gapM,
  };
}

/** What is measured has one unit, that in which the rules reckon it; only something else is in whatever was said. */
function unitFor({ kind, unit }: NewTrial["responses"][number]): string {
  const own = responseUnitOf(kind);
  if (own === undefined) return unit;
  return own === "pct" ? "%" : own === "days" ? "day of the year" : own;
}

const drawnSeed = () => globalThis.crypto.getRandomValues(new Uint32Array(1))[0] ?? 0;

/** Its plots on the beds named, in their order. */
export async function plotsOf(tx: Tx, at: OfFarm, plan: TrialPlan, bedIds: string[]): Promise<TrialPlot[]> {
  const rows = await tx
    .select({ id: beds.id, lengthM: beds.lengthM })
    .from(beds)
    .where(and(eq(beds.officeId, at.officeId), eq(beds.farmId, at.farmId), inArray(beds.id, bedIds)));
  const known = new Map(rows.map((b) => [b.id, b]));
  const chosen = bedIds.map((id, i) => {
    const bed = known.get(id);
    if (!bed) {
      const message = "names no bed of this farm";
      throw new ServiceError("invalid", `bedIds.${i} ${message}.`, [
        { field: `bedIds.${i}`, message, received: id },
      ]);
    }
    return bed;
  });
  const { design, factors, blocks, seed, plotLengthM, gapM } = plan;
  const plots = layTrial({
    design,
    factors: factors.map(({ id, levels }) => ({ id, levels: levels.map((level) => ({ id: level.id })) })),
    blocks,
    seed,
    beds: chosen,
    plotLengthM,
    gapM,
  });
  return plots.map((plot) => ({
    ...plot,
    id: globalThis.crypto.randomUUID(),
    block: plot.block ?? null,
  }));
}
