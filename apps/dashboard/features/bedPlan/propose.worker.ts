import { type BedPlanState, type PlanProgress, type PlanProposal, proposePlan } from "@pith/rules";

/** The search beside the page, so that the page stays at hand. To stop it, the worker is ended. */

export interface Ask {
  state: BedPlanState;
  seed: number;
}
export type Told = { progress: PlanProgress } | { proposal: PlanProposal };

const tell = (told: Told) => self.postMessage(told);

self.addEventListener("message", ({ data }: MessageEvent<Ask>) => {
  const search = proposePlan(data.state, { seed: data.seed });
  for (;;) {
    const step = search.next();
    if (step.done) return tell({ proposal: step.value });
    tell({ progress: step.value });
  }
});
