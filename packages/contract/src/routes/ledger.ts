import { createRoute, z } from "@hono/zod-openapi";
import { body, Day, Id, Instant, json, officePath, problems } from "../shapes.ts";

/** What vouches for a ledger from outside it, and what came from another office's. */

const Hash = z.string().regex(/^[0-9a-f]{64}$/);

export const PublicKeySchema = z.object({
  kty: z.literal("OKP"),
  crv: z.literal("Ed25519"),
  x: z.string().max(100),
});

/** As it is signed: `signature` is over the rest as canonical JSON (RFC 8785). */
export const CheckpointSchema = z
  .strictObject({
    v: z.literal(1),
    kind: z.literal("pith-ledger-checkpoint"),
    office: Id,
    /** How many entries the ledger had. */
    seq: z.number().int().min(1),
    /** Hash of the last of them. */
    head: Hash,
    /** Root of the hash tree over all of them (RFC 9162, 2.1). */
    root: Hash,
    at: Instant,
    /** Thumbprint of the key (RFC 7638), to compare with the one that was noted down. */
    keyId: z.string().max(100),
    publicKey: PublicKeySchema,
    signature: z.string().max(200),
  })
  .openapi("Checkpoint");
export type Checkpoint = z.infer<typeof CheckpointSchema>;

const KeptCheckpointSchema = z.object({ id: Id, onDay: Day, checkpoint: CheckpointSchema });

/** What a checkpoint turns out to vouch for. */
export const CheckpointVerdictSchema = z.object({
  seq: z.number().int(),
  at: Instant,
  keyId: z.string(),
  holds: z.boolean(),
  why: z.string().nullable(),
});
export type CheckpointVerdict = z.infer<typeof CheckpointVerdictSchema>;

const tags = ["ledger"];
const ledger = "/v1/offices/{officeId}/ledger" as const;
const histories = "/v1/offices/{officeId}/histories" as const;

export const getLedgerKey = createRoute({
  method: "get",
  path: "/v1/ledger-key",
  tags,
  security: [],
  summary: "The public key that this server signs checkpoints and exports with; note its id down",
  responses: {
    200: json(z.object({ keyId: z.string(), publicKey: PublicKeySchema }), "The key"),
    404: problems[404],
  },
});

export const listCheckpoints = createRoute({
  method: "get",
  path: `${ledger}/checkpoints`,
  tags,
  summary: "The signed checkpoints, newest first; for everybody of the office, to be kept outside it",
  request: {
    params: officePath,
    query: z.object({
      before: Instant.optional(),
      limit: z.coerce.number().int().min(1).max(400).optional(),
    }),
  },
  responses: {
    200: json(z.object({ checkpoints: z.array(KeptCheckpointSchema) }), "The checkpoints"),
    ...problems,
  },
});

export const makeCheckpoint = createRoute({
  method: "post",
  path: `${ledger}/checkpoints`,
  tags,
  summary:
    "Walk the chain and sign where it stands now; a second one over the same entries on one day is the first",
  request: { params: officePath },
  responses: { 201: json(KeptCheckpointSchema, "The checkpoint"), ...problems },
});

export const getCheckpoint = createRoute({
  method: "get",
  path: `${ledger}/checkpoints/{checkpointId}`,
  tags,
  summary: "One checkpoint as a file",
  request: { params: officePath.extend({ checkpointId: Id }) },
  responses: { 200: json(CheckpointSchema, "The checkpoint"), ...problems },
});

export const checkCheckpoint = createRoute({
  method: "post",
  path: `${ledger}/checkpoints/check`,
  tags,
  summary: "Whether a checkpoint that somebody kept still holds for the ledger as it is",
  request: { params: officePath, body: body(CheckpointSchema) },
  responses: { 200: json(CheckpointVerdictSchema, "What it vouches for"), ...problems },
});

const HistorySchema = z.object({
  id: Id,
  farmId: Id,
  fromOffice: Id,
  fromOfficeName: z.string(),
  takenInAt: Instant,
  entries: z.number().int(),
  checkpoint: CheckpointSchema,
});

export const listHistories = createRoute({
  method: "get",
  path: histories,
  tags,
  summary: "What other offices' ledgers say of farms that moved here; a farmer sees their farms'",
  request: { params: officePath },
  responses: { 200: json(z.object({ histories: z.array(HistorySchema) }), "The histories"), ...problems },
});

const historyPath = officePath.extend({ historyId: Id });

export const getHistory = createRoute({
  method: "get",
  path: `${histories}/{historyId}`,
  tags,
  summary: "The entries of a history, oldest first",
  request: { params: historyPath },
  responses: {
    200: json(
      HistorySchema.extend({
        list: z.array(
          z.object({
            seq: z.number().int(),
            at: Instant.nullable(),
            kind: z.string().nullable(),
            summary: z.string(),
            hash: z.string(),
          }),
        ),
      }),
      "The history",
    ),
    ...problems,
  },
});

export const verifyHistory = createRoute({
  method: "post",
  path: `${histories}/{historyId}/verify`,
  tags,
  summary: "Check every entry of a history against the checkpoint of the office it came from",
  request: { params: historyPath },
  responses: {
    200: json(
      z.object({
        whole: z.boolean(),
        entries: z.number().int(),
        keyId: z.string(),
        firstBroken: z.object({ seq: z.number().int(), why: z.string() }).nullable(),
      }),
      "Whole, or the first broken entry",
    ),
    ...problems,
  },
});
