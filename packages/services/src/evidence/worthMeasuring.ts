import type { WorthMeasuring } from "@pith/contract";
import {
  type BedState,
  type Message,
  type PlantingState,
  render,
  type ValveState,
  worthMeasuring,
} from "@pith/rules";
import { readNames } from "../advice/names.ts";
import { type Ctx, inOffice, nowOf } from "../context.ts";
import { adviseSubjects } from "../drafts/adviseSubjects.ts";
import { requireFarm } from "../farms/requireFarm.ts";
import { readFacts } from "../states/facts.ts";

/** Always the same draws, so that a list read twice is the same list; as many as still rank the clear cases. */
const DRAWS = { seed: 1, draws: 16 };
/** Below a tenth of the width and a twentieth of the decisions, a measurement is not worth a walk (cp). */
const LEAST_NARROWS = 0.1;
const LEAST_CHANGES = 0.05;

/** For each answer on a farm, the one measurement that would narrow it most; the most worth first. */
export async function getWorthMeasuring(ctx: Ctx, farmId: string): Promise<{ items: WorthMeasuring[] }> {
  const { facts, names } = await inOffice(ctx, async (tx) => {
    await requireFarm(tx, ctx, farmId);
    return {
      facts: await readFacts(tx, { officeId: ctx.officeId, farmId }, nowOf(ctx)),
      names: await readNames(tx, ctx, [farmId]),
    };
  });
  const { reader } = names.farm(farmId);
  const say = (message: Message) => render(message, reader);
  const items: WorthMeasuring[] = [];
  for (const { state } of adviseSubjects(facts)) {
    if (!isMeasured(state)) continue;
    // A subject takes a while: others' requests go in between.
    await new Promise((done) => setTimeout(done, 0));
    for (const { rule, subject, decision, candidates } of worthMeasuring(state, DRAWS)) {
      const [best] = candidates;
      if (!best) continue;
      const { measure, how, cost, settles, narrows, decisionChanges, text } = best;
      if (!settles && narrows < LEAST_NARROWS && decisionChanges < LEAST_CHANGES) continue;
      items.push({
        ruleId: rule.id,
        subject: { ...subject, name: names.subject(subject.kind, subject.id, farmId) },
        decision: decision && say(decision),
        measure: say(measure),
        how: say(how),
        cost,
        text: say(text),
        settles,
        narrows,
        changes: decisionChanges,
      });
    }
  }
  const worth = (item: WorthMeasuring) => (item.settles ? 2 : 0) + item.changes + item.narrows;
  return { items: items.sort((a, b) => worth(b) - worth(a)) };
}

const isMeasured = (state: { kind: string }): state is PlantingState | ValveState | BedState =>
  ["planting", "valve", "bed"].includes(state.kind);
