import { type SeasonRecord, type SeasonRow, seasonRecordRoutes } from "@pith/contract";
import { sites } from "@pith/db";
import { cautionsFor, localDay, render, SettingsSchema, say } from "@pith/rules";
import { and, asc, eq } from "drizzle-orm";
import { readNames, readPeople } from "../advice/names.ts";
import { type Ctx, inOffice, nowOf } from "../context.ts";
import { requireFarm } from "../farms/requireFarm.ts";
import { saidIn } from "../ledger/rendered.ts";
import { queryOf } from "../wellFormed.ts";
import { seasonCsv } from "./csv.ts";
import { gatherSeason, type SeasonFacts } from "./gather.ts";
import { applicationRows, wateringRows } from "./given.ts";
import { intervalRows } from "./intervals.ts";
import { harvestLotRows, materialLotRows } from "./lots.ts";
import { missingRows } from "./missing.ts";
import { type Places, placesOf } from "./place.ts";
import { isIn, seasonOf, seasonYearAt } from "./season.ts";
import {
  bedRows,
  harvestRows,
  plantingRows,
  soilTestRows,
  sprayRows,
  waterTestRows,
  workRows,
} from "./seen.ts";
import { totalRows } from "./totals.ts";

/** Where a farm has no site yet: the season of Greenwich's year, in the north. */
const NOWHERE = { latitudeDeg: 0, timeZone: "UTC" };

/** What beds and lots of a farm saw in a season. */
export async function getSeasonRecord(ctx: Ctx, farmId: string, rawQuery: unknown): Promise<SeasonRecord> {
  const { season: asked } = queryOf(seasonRecordRoutes.getSeasonRecord, rawQuery);
  const { facts, names } = await inOffice(ctx, async (tx) => {
    await requireFarm(tx, ctx, farmId);
    const at = { officeId: ctx.officeId, farmId };
    const [site = NOWHERE] = await tx
      .select({ latitudeDeg: sites.latitudeDeg, timeZone: sites.timeZone })
      .from(sites)
      .where(and(eq(sites.officeId, ctx.officeId), eq(sites.farmId, farmId)))
      .orderBy(asc(sites.name), asc(sites.id))
      .limit(1);
    const season = seasonOf(asked ?? seasonYearAt(nowOf(ctx), site), site.latitudeDeg);
    const { language = "en" } = ctx;
    const facts = { ...(await gatherSeason(tx, at, season)), language };
    return { facts, names: await readNames(tx, ctx, [farmId]) };
  });
  const written = [facts.applications, facts.waterings, facts.sprays, facts.harvests, facts.works].flat();
  const people = await readPeople(
    ctx,
    written.flatMap((row) => row.recordedBy ?? []),
  );
  const open = unansweredRows(facts, nowOf(ctx), (kind, id) => names.subject(kind, id, farmId));
  return seasonRecordOf(facts, placesOf(facts, people), open);
}

/** One table of it as a file, with a name that says what it is. */
export async function getSeasonTable(
  ctx: Ctx,
  farmId: string,
  rawQuery: unknown,
): Promise<{ fileName: string; csv: string }> {
  const { table, season } = queryOf(seasonRecordRoutes.getSeasonTable, rawQuery);
  const record = await getSeasonRecord(ctx, farmId, { season });
  return { fileName: `season-${record.season}-${table}.csv`, csv: seasonCsv(record, table) };
}

/** The record of facts: pure, the same facts give the same record. */
function seasonRecordOf(facts: SeasonFacts, at: Places, unanswered: SeasonRow<"unanswered">[]): SeasonRecord {
  const { season, farm, language } = facts;
  const labourMoneyPerHour = SettingsSchema.parse(facts.settings ?? {}).labourPerHour ?? null;
  const applications = applicationRows(facts, at);
  const rows = {
    beds: bedRows(facts, at),
    plantings: plantingRows(facts, at),
    applications,
    waterings: wateringRows(facts, at),
    waterTests: waterTestRows(facts, at),
    sprays: sprayRows(facts, at),
    soilTests: soilTestRows(facts, at),
    harvests: harvestRows(facts, at),
    works: workRows(facts, at),
    intervals: intervalRows(facts, at),
    harvestLots: harvestLotRows(facts, at),
    materialLots: materialLotRows(facts, at, applications),
    unanswered,
  };
  const units = farm?.units ?? "metric";
  const said = (key: string) => render(say(`season-record.note.${key}`), { language, units });
  return {
    farm: farm?.name ?? "",
    units,
    season: season.year,
    seasonName: season.name,
    from: season.from,
    to: season.to,
    labourMoneyPerHour,
    cautions: cautionsFor("label-intervals", "harvest-interval", "manure-raw", "nutrient-law").map(
      ({ id, version, severity, text }) => ({ id, version, severity, text: text[language] }),
    ),
    notes: ["rates", "water", "removal", "culls", "labour", "people", "trace"].map(said),
    tables: {
      ...rows,
      totals: totalRows(rows, farm?.name ?? "", labourMoneyPerHour),
      missing: missingRows(facts, rows),
    },
  };
}

/** Issued advice whose day has passed in the season without an answer. */
function unansweredRows(
  { open, season, sites: all, language }: SeasonFacts,
  asOf: string,
  nameOf: (kind: string, id: string) => string,
): SeasonRow<"unanswered">[] {
  const timeZone = all[0]?.timeZone ?? NOWHERE.timeZone;
  const today = localDay(asOf, timeZone);
  return open.flatMap(({ id, issuedAt, subjectKind, subjectId, expected, rendered }) => {
    const due = (expected as { date?: string } | null)?.date;
    if (due === undefined || due >= today || !isIn(season, due)) return [];
    const subject = nameOf(subjectKind, subjectId);
    return [
      {
        issuedOn: localDay(issuedAt, timeZone),
        due,
        subject,
        decision: saidIn(rendered, language).decision,
        id,
      },
    ];
  });
}
