import {
  bedPlans,
  beds,
  farms,
  formerPeople,
  memberships,
  plantings,
  structures,
  type Tx,
  trials,
  valves,
} from "@pith/db";
import type { Reader } from "@pith/rules";
import { type AnyColumn, and, eq, inArray, sql } from "drizzle-orm";
import { type Ctx, forOffice } from "../context.ts";

/** What subjects are called in the office, and how each farm reads. */
export interface Names {
  farm(farmId: string): { name: string; reader: Reader };
  subject(kind: string, id: string, farmId: string): string;
}

/**
 * Names for the subjects of one farm, or of every farm that this transaction sees.
 * @param only the things that will be asked for, where they are known: a page of the round needs few of an office's many
 */
export async function readNames(
  tx: Tx,
  { officeId, language = "en" }: Pick<Ctx, "officeId" | "language">,
  farmIds?: string[],
  only?: readonly string[],
): Promise<Names> {
  const of = (t: typeof beds | typeof valves | typeof plantings | typeof structures) =>
    and(eq(t.officeId, officeId), only ? among(t.id, only) : farmIds && among(t.farmId, farmIds));
  // Sent one behind the other without waiting in between.
  const [farmRows, valveRows, bedRows, plantingRows, structureRows, planRows, trialRows] = await Promise.all([
    tx
      .select({ id: farms.id, name: farms.name, units: farms.units })
      .from(farms)
      .where(and(eq(farms.officeId, officeId), farmIds && among(farms.id, farmIds))),
    tx.select({ id: valves.id, name: valves.name }).from(valves).where(of(valves)),
    tx.select({ id: beds.id, name: beds.name }).from(beds).where(of(beds)),
    tx
      .select({ id: plantings.id, name: plantings.varietyName, bedName: beds.name })
      .from(plantings)
      .innerJoin(beds, and(eq(beds.officeId, plantings.officeId), eq(beds.id, plantings.bedId)))
      .where(of(plantings)),
    tx.select({ id: structures.id, name: structures.name }).from(structures).where(of(structures)),
    tx
      .select({ id: bedPlans.id, season: bedPlans.season, blocks: bedPlans.blocks })
      .from(bedPlans)
      // A block is named by its plan, whose own id the words do not hold.
      .where(and(eq(bedPlans.officeId, officeId), farmIds && among(bedPlans.farmId, farmIds))),
    tx
      .select({ id: trials.id, name: trials.name, design: trials.design })
      .from(trials)
      .where(and(eq(trials.officeId, officeId), farmIds && among(trials.farmId, farmIds))),
  ]);

  const known = new Map(farmRows.map((f) => [f.id, f]));
  const bedNames = new Map(bedRows.map((b) => [b.id, b.name]));
  const plantingNames = plantingRows.map((p) => [p.id, `${p.name}, ${p.bedName}`] as const);
  const subjects = new Map<string, string>([
    ...valveRows.map((v) => [v.id, v.name] as const),
    ...planRows.map((p) => [p.id, String(p.season)] as const),
    ...trialRows.map((t) => [t.id, t.name] as const),
    ...structureRows.map((s) => [s.id, s.name] as const),
    ...bedNames,
    ...plantingNames,
  ]);
  const readable = new Map([
    // A block that is a planting already goes by the planting's name.
    ...planRows.flatMap((p) => p.blocks.map((b) => [b.id, b.varietyName] as const)),
    ...bedNames,
    ...plantingNames,
    ...trialRows.flatMap((t) =>
      t.design.factors.flatMap((f) => [
        [f.id, f.name] as const,
        ...f.levels.map((level) => [level.id, level.name] as const),
      ]),
    ),
  ]);
  return {
    farm(farmId) {
      const row = known.get(farmId);
      return {
        name: row?.name ?? "",
        reader: { language, units: row?.units ?? "metric", bedNames: readable },
      };
    },
    subject(kind, id, farmId) {
      return kind === "farm-season" || kind === "shed"
        ? (known.get(farmId)?.name ?? "")
        : (subjects.get(id) ?? "");
    },
  };
}

/** One parameter however many there are: hundreds of them are otherwise a new statement each time. */
const among = (column: AnyColumn, ids: readonly string[]) =>
  sql`${column} = any(${`{${ids.join()}}`}::uuid[])`;

/** What the people of an office are called, for whoever may read its members. */
export async function peopleIn(
  tx: Tx,
  officeId: string,
  userIds: readonly string[],
): Promise<Map<string, string>> {
  const wanted = [...new Set(userIds)];
  if (wanted.length === 0) return new Map();
  const namedIn = (table: typeof memberships | typeof formerPeople) =>
    tx
      .select({ userId: table.userId, name: table.name })
      .from(table)
      .where(and(eq(table.officeId, officeId), inArray(table.userId, wanted)));
  // Those too who have left: what they issued still says by whom.
  const rows = [...(await namedIn(formerPeople)), ...(await namedIn(memberships))];
  return new Map(rows.map((r) => [r.userId, r.name]));
}

/** The same for anybody: a farmer may not read the list of members, but may know who advised them. Names alone come back. */
export const readPeople = (ctx: Ctx, userIds: readonly string[]): Promise<Map<string, string>> =>
  userIds.length === 0
    ? Promise.resolve(new Map())
    : forOffice(ctx, (tx) => peopleIn(tx, ctx.officeId, userIds));
