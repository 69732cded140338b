import type { Tx } from "@pith/db";
import { parseAtTheDoor } from "@pith/rules";
import type { z } from "zod";
import { recordAudit } from "../audit.ts";
import { type Ctx, inOffice, requireAgent } from "../context.ts";
import { adviseFarm } from "../drafts/adviseFarm.ts";
import { found } from "../errors.ts";
import { requireUnchanged } from "../unchanged.ts";
import { schemaOf } from "../wellFormed.ts";
import type { OfFarm } from "./ofFarm.ts";
import { lockFarm, requireFarm } from "./requireFarm.ts";

type BodyRoute = { request: { body: { content: { "application/json": { schema: z.ZodType } } } } };

/** One kind of thing that belongs to a farm: what differs between sites, valves, beds, plantings and materials. */
export interface Thing<View extends { id: string }, Value> {
  one: string;
  routes: { add: BodyRoute; change: BodyRoute };
  list(tx: Tx, at: OfFarm): Promise<View[]>;
  /** Stores it whole, whether it is new or known. */
  save(tx: Tx, at: OfFarm, id: string, value: Value): Promise<unknown>;
  /** What the wire's schema cannot see: whether the rules can read it, and whether what it names is this farm's. */
  check(tx: Tx, at: OfFarm, id: string, value: Value): Promise<void>;
}

/** The verbs of a thing: whoever sees the farm reads it; agents add it, and change some of its fields; what depends on it is advised again. */
export function verbsOf<View extends { id: string }, Value>(thing: Thing<View, Value>) {
  const keep = (
    ctx: Ctx,
    farmId: string,
    id: string,
    action: string,
    valueIn: (tx: Tx, at: OfFarm) => Promise<Value>,
  ) =>
    inOffice(ctx, async (tx) => {
      await lockFarm(tx, ctx, farmId);
      const at = { officeId: ctx.officeId, farmId };
      const value = await valueIn(tx, at);
      await thing.check(tx, at, id, value);
      await thing.save(tx, at, id, value);
      await recordAudit(tx, ctx, { action: `${thing.one}.${action}`, entity: thing.one, entityId: id });
      await adviseFarm(tx, ctx, farmId);
      return found(await one(tx, at, id), thing.one);
    });
  const one = async (tx: Tx, at: OfFarm, id: string) => (await thing.list(tx, at)).find((t) => t.id === id);

  return {
    get: (ctx: Ctx, farmId: string, id: string): Promise<View> =>
      inOffice(ctx, async (tx) => {
        await requireFarm(tx, ctx, farmId);
        return found(await one(tx, { officeId: ctx.officeId, farmId }, id), thing.one);
      }),
    async add(ctx: Ctx, farmId: string, raw: unknown): Promise<View> {
      requireAgent(ctx);
      const value = parseAtTheDoor(schemaOf(thing.routes.add), raw) as Value;
      return keep(ctx, farmId, globalThis.crypto.randomUUID(), "add", async () => value);
    },
    async change(ctx: Ctx, farmId: string, id: string, raw: unknown): Promise<View> {
      requireAgent(ctx);
      const changes = parseAtTheDoor(schemaOf(thing.routes.change), raw) as Partial<Value>;
      return keep(ctx, farmId, id, "change", async (tx, at) => {
        const known = found(await one(tx, at, id), thing.one);
        await requireUnchanged(ctx, known);
        return parseAtTheDoor(schemaOf(thing.routes.add), { ...known, ...changes }) as Value;
      });
    },
  };
}
