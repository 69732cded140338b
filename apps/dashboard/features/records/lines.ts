import type { FarmDetail, Records } from "@pith/contract";
import type { getTranslations } from "next-intl/server";
import { dayAt } from "../../format/dates.ts";
import { inText } from "../../format/units.ts";
import { closesOf } from "./closes.ts";
import { NOTE_UNITS, type RecordKind } from "./plans.ts";

/** One thing seen or done, as a line of the record. */
export interface RecordLine {
  id: string;
  /** Null for a soil test, which comes by import and is not taken back here. */
  kind: RecordKind | null;
  /** A day; of what stood in a bed before only the year. */
  on: string;
  what: string;
  where: string;
  sign?: Records["signs"][number];
}

type Words = {
  t: Awaited<ReturnType<typeof getTranslations<"records">>>;
  words: Awaited<ReturnType<typeof getTranslations<"words">>>;
};

/** All records of a farm as lines, newest first. */
export function linesOf(records: Records, detail: FarmDetail, { t, words }: Words): RecordLine[] {
  const units = detail.farm.units;
  const planting = (id: string) => detail.plantings.find((p) => p.id === id)?.varietyName ?? "";
  const measures = (...parts: (string | null)[]) => parts.filter((part) => part !== null).join(", ");
  const lines: RecordLine[] = [
    ...records.notes.map((note) => {
      const unit = NOTE_UNITS[note.kind];
      const value = note.value === null ? null : unit ? inText(note.value, unit, units) : String(note.value);
      const kind = words(`notes.kind.${note.kind}` as "notes.kind.true-leaves");
      return {
        id: note.id,
        kind: "notes" as const,
        on: note.on,
        what: measures(value === null ? kind : t("seen", { kind, value }), note.text),
        where: planting(note.plantingId),
      };
    }),
    ...records.waterings.map((one) => ({
      id: one.id,
      kind: "waterings" as const,
      on: one.on,
      what: measures(
        t("watered"),
        one.minutes === null ? null : inText(one.minutes, "minutes", units),
        one.litres === null ? null : inText(one.litres, "L", units),
      ),
      where: detail.valves.find((valve) => valve.id === one.valveId)?.name ?? "",
    })),
    ...records.applications.map((one) => ({
      id: one.id,
      kind: "applications" as const,
      on: one.on,
      what: t("applied", {
        material: detail.materials.find((m) => m.id === one.materialId)?.name ?? "",
        amount: inText(one.amountKg, "kg", units),
        area: inText(one.areaM2, "m2", units),
      }),
      where: one.plantingId
        ? planting(one.plantingId)
        : (detail.beds.find((b) => b.id === one.bedId)?.name ?? ""),
    })),
    ...records.harvests.map((one) => ({
      id: one.id,
      kind: "harvests" as const,
      on: one.on,
      what: measures(
        t("picked", { amount: inText(one.kg, "kg", units) }),
        one.marketableKg === null ? null : t("marketable", { amount: inText(one.marketableKg, "kg", units) }),
      ),
      where: planting(one.plantingId),
    })),
    ...records.waterTests.map((one) => ({
      id: one.id,
      kind: "waterTests" as const,
      on: one.sampledOn,
      what: measures(
        t("waterTest", { lab: one.labName ?? t("unknownLab") }),
        one.ecDSPerM === null ? null : inText(one.ecDSPerM, "dS/m", units),
        one.waterPh === null ? null : `pH ${one.waterPh}`,
      ),
      where:
        detail.valves.find((valve) => valve.id === one.valveId)?.name ??
        detail.sites.find((site) => site.id === one.siteId)?.name ??
        "",
    })),
    ...records.soilWater.map((one) => {
      const bed = detail.beds.find((b) => b.id === one.bedId);
      const site = detail.sites.find((s) => s.id === bed?.siteId);
      const value =
        one.kind === "tension-kpa" ? inText(one.value, "kPa", units) : inText(one.value, "share", units);
      return {
        id: one.id,
        kind: "soilWater" as const,
        on: dayAt(one.at, site?.timeZone),
        what: t("soilWater", {
          kind: words(`soilWater.kind.${one.kind}`),
          value,
          depth: inText(one.depthCm, "cm", units),
        }),
        where: bed?.name ?? "",
      };
    }),
    ...records.deliveries.map((one) => ({
      id: one.id,
      kind: "deliveries" as const,
      on: one.receivedOn,
      what: measures(
        t("delivered", {
          material: detail.materials.find((m) => m.id === one.materialId)?.name ?? "",
          amount: inText(one.kg, "kg", units),
        }),
        one.lot === null ? null : t("lot", { lot: one.lot }),
        one.leftKg === null ? null : t("leftOfLot", { amount: inText(one.leftKg, "kg", units) }),
      ),
      where: t("shed"),
    })),
    ...records.plantTests.map((one) => ({
      id: one.id,
      kind: "plantTests" as const,
      on: one.sampledOn,
      what: measures(
        words(`plantTests.kind.${one.kind}`),
        ...one.values.map((v) => `${v.nutrient} ${inText(v.value, v.unit === "%" ? "pct" : v.unit, units)}`),
      ),
      where: planting(one.plantingId),
    })),
    ...records.drainReadings.map((one) => ({
      id: one.id,
      kind: "drainReadings" as const,
      on: one.on,
      what: measures(
        t("drained"),
        one.ecDSPerM === null ? null : inText(one.ecDSPerM, "dS/m", units),
        one.ph === null ? null : `pH ${one.ph}`,
        one.drainedPct === null ? null : inText(one.drainedPct, "pct", units),
      ),
      where: planting(one.plantingId),
    })),
    ...records.signs.map((one) => ({
      id: one.id,
      kind: "signs" as const,
      on: one.on,
      what: measures(
        words(`signs.sign.${one.sign}`),
        one.part === null ? null : words(`signs.part.${one.part}`),
        one.pattern === null ? null : words(`signs.pattern.${one.pattern}`),
        one.speed === null ? null : words(`signs.speed.${one.speed}`),
        one.plantsPct === null ? null : t("signShare", { share: inText(one.plantsPct, "pct", units) }),
        one.text === null ? null : t("quoted", { text: one.text }),
      ),
      where: planting(one.plantingId),
      sign: one,
    })),
    ...records.sprays.map((one) => {
      const bed = detail.beds.find((b) => b.id === one.bedId);
      const site = detail.sites.find((s) => s.id === bed?.siteId);
      const { workFrom, pickingFrom } = closesOf(one, site?.timeZone);
      return {
        id: one.id,
        kind: "sprays" as const,
        on: dayAt(one.at, site?.timeZone),
        what: measures(
          t("sprayed", { product: one.product, target: words(`sprays.target.${one.target}`) }),
          one.registration === null ? null : t("registration", { number: one.registration }),
          workFrom === null ? null : t("closesWork", { until: workFrom }),
          pickingFrom === null ? null : t("closesPicking", { from: pickingFrom }),
        ),
        where: bed?.name ?? "",
      };
    }),
    ...records.works.map((one) => ({
      id: one.id,
      kind: "works" as const,
      on: one.on,
      what: measures(words(`works.task.${one.task}`), inText(one.minutesOfLabour, "minutes", units)),
      where: detail.beds.find((b) => b.id === one.bedId)?.name ?? "",
    })),
    ...records.bedHistory.map((one) => {
      const crop = words(`bedHistory.crop.${one.crop}`);
      return {
        id: one.id,
        kind: "bedHistory" as const,
        on: String(one.season),
        what:
          one.disease === null
            ? t("stoodHere", { crop })
            : t("foundThere", { crop, disease: words(`bedHistory.disease.${one.disease}`) }),
        where: detail.beds.find((b) => b.id === one.bedId)?.name ?? "",
      };
    }),
    ...records.soilTests.map((one) => ({
      id: one.id,
      kind: null,
      on: one.sampledOn,
      what: measures(
        t("soilTest", { sample: one.sampleRef, lab: one.labName ?? t("unknownLab") }),
        one.waterPh === null ? null : `pH ${one.waterPh}`,
      ),
      where: detail.beds.find((bed) => bed.id === one.bedId)?.name ?? "",
    })),
  ];
  return lines.sort((a, b) => b.on.localeCompare(a.on));
}
