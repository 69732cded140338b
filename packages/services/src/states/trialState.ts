import type { trials, trialValues } from "@pith/db";
import { localDay, type Settings, type Trial, type TrialState } from "@pith/rules";
import { present } from "./parts.ts";

/** What a trial's state is made of. */
export interface TrialFacts {
  asOf: string;
  settings: Settings;
  timeZone: string;
  row: typeof trials.$inferSelect;
  /** Of this trial. */
  values: (typeof trialValues.$inferSelect)[];
}

/** What the rules read about one trial: factors, levels and responses by id, their names left behind. */
export function trialState({ asOf, settings, timeZone, row, values }: TrialFacts): TrialState {
  const { design, seed, factors, blocks, responses, alpha } = row.design;
  const today = localDay(asOf, timeZone);
  return {
    kind: "trial",
    version: 1,
    asOf,
    settings,
    timeZone,
    trial: present({
      id: row.id,
      design,
      seed,
      factors: factors.map(({ id, levels }) => ({ id, levels: levels.map((level) => ({ id: level.id })) })),
      blocks,
      plots: row.plots.map((plot) => present(plot)),
      responses: responses.map(({ id, kind, better }) => ({ id, kind, better })),
      values: values
        .filter((v) => v.onDay <= today)
        .map(({ plotId, responseId, onDay, value, missing }) =>
          present({ plotId, responseId, on: onDay, value, missing }),
        ),
      alpha,
      startedOn: row.startedOn,
      endedOn: row.endedOn,
    }) as Trial,
  };
}
