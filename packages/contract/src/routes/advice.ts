import { createRoute, z } from "@hono/zod-openapi";
import { AnswerSchema, ExpectedSchema, SaidSchema } from "../answer.ts";
import { body, Day, DoneSchema, Id, Instant, json, next, officePath, page, problems } from "../shapes.ts";
import { CheckpointVerdictSchema } from "./ledger.ts";
import { AlarmSchema } from "./weather.ts";

/** Drafts, what was issued, and what became of it. */

export const DraftSchema = z
  .object({
    id: Id,
    farmId: Id,
    farmName: z.string(),
    /** The plantings it is about: one for a planting, all on the valve, all in the bed. */
    plantingIds: z.array(Id),
    subjectId: Id,
    subjectName: z.string().describe("variety and bed, valve, or bed, as the office calls it"),
    ruleId: z.string(),
    kind: z.enum(["advice", "needs-more", "does-not-apply", "refused"]),
    decisionCode: z.string().nullable(),
    /** In the agent's language and the farm's units. */
    headline: z.string(),
    harm: z.number(),
    actBy: Instant.nullable(),
    /** Why it stands where it stands in the round. */
    reason: z.string(),
    madeAt: Instant,
    setAsideUntil: Day.nullable(),
    /** Where another agent was asked to read it too. */
    second: z
      .object({
        askedBy: z.string(),
        askedAt: Instant,
        /** Asked by the reader, who cannot confirm it. */
        mine: z.boolean(),
        note: z.string().nullable(),
        /** It says something else since: to be read and asked again. */
        changed: z.boolean(),
        sentBack: z.object({ by: z.string(), at: Instant, reason: z.string().nullable() }).nullable(),
      })
      .nullable(),
  })
  .openapi("Draft");
export type Draft = z.infer<typeof DraftSchema>;

export const DraftDetailSchema = DraftSchema.extend({
  answer: AnswerSchema,
  said: SaidSchema,
  /** Hash of the state it was computed from; issuing names it, so that nobody issues what they have not read. */
  stateSha256: z.string(),
  /** The office wants a second pair of eyes on it before it goes out. */
  needsSecond: z.boolean(),
}).openapi("DraftDetail");
export type DraftDetail = z.infer<typeof DraftDetailSchema>;

export const AdvisoryStatusSchema = z.enum([
  "issued",
  "read",
  "done",
  "not-done",
  "cannot",
  "withdrawn",
  "superseded",
  "expired",
]);

/** What was really done, or why not. */
export const ActualSchema = z
  .object({
    on: Day,
    materialId: Id.nullable(),
    amountKg: z.number().min(0).max(1_000_000).nullable(),
    areaM2: z.number().min(0).max(10_000_000).nullable(),
    minutes: z.number().min(0).max(2880).nullable(),
    litres: z.number().min(0).max(100_000_000).nullable(),
    /** What went with the first material on the same ground and day. */
    alongside: z
      .array(z.object({ materialId: Id, amountKg: z.number().min(0).max(1_000_000) }))
      .max(20)
      .optional(),
  })
  .openapi("Actual");
export type Actual = z.infer<typeof ActualSchema>;

export const FarmerAnswerSchema = z.object({
  kind: z.enum(["done", "not-done", "cannot"]),
  actual: ActualSchema.nullable(),
  reason: z.string().nullable(),
  answeredAt: Instant,
  answeredBy: z.string(),
  ledgerSeq: z.number().int(),
});

export const AdvisorySchema = z
  .object({
    id: Id,
    farmId: Id,
    farmName: z.string(),
    plantingIds: z.array(Id),
    subjectId: Id,
    subjectName: z.string(),
    ruleId: z.string(),
    ruleVersion: z.number().int(),
    issuedAt: Instant,
    /** Under whose name; where a standing order issued it, who signed that. */
    issuedBy: z.string(),
    /** The second agent, where two were wanted. */
    confirmedBy: z.string().nullable(),
    /** Nobody issued it by hand: the permission it went out on. */
    standingOrder: z.object({ id: Id, version: z.number().int() }).nullable(),
    /** As it is now: lapsed once its window has gone by unanswered. */
    status: AdvisoryStatusSchema,
    expiresAt: Instant.nullable(),
    /** The later advice that took its place. */
    supersededBy: Id.nullable(),
    /** The one immutable rendering, cautions inside. */
    said: SaidSchema,
    note: z.string().nullable(),
    windowFrom: Day.nullable(),
    windowTo: Day.nullable(),
    expected: ExpectedSchema.nullable(),
    answer: FarmerAnswerSchema.nullable(),
    withdrawnReason: z.string().nullable(),
    ledgerSeq: z.number().int(),
    /** Of the entry that issued it, to compare with on paper. */
    ledgerHash: z.string(),
  })
  .openapi("Advisory");
export type Advisory = z.infer<typeof AdvisorySchema>;

export const AdvisoryDetailSchema = AdvisorySchema.extend({ answerOfRule: AnswerSchema }).openapi(
  "AdvisoryDetail",
);
export type AdvisoryDetail = z.infer<typeof AdvisoryDetailSchema>;

const tags = ["advice"];
const office = "/v1/offices/{officeId}" as const;
const draftPath = officePath.extend({ draftId: Id });
const advisoryPath = officePath.extend({ advisoryId: Id });

export const getRound = createRoute({
  method: "get",
  path: `${office}/round`,
  tags,
  summary: "Open drafts over all farms, by harm avoided and time left",
  request: {
    params: officePath,
    query: z.object({
      farmId: Id.optional(),
      plantingId: Id.optional(),
      ruleId: z.string().max(60).optional(),
      /** Advice only unless asked for: also what needs a measurement, was refused, or does not apply. */
      all: z.enum(["yes", "no"]).optional(),
      /** Those that were put off are left out; or with them, or they alone. */
      setAside: z.enum(["yes", "no", "only"]).optional(),
      /** Only those that another agent was asked to read and has not yet. */
      second: z.literal("waiting").optional(),
      /** By what is at stake and the time left, unless it is to be by the time left alone. */
      order: z.enum(["urgency", "deadline"]).optional(),
      ...page(1000),
    }),
  },
  responses: {
    200: json(
      z.object({
        alarms: z.array(AlarmSchema),
        drafts: z.array(DraftSchema),
        /** How many there are on all pages together. */
        total: z.int(),
        next,
      }),
      "What is wrong with the weather that comes in, and the round, most urgent first",
    ),
    ...problems,
  },
});

export const adviseAgain = createRoute({
  method: "post",
  path: `${office}/advise`,
  tags,
  summary: "Compute the drafts again, of one farm or of all",
  request: { params: officePath, body: body(z.object({ farmId: Id.optional() })) },
  responses: {
    200: json(
      z.object({ subjects: z.number().int(), replaced: z.number().int(), kept: z.number().int() }),
      "How many subjects were advised and how many drafts changed",
    ),
    ...problems,
  },
});

export const getDraft = createRoute({
  method: "get",
  path: `${office}/drafts/{draftId}`,
  tags,
  summary: "One draft with steps, window, working, evidence and cautions",
  request: { params: draftPath },
  responses: { 200: json(DraftDetailSchema, "The draft"), ...problems },
});

export const setDraftAside = createRoute({
  method: "post",
  path: `${office}/drafts/{draftId}/set-aside`,
  tags,
  summary: "Not now: until a day; null brings it back",
  request: { params: draftPath, body: body(z.object({ until: Day.nullable() })) },
  responses: { 200: json(DraftSchema, "The draft"), ...problems },
});

export const issueDraft = createRoute({
  method: "post",
  path: `${office}/drafts/{draftId}/issue`,
  tags,
  summary: "Issue it under the agent's name; the server computes the answer itself and writes the ledger",
  request: {
    params: draftPath,
    body: body(
      z.object({
        stateSha256: z.string().length(64),
        note: z.string().trim().max(2000).nullable(),
      }),
    ),
  },
  responses: { 201: json(AdvisorySchema, "What was issued"), ...problems },
});

export const askSecond = createRoute({
  method: "post",
  path: `${office}/drafts/{draftId}/second`,
  tags,
  summary: "Send what was read to a second agent, with the words that shall go with it",
  request: {
    params: draftPath,
    body: body(
      z.object({
        stateSha256: z.string().length(64),
        note: z.string().trim().max(2000).nullable(),
      }),
    ),
  },
  responses: { 201: json(DraftSchema, "The draft, waiting for a second"), ...problems },
});

export const confirmSecond = createRoute({
  method: "post",
  path: `${office}/drafts/{draftId}/second/confirm`,
  tags,
  summary:
    "The second yes: issues it under the first agent's name; never by the same person, nor where it has changed",
  request: { params: draftPath, body: body(z.object({ stateSha256: z.string().length(64) })) },
  responses: { 201: json(AdvisorySchema, "What was issued"), ...problems },
});

export const sendBackSecond = createRoute({
  method: "post",
  path: `${office}/drafts/{draftId}/second/send-back`,
  tags,
  summary: "No, with a reason; without one, who asked takes it back",
  request: {
    params: draftPath,
    body: body(z.object({ reason: z.string().trim().min(1).max(2000).nullable() })),
  },
  responses: { 200: json(DraftSchema, "The draft"), ...problems },
});

export const listAdvisories = createRoute({
  method: "get",
  path: `${office}/advisories`,
  tags,
  summary: "What was issued, newest first; a farmer sees their farms'",
  request: {
    params: officePath,
    query: z.object({
      farmId: Id.optional(),
      plantingId: Id.optional(),
      ruleId: z.string().max(60).optional(),
      open: z.enum(["yes", "no"]).optional(),
      /** Only what standing orders issued, or what this one did. */
      automatic: z.literal("yes").optional(),
      standingOrderId: Id.optional(),
      before: Instant.optional(),
      ...page(200),
    }),
  },
  responses: {
    200: json(z.object({ advisories: z.array(AdvisorySchema), next }), "The advisories"),
    ...problems,
  },
});

export const getAdvisory = createRoute({
  method: "get",
  path: `${office}/advisories/{advisoryId}`,
  tags,
  summary: "One issued advice with its working",
  request: { params: advisoryPath },
  responses: { 200: json(AdvisoryDetailSchema, "The advisory"), ...problems },
});

export const markRead = createRoute({
  method: "post",
  path: `${office}/advisories/{advisoryId}/read`,
  tags,
  summary: "The farmer has opened it",
  request: { params: advisoryPath },
  responses: { 200: json(DoneSchema, "Noted"), ...problems },
});

export const answerAdvisory = createRoute({
  method: "post",
  path: `${office}/advisories/{advisoryId}/answer`,
  tags,
  summary:
    "Done with what was really done, not done, or cannot, with a reason; a second answer corrects the first",
  request: {
    params: advisoryPath,
    body: body(
      z.object({
        kind: z.enum(["done", "not-done", "cannot"]),
        actual: ActualSchema.nullable(),
        reason: z.string().trim().max(2000).nullable(),
        answerSeen: z
          .int()
          .nullable()
          .optional()
          .describe(
            "Ledger entry of the answer that its writer saw standing, null where there was none. Where another has been given since, nothing is done",
          ),
      }),
    ),
  },
  responses: { 201: json(AdvisorySchema, "The advisory with its answer"), ...problems },
});

export const withdrawAdvisory = createRoute({
  method: "post",
  path: `${office}/advisories/{advisoryId}/withdraw`,
  tags,
  summary: "Take an issued advice back, with a reason",
  request: { params: advisoryPath, body: body(z.object({ reason: z.string().trim().min(1).max(2000) })) },
  responses: { 200: json(AdvisorySchema, "The advisory, withdrawn"), ...problems },
});

export const LedgerEntrySchema = z
  .object({
    seq: z.number().int(),
    farmId: Id.nullable(),
    kind: z.enum(["issued", "answered", "withdrawn"]),
    at: Instant,
    hash: z.string(),
    prevHash: z.string(),
    ruleId: z.string().nullable(),
    advisoryId: Id.nullable(),
    summary: z.string(),
  })
  .openapi("LedgerEntry");
export type LedgerEntry = z.infer<typeof LedgerEntrySchema>;

export const listLedger = createRoute({
  method: "get",
  path: `${office}/ledger`,
  tags: ["ledger"],
  summary: "The ledger, newest first",
  request: {
    params: officePath,
    query: z.object({
      farmId: Id.optional(),
      before: z.coerce.number().int().optional(),
      ...page(200),
    }),
  },
  responses: {
    200: json(z.object({ entries: z.array(LedgerEntrySchema), next }), "The entries"),
    ...problems,
  },
});

export const verifyLedger = createRoute({
  method: "post",
  path: `${office}/ledger/verify`,
  tags: ["ledger"],
  summary: "Walk the chain",
  request: { params: officePath },
  responses: {
    200: json(
      z.object({
        whole: z.boolean(),
        entries: z.number().int(),
        head: z.string().nullable(),
        firstBroken: z.object({ seq: z.number().int(), why: z.string() }).nullable(),
        /** The office's own checkpoints, and whether each still holds. */
        checkpoints: z.array(CheckpointVerdictSchema),
      }),
      "Whole, or the first broken entry",
    ),
    ...problems,
  },
});

export const replayEntry = createRoute({
  method: "post",
  path: `${office}/ledger/{seq}/replay`,
  tags: ["ledger"],
  summary: "Compute an entry again from its stored inputs",
  request: { params: officePath.extend({ seq: z.coerce.number().int().min(1) }) },
  responses: {
    200: json(
      z.object({
        identical: z.boolean(),
        /** Why it could not be computed again, where so. */
        cannot: z.string().nullable(),
        differences: z.array(z.object({ path: z.string(), stored: z.unknown(), now: z.unknown() })),
        /** SHA-256 of the kept rules that computed it again; null where the server's own did. */
        bundle: z.string().nullable(),
      }),
      "Identical, or what differs",
    ),
    ...problems,
  },
});
