import { type Client, farmRoutes, trialRoutes } from "@pith/contract";
import { addDays } from "@pith/rules";

/** A trial that is being measured in the demo county: the tip taken out or left, in pairs of strips. */

const KG = { left: [6.4, 5.9, 7.1, 6.6], taken: [6.9, 6.1, 7.0, 7.2] };
/** One strip that was picked together with its neighbour. */
const LOST = { pair: 4, level: "taken" } as const;

export async function layDemoTrial(
  client: Client,
  params: { officeId: string; farmId: string },
  today: string,
): Promise<void> {
  const { beds } = await client.call(farmRoutes.getFarm, { params });
  const bed = beds.toSorted((a, b) => b.lengthM - a.lengthM)[0];
  // Eight strips of three metres and the gaps between them.
  if (!bed || bed.lengthM < 28) return;
  const { trial } = await client.call(trialRoutes.addTrial, {
    params,
    json: {
      siteId: bed.siteId,
      name: "Tip out or left",
      design: "paired-strips",
      factors: [{ name: "Tip", levels: [{ name: "left" }, { name: "taken out" }] }],
      blocks: 4,
      responses: [{ name: "Fit to sell", unit: "kg", kind: "marketable-kg", better: "more" }],
      alpha: 0.05,
      bedIds: [bed.id],
      plotLengthM: 3,
      gapM: 0.4,
      seed: 20_260_401,
    },
  });
  const at = { ...params, trialId: trial.id };
  await client.call(trialRoutes.changeTrial, { params: at, json: { startedOn: addDays(today, -90) } });
  const left = trial.factors[0]?.levels[0]?.id;
  const values = trial.plots.map((plot) => {
    const level = plot.levels[0] === left ? "left" : "taken";
    const lost = plot.block === LOST.pair && level === LOST.level;
    return {
      plotId: plot.id,
      responseId: trial.responses[0]?.id ?? "",
      on: today,
      value: lost ? null : (KG[level][(plot.block ?? 1) - 1] ?? null),
      missing: lost ? ("mixed-up" as const) : null,
    };
  });
  await client.call(trialRoutes.keepPlotValues, { params: at, json: { values } });
}
