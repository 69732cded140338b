import { recordRoutes, type WaterTest } from "@pith/contract";
import { type Tx, valves, waterTests } from "@pith/db";
import { parseAtTheDoor, refuse, WaterTestSchema } from "@pith/rules";
import { and, eq } from "drizzle-orm";
import { nowOf } from "../context.ts";
import { belongsHere } from "../farms/belongsHere.ts";
import type { OfFarm } from "../farms/ofFarm.ts";
import { present, waterTestPart } from "../states/parts.ts";
import { type RecordKind, verbsOf } from "./record.ts";

type Value = Omit<WaterTest, "id">;

/** What was measured, without whose water it was and who measured it. */
const measuredOf = ({
  siteId: _,
  valveId: __,
  sampledOn: ___,
  labName: ____,
  sampleRef: _____,
  ...rest
}: Value) => present(rest);

/** A row as the wire shows it. */
export function waterTestView(row: typeof waterTests.$inferSelect): WaterTest {
  const read = waterTestPart(row);
  return {
    id: row.id,
    siteId: row.siteId,
    valveId: row.valveId,
    sampledOn: row.sampledOn,
    labName: row.labName,
    sampleRef: row.sampleRef,
    ecDSPerM: read.ecDSPerM ?? null,
    waterPh: read.waterPh ?? null,
    alkalinityMgCaCO3PerL: read.alkalinityMgCaCO3PerL ?? null,
    caMgPerL: read.caMgPerL ?? null,
    mgMgPerL: read.mgMgPerL ?? null,
    naMgPerL: read.naMgPerL ?? null,
    clMgPerL: read.clMgPerL ?? null,
    bMgPerL: read.bMgPerL ?? null,
    nitrateNMgPerL: read.nitrateNMgPerL ?? null,
  };
}

/** A test of one site's water is no test of another's valve: nothing would ever read it. */
async function onThatSite(tx: Tx, at: OfFarm, { siteId, valveId }: Value): Promise<void> {
  if (valveId === null) return;
  const [valve] = await tx
    .select({ siteId: valves.siteId })
    .from(valves)
    .where(and(eq(valves.officeId, at.officeId), eq(valves.id, valveId)));
  if (valve?.siteId !== siteId)
    refuse("valveId", "must be a valve of the site named", "a valve of that site", valveId);
}

const waterTest: RecordKind<WaterTest, typeof waterTests> = {
  one: "water test",
  route: recordRoutes.waterTests.add,
  table: waterTests,
  async check(tx, at, value) {
    const measured = measuredOf(value);
    if (Object.keys(measured).length === 0) {
      refuse(
        "ecDSPerM",
        "must be given where nothing else was measured",
        "at least one measured value",
        null,
      );
    }
    parseAtTheDoor(WaterTestSchema, { id: "new", sampledOn: value.sampledOn, ...measured });
    await belongsHere(tx, at, "site", "siteId", value.siteId);
    await belongsHere(tx, at, "valve", "valveId", value.valveId);
    await onThatSite(tx, at, value);
  },
  async add(tx, ctx, farmId, value) {
    const id = globalThis.crypto.randomUUID();
    const { siteId, valveId, sampledOn, labName, sampleRef } = value;
    await tx.insert(waterTests).values({
      officeId: ctx.officeId,
      farmId,
      id,
      siteId,
      valveId,
      sampledOn,
      labName,
      sampleRef,
      result: measuredOf(value),
      recordedBy: ctx.actor.userId,
      recordedAt: nowOf(ctx),
    });
    return { id, ...value };
  },
};

export const { add: addWaterTest, remove: removeWaterTest } = verbsOf(waterTest);
