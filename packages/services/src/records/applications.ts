import { type Application, recordRoutes } from "@pith/contract";
import { applications, materials, type Tx } from "@pith/db";
import { refuse } from "@pith/rules";
import { and, eq } from "drizzle-orm";
import { type Ctx, nowOf } from "../context.ts";
import { found } from "../errors.ts";
import { belongsHere } from "../farms/belongsHere.ts";
import { bedOfPlanting, requireWorkOpen } from "./closedBeds.ts";
import { type RecordKind, verbsOf } from "./record.ts";
import { moveStock } from "./stock.ts";

type Value = Omit<Application, "id">;

/**
 * Writes an application down with the material's grades of that day and takes it from the shed. `advisoryId` names the
 * issued advice whose answer it is.
 */
export async function writeApplication(
  tx: Tx,
  ctx: Ctx,
  farmId: string,
  value: Value,
  advisoryId: string | null,
): Promise<Application> {
  const { officeId } = ctx;
  const { plantingId, materialId, on, lot, amountKg, areaM2, minutesOfLabour } = value;
  const bedId = plantingId === null ? value.bedId : await bedOfPlanting(tx, { officeId, farmId }, plantingId);
  if (!bedId) refuse("bedId", "is missing where no planting is named", "a bed of the farm", null);
  const [material] = await tx
    .select({
      kind: materials.kind,
      analysis: materials.analysis,
      nPct: materials.nPct,
      p2o5Pct: materials.p2o5Pct,
      k2oPct: materials.k2oPct,
    })
    .from(materials)
    .where(and(eq(materials.officeId, officeId), eq(materials.farmId, farmId), eq(materials.id, materialId)));
  const { analysis, ...whatItIs } = found(material, "material");
  await requireWorkOpen(tx, { officeId, farmId }, bedId, on);
  const id = globalThis.crypto.randomUUID();
  await tx.insert(applications).values({
    officeId,
    farmId,
    id,
    plantingId,
    bedId,
    materialId,
    ...whatItIs,
    composted: analysis.composted ?? null,
    lot,
    amountKg,
    areaM2,
    onDay: on,
    minutesOfLabour,
    advisoryId,
    recordedBy: ctx.actor.userId,
    recordedAt: nowOf(ctx),
  });
  await moveStock(tx, { officeId, farmId }, materialId, -amountKg);
  return { id, ...value, bedId };
}

/** Gives back to the shed what an application took. */
const backToTheShed = (
  tx: Tx,
  { officeId, farmId, materialId, amountKg }: typeof applications.$inferSelect,
): Promise<void> => moveStock(tx, { officeId, farmId }, materialId, amountKg);

/** Deletes the applications that an answer wrote. */
export async function takeBackApplications(
  tx: Tx,
  ctx: Ctx,
  farmId: string,
  advisoryId: string,
): Promise<void> {
  const gone = await tx
    .delete(applications)
    .where(
      and(
        eq(applications.officeId, ctx.officeId),
        eq(applications.farmId, farmId),
        eq(applications.advisoryId, advisoryId),
      ),
    )
    .returning();
  for (const one of gone) await backToTheShed(tx, one);
}

const application: RecordKind<Application, typeof applications> = {
  one: "application",
  route: recordRoutes.applications.add,
  table: applications,
  async check(tx, at, { plantingId, bedId, materialId }) {
    await belongsHere(tx, at, "planting", "plantingId", plantingId);
    await belongsHere(tx, at, "bed", "bedId", bedId ?? null);
    await belongsHere(tx, at, "material", "materialId", materialId);
  },
  add: (tx, ctx, farmId, value) => writeApplication(tx, ctx, farmId, value, null),
  removed: (tx, _ctx, gone) => backToTheShed(tx, gone),
};

export const { add: addApplication, remove: removeApplication } = verbsOf(application);
