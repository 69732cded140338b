import { type OwnSource, trialRoutes } from "@pith/contract";
import { evidenceFromTrial, OfficeSourceSchema, parseAtTheDoor, render } from "@pith/rules";
import { readNames } from "../advice/names.ts";
import { type Ctx, inOffice, requireAgent } from "../context.ts";
import { keepSource } from "../evidence/ownEvidence.ts";
import { lockFarm } from "../farms/requireFarm.ts";
import { trialState } from "../states/trialState.ts";
import { bodyOf } from "../wellFormed.ts";
import { readTrial } from "./readTrial.ts";

/** Puts what a trial found among the office's own evidence, as it stands now, with its grade and its limits. */
export async function trialAsEvidence(
  ctx: Ctx,
  farmId: string,
  trialId: string,
  raw: unknown,
): Promise<OwnSource> {
  requireAgent(ctx);
  const { rule } = bodyOf(trialRoutes.trialAsEvidence, raw);
  return inOffice(ctx, async (tx) => {
    await lockFarm(tx, ctx, farmId);
    const facts = await readTrial(tx, ctx, farmId, trialId);
    const { reader } = (await readNames(tx, ctx, [farmId])).farm(farmId);
    const found = evidenceFromTrial(trialState(facts), (message) => render(message, reader));
    const id = `${slugOf(facts.row.name)}-${trialId.slice(0, 8)}`;
    return keepSource(tx, ctx, parseAtTheDoor(OfficeSourceSchema, { ...found, id, rule }));
  });
}

/** A name as an id holds it. */
const slugOf = (name: string): string =>
  name
    .normalize("NFKD")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-+|-+$/g, "")
    .slice(0, 40)
    .replace(/-+$/, "") || "trial";
