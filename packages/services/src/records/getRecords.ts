import { type KindOfRecords, type Records, recordRoutes } from "@pith/contract";
import {
  applications,
  beds,
  drainReadings,
  fieldNotes,
  harvests,
  plantings,
  plantTests,
  soilTests,
  soilWaterReadings,
  waterings,
  waterTests,
} from "@pith/db";
import { and, desc, eq, inArray, isNull, or } from "drizzle-orm";
import { type Ctx, inOffice, nowOf } from "../context.ts";
import { found } from "../errors.ts";
import { requireFarm } from "../farms/requireFarm.ts";
import { soilTestPart } from "../states/parts.ts";
import { readTexts } from "../texts.ts";
import { queryOf } from "../wellFormed.ts";
import { listBedHistory } from "./bedHistory.ts";
import { closedBeds } from "./closedBeds.ts";
import { listDeliveries } from "./deliveries.ts";
import { earlier, MOST, wholeDays } from "./pages.ts";
import { plantTestView } from "./plantTests.ts";
import { listSigns } from "./signs.ts";
import { listSprays } from "./sprays.ts";
import { waterTestView } from "./waterTests.ts";
import { listWorks } from "./works.ts";

/** What was done and seen on a farm, or for one planting with its bed and valve, newest first. */
export async function getRecords(ctx: Ctx, farmId: string, rawQuery: unknown): Promise<Records> {
  const { plantingId, before, kinds } = queryOf(recordRoutes.getRecords, rawQuery);
  /** What was not asked for is not read, and ends no page. */
  const ask = async <T>(kind: KindOfRecords, read: () => PromiseLike<T[]>): Promise<T[]> =>
    kinds === undefined || kinds.includes(kind) ? await read() : [];
  const { officeId } = ctx;
  return inOffice(ctx, async (tx) => {
    await requireFarm(tx, ctx, farmId);
    const at = { officeId, farmId };
    let place: { bedId: string; siteId: string; valveId: string | null } | undefined;
    if (plantingId !== undefined) {
      const [row] = await tx
        .select({ bedId: plantings.bedId, siteId: beds.siteId, valveId: beds.valveId })
        .from(plantings)
        .innerJoin(beds, and(eq(beds.officeId, officeId), eq(beds.id, plantings.bedId)))
        .where(
          and(eq(plantings.officeId, officeId), eq(plantings.farmId, farmId), eq(plantings.id, plantingId)),
        );
      place = found(row, "planting");
    }
    const ofPlanting = (
      t: typeof fieldNotes | typeof applications | typeof harvests | typeof plantTests | typeof drainReadings,
    ) =>
      and(
        eq(t.officeId, officeId),
        eq(t.farmId, farmId),
        plantingId === undefined ? undefined : eq(t.plantingId, plantingId),
        earlier("onDay" in t ? t.onDay : t.sampledOn, before),
      );
    const notes = await ask("notes", () =>
      tx
        .select()
        .from(fieldNotes)
        .where(ofPlanting(fieldNotes))
        .orderBy(desc(fieldNotes.onDay), desc(fieldNotes.recordedAt))
        .limit(MOST),
    );
    const words = await readTexts(
      tx,
      officeId,
      notes.map((n) => n.textId),
    );
    return wholeDays({
      notes: notes.map(({ id, plantingId, onDay, kind, value, textId }) => ({
        id,
        plantingId,
        on: onDay,
        kind,
        value,
        text: textId === null ? null : (words.get(textId) ?? null),
      })),
      applications: (
        await ask("applications", () =>
          tx
            .select()
            .from(applications)
            .where(
              place
                ? or(
                    ofPlanting(applications),
                    and(
                      eq(applications.officeId, officeId),
                      eq(applications.farmId, farmId),
                      isNull(applications.plantingId),
                      eq(applications.bedId, place.bedId),
                      earlier(applications.onDay, before),
                    ),
                  )
                : ofPlanting(applications),
            )
            .orderBy(desc(applications.onDay), desc(applications.recordedAt))
            .limit(MOST),
        )
      ).map(({ id, plantingId, bedId, materialId, onDay, lot, amountKg, areaM2, minutesOfLabour }) => ({
        id,
        plantingId,
        bedId,
        materialId,
        on: onDay,
        lot,
        amountKg,
        areaM2,
        minutesOfLabour,
      })),
      waterings: (
        await ask("waterings", () =>
          tx
            .select()
            .from(waterings)
            .where(
              and(
                eq(waterings.officeId, officeId),
                eq(waterings.farmId, farmId),
                place && inArray(waterings.valveId, place.valveId === null ? [] : [place.valveId]),
                earlier(waterings.onDay, before),
              ),
            )
            .orderBy(desc(waterings.onDay), desc(waterings.recordedAt))
            .limit(MOST),
        )
      ).map(({ id, valveId, onDay, minutes, litres, minutesOfLabour }) => ({
        id,
        valveId,
        on: onDay,
        minutes,
        litres,
        minutesOfLabour,
      })),
      harvests: (
        await ask("harvests", () =>
          tx
            .select()
            .from(harvests)
            .where(ofPlanting(harvests))
            .orderBy(desc(harvests.onDay), desc(harvests.recordedAt))
            .limit(MOST),
        )
      ).map(({ id, plantingId, onDay, lot, kg, marketableKg, culls, hours, pricePerKg }) => ({
        id,
        plantingId,
        on: onDay,
        lot,
        kg,
        marketableKg,
        culls,
        hours,
        pricePerKg,
      })),
      works: await ask("works", () => listWorks(tx, at, place && [place.bedId], MOST, before)),
      soilTests: (
        await ask("soilTests", () =>
          tx
            .select()
            .from(soilTests)
            .where(
              and(
                eq(soilTests.officeId, officeId),
                eq(soilTests.farmId, farmId),
                place && eq(soilTests.bedId, place.bedId),
                earlier(soilTests.sampledOn, before),
              ),
            )
            .orderBy(desc(soilTests.sampledOn), desc(soilTests.id))
            .limit(MOST),
        )
      ).map((row) => {
        const read = soilTestPart(row);
        return {
          id: row.id,
          bedId: row.bedId,
          sampledOn: row.sampledOn,
          depthCm: row.depthCm,
          medium: row.medium,
          labName: row.labName,
          sampleRef: row.sampleRef,
          waterPh: read.waterPh ?? null,
          bufferPh: read.bufferPh ?? null,
          organicMatterPct: read.organicMatterPct ?? null,
          cecCmolPerKg: read.cecCmolPerKg ?? null,
          ec: read.ec ? { dSPerM: read.ec.dSPerM, extraction: read.ec.extraction ?? null } : null,
          values: read.values.map(({ nutrient, extractant, mgPerKg }) => ({
            nutrient,
            extractant: extractant ?? null,
            mgPerKg,
          })),
        };
      }),
      waterTests: (
        await ask("waterTests", () =>
          tx
            .select()
            .from(waterTests)
            .where(
              and(
                eq(waterTests.officeId, officeId),
                eq(waterTests.farmId, farmId),
                earlier(waterTests.sampledOn, before),
                place && eq(waterTests.siteId, place.siteId),
                place &&
                  or(
                    isNull(waterTests.valveId),
                    place.valveId === null ? undefined : eq(waterTests.valveId, place.valveId),
                  ),
              ),
            )
            .orderBy(desc(waterTests.sampledOn), desc(waterTests.id))
            .limit(MOST),
        )
      ).map(waterTestView),
      soilWater: (
        await ask("soilWater", () =>
          tx
            .select()
            .from(soilWaterReadings)
            .where(
              and(
                eq(soilWaterReadings.officeId, officeId),
                eq(soilWaterReadings.farmId, farmId),
                place && eq(soilWaterReadings.bedId, place.bedId),
                earlier(soilWaterReadings.at, before),
              ),
            )
            .orderBy(desc(soilWaterReadings.at), desc(soilWaterReadings.id))
            .limit(MOST),
        )
      ).map(({ id, bedId, at, kind, depthCm, value }) => ({ id, bedId, at, kind, depthCm, value })),
      deliveries: (await ask("deliveries", () => listDeliveries(tx, at)))
        .filter((d) => before === undefined || d.receivedOn < before)
        .slice(0, MOST),
      plantTests: (
        await ask("plantTests", () =>
          tx
            .select()
            .from(plantTests)
            .where(ofPlanting(plantTests))
            .orderBy(desc(plantTests.sampledOn), desc(plantTests.id))
            .limit(MOST),
        )
      ).map(plantTestView),
      drainReadings: (
        await ask("drainReadings", () =>
          tx
            .select()
            .from(drainReadings)
            .where(ofPlanting(drainReadings))
            .orderBy(desc(drainReadings.onDay), desc(drainReadings.id))
            .limit(MOST),
        )
      ).map(({ id, plantingId, onDay, ecDSPerM, ph, drainedPct }) => ({
        id,
        plantingId,
        on: onDay,
        ecDSPerM,
        ph,
        drainedPct,
      })),
      signs: await ask("signs", () => listSigns(tx, at, plantingId, MOST, before)),
      sprays: await ask("sprays", () => listSprays(tx, at, place && [place.bedId], MOST, before)),
      bedHistory: await ask("bedHistory", () => listBedHistory(tx, at, place && [place.bedId])),
      // Whatever was asked for: nobody is to take a bed for open because they did not ask.
      closed: await closedBeds(tx, at, nowOf(ctx), place && [place.bedId]),
    });
  });
}
