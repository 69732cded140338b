import { type PlantTest, recordRoutes } from "@pith/contract";
import { plantTests } from "@pith/db";
import { PlantTestSchema, parseAtTheDoor, refuse } from "@pith/rules";
import { nowOf } from "../context.ts";
import { belongsHere } from "../farms/belongsHere.ts";
import { plantTestPart } from "../states/parts.ts";
import { type RecordKind, verbsOf } from "./record.ts";

/** A row as the wire shows it. */
export function plantTestView(row: typeof plantTests.$inferSelect): PlantTest {
  const { id, sampledOn, kind, stage, values } = plantTestPart(row);
  return { id, plantingId: row.plantingId, sampledOn, kind, stage, labName: row.labName, values };
}

const plantTest: RecordKind<PlantTest, typeof plantTests> = {
  one: "leaf or sap test",
  route: recordRoutes.plantTests.add,
  table: plantTests,
  async check(tx, at, { plantingId, labName: _, ...measured }) {
    parseAtTheDoor(PlantTestSchema, { id: "new", ...measured });
    measured.values.forEach(({ unit }, i) => {
      if ((measured.kind === "petiole-sap") !== (unit === "mg/L")) {
        const accepted = measured.kind === "petiole-sap" ? "mg/L" : "% or mg/kg of dry matter";
        refuse(`values.${i}.unit`, `is no unit of a ${measured.kind} test`, accepted, unit);
      }
    });
    await belongsHere(tx, at, "planting", "plantingId", plantingId);
  },
  async add(tx, ctx, farmId, value) {
    const id = globalThis.crypto.randomUUID();
    await tx.insert(plantTests).values({
      officeId: ctx.officeId,
      farmId,
      id,
      ...value,
      recordedBy: ctx.actor.userId,
      recordedAt: nowOf(ctx),
    });
    return { id, ...value };
  },
};

export const { add: addPlantTest, remove: removePlantTest } = verbsOf(plantTest);
