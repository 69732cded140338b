import { closedCautions } from "./closed.ts";
import { containerCautions } from "./containers.ts";
import { diagnosisCautions } from "./diagnosis.ts";
import { growthCautions } from "./growth.ts";
import { heatCautions } from "./heat.ts";
import { limeCautions } from "./lime.ts";
import { plantCautions } from "./plant.ts";
import { soilCautions } from "./soil.ts";
import { stressCautions } from "./stress.ts";
import type { Caution } from "./types.ts";
import { warmthCautions } from "./warmth.ts";
import { waterCautions } from "./water.ts";

/** Every caution, by id. */
export const cautions: ReadonlyMap<string, Caution> = new Map(
  [
    ...plantCautions,
    ...warmthCautions,
    ...waterCautions,
    ...soilCautions,
    ...limeCautions,
    ...stressCautions,
    ...heatCautions,
    ...containerCautions,
    ...growthCautions,
    ...closedCautions,
    ...diagnosisCautions,
  ].map((c) => [c.id, c]),
);

const SEVERITY_ORDER = { danger: 0, warning: 1, care: 2 } as const;

/** The cautions of an advice, worst first; the standing one about local rules always comes last. Unknown ids throw. */
export function cautionsFor(...ids: string[]): Caution[] {
  const wanted = [...new Set([...ids, "local-rules-first"])];
  return wanted
    .map((id) => {
      const caution = cautions.get(id);
      if (!caution) throw new Error(`no caution "${id}"`);
      return caution;
    })
    .sort((a, b) => SEVERITY_ORDER[a.severity] - SEVERITY_ORDER[b.severity]);
}
