import { recordRoutes } from "@pith/contract";
import { authTables } from "@pith/db";
import {
  BASE_TEMPERATURE_FROM,
  COVERS,
  GLAZINGS,
  INNER_LAYERS,
  MARKET_TYPES,
  MATERIAL_KINDS,
  MISSING_REASONS,
  MULCHES,
  NOTE_KINDS,
  SHADE_SIDES,
  SOIL_WATER_KINDS,
  SoilTestSchema,
  SPECIES,
  SPRAY_TARGETS,
  StateSchema,
  WeatherDaySchema,
} from "@pith/rules";
import { getTableConfig, type PgTable } from "drizzle-orm/pg-core";
import postgres, { type Sql } from "postgres";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { freshDatabase, type TestDatabase } from "../support/database.ts";
import { tableName, tenantTables } from "./everyTable.ts";

/** The tables as the code types them are the tables as the migrations made them, and their words are the rules' words. */

let database: TestDatabase;
let sql: Sql;
beforeAll(async () => {
  database = await freshDatabase();
  sql = postgres(database.adminUrl, { max: 1 });
});
afterAll(async () => {
  await sql.end();
  await database.drop();
});

const all: PgTable[] = [...tenantTables, ...Object.values(authTables)];
const wholeName = (table: PgTable) => {
  const { schema, name } = getTableConfig(table);
  return `${schema ?? "public"}.${name}`;
};

describe.each(all.map((table) => [wholeName(table), table] as const))("%s", (name, table) => {
  test("has the columns, types, NOT NULLs and defaults that the code says", async () => {
    const [schema = "", relation = ""] = name.split(".");
    const inDatabase = await sql`
      select a.attname as name, format_type(a.atttypid, a.atttypmod) as type, a.attnotnull as required,
        a.atthasdef as defaulted
      from pg_attribute a join pg_class c on c.oid = a.attrelid join pg_namespace n on n.oid = c.relnamespace
      where n.nspname = ${schema} and c.relname = ${relation} and a.attnum > 0 and not a.attisdropped order by 1`;
    const inCode = getTableConfig(table)
      .columns.map((column) => ({
        name: column.name,
        type: column.getSQLType(),
        required: column.notNull,
        defaulted: column.hasDefault,
      }))
      .sort((a, b) => (a.name < b.name ? -1 : 1));
    expect(inDatabase.map((row) => ({ ...row }))).toEqual(inCode);
  });
});

const constrained = tenantTables.flatMap((table) =>
  getTableConfig(table)
    .columns.filter((column) => column.enumValues && !["market_type"].includes(column.name))
    .map((column) => ({ table: tableName(table), column: column.name, words: column.enumValues ?? [] })),
);
const CHECKED_BY_THE_RULES = [
  "field_notes.kind",
  "materials.kind",
  "structures.glazing",
  "structures.inner_layer",
  "plantings.base_temperature_from",
];

test.each(constrained.filter(({ table, column }) => !CHECKED_BY_THE_RULES.includes(`${table}.${column}`)))(
  "$table.$column accepts exactly the words that the code says",
  async ({ table, column, words }) => {
    const checks = await sql<{ definition: string }[]>`
      select pg_get_constraintdef(c.oid) as definition
      from pg_constraint c join pg_attribute a on a.attrelid = c.conrelid and c.conkey = array[a.attnum]
      where c.conrelid = ${table}::regclass and c.contype = 'c' and a.attname = ${column}`;
    expect(
      checks.map((check) => [...check.definition.matchAll(/'([^']*)'::text/g)].map((m) => m[1])),
    ).toEqual([words]);
  },
);

/** A what-if is advised about its planting. */
const SUBJECT_STATES = StateSchema.options
  .map((state) => state.shape.kind.value)
  .filter((kind) => kind !== "what-if");

test.each([
  ["bed_covers", "cover", COVERS],
  ["bed_mulches", "mulch", MULCHES],
  ["plantings", "species", SPECIES],
  ["plantings", "market_type", MARKET_TYPES],
  ["field_notes", "kind", NOTE_KINDS],
  ["materials", "kind", MATERIAL_KINDS],
  ["structures", "glazing", GLAZINGS],
  ["structures", "inner_layer", INNER_LAYERS],
  ["soil_water_readings", "kind", SOIL_WATER_KINDS],
  ["plantings", "base_temperature_from", BASE_TEMPERATURE_FROM],
  ["beds", "shaded_from", SHADE_SIDES],
  ["sprays", "target", SPRAY_TARGETS],
  ["works", "task", recordRoutes.WORK_TASKS],
  ["trial_values", "missing", MISSING_REASONS],
  ["soil_tests", "medium", SoilTestSchema.shape.medium.options],
  ["drafts", "subject_kind", SUBJECT_STATES],
] as const)("the words of %s.%s are the rules'", (table, column, words) => {
  const found = tenantTables
    .filter((each) => tableName(each) === table)
    .flatMap((each) => getTableConfig(each).columns.filter((c) => c.name === column));
  expect(found.map((c) => c.enumValues)).toEqual([words]);
});

test("every field of the rules' weather day has its column, under the same name", () => {
  const [weather] = tenantTables.filter((table) => tableName(table) === "weather_days");
  const fields = Object.keys(WeatherDaySchema.shape);
  expect(Object.keys(weather ?? {})).toEqual(expect.arrayContaining(fields));
});
