import { z } from "@hono/zod-openapi";
import type { Answer } from "@pith/rules";
import { FieldProblemSchema } from "./problem.ts";
import { Day } from "./shapes.ts";

/** The rules' answers on the wire. Messages travel as keys and numbers, and rendered for the reader beside them. */

const Param = z.union([
  z.string(),
  z.number(),
  z.object({ value: z.number(), unit: z.string() }),
  z.object({ day: z.string() }),
  z.object({ word: z.string() }),
  z.object({ words: z.array(z.string()) }),
  z.object({ bed: z.string(), nth: z.number() }),
  z.object({ planting: z.string(), nth: z.number() }),
  z.object({ treatment: z.string(), nth: z.number() }),
]);
const Message = z.object({ key: z.string(), params: z.record(z.string(), Param) }).openapi("Message");
const SourceRef = z.object({ key: z.string(), locator: z.string().optional() });

export const WorkingLineSchema = z
  .object({
    symbol: z.string(),
    meaning: z.string(),
    expression: z.string(),
    value: z.union([z.number(), z.string(), z.boolean(), z.null()]),
    unit: z.string(),
    source: SourceRef.nullable(),
  })
  .openapi("WorkingLine");
export const EstimatedSchema = z.object({ input: z.string(), how: z.string(), source: SourceRef.optional() });

export const CautionSchema = z
  .object({
    id: z.string(),
    version: z.number().int(),
    severity: z.enum(["danger", "warning", "care"]),
    text: z.object({ en: z.string(), es: z.string().optional() }),
  })
  .openapi("Caution");

export const ExpectedSchema = z
  .object({
    kind: z.enum(["application", "watering", "setting-out", "look"]),
    date: Day,
    materialId: z.string().optional(),
    amountKg: z.number().optional(),
    areaM2: z.number().optional(),
    minutes: z.number().optional(),
    netMm: z.number().optional(),
    nKgPerHa: z.number().optional(),
    alongside: z.array(z.object({ materialId: z.string(), amountKg: z.number() })).optional(),
  })
  .openapi("Expected");

const Step = z.object({ text: Message });
const Case = z.object({ when: Message, decision: Message, steps: z.array(Step) });
const Chart = z.object({
  id: z.string(),
  title: Message,
  x: z.object({
    name: Message,
    kind: z.enum(["date", "hour", "number"]),
    labels: z.array(Message).optional(),
    unit: z.string().optional(),
  }),
  y: z.object({ name: Message, unit: z.string() }),
  series: z.array(
    z.object({
      id: z.string(),
      name: Message,
      style: z.enum(["line", "area", "bars", "limit", "points"]),
      points: z.array(z.tuple([z.union([z.string(), z.number()]), z.number().nullable()])),
    }),
  ),
  bands: z
    .array(
      z.object({
        name: Message,
        from: z.union([z.string(), z.number()]),
        to: z.union([z.string(), z.number()]),
      }),
    )
    .optional(),
});
const Range = z.object({
  id: z.string(),
  name: Message,
  unit: z.string(),
  value: z.number(),
  reported: z.object({ value: z.number(), unit: z.string() }).optional(),
  classes: z.array(z.object({ name: Message, low: z.number(), high: z.number().nullable() })),
  class: z.number().int(),
  guide: z.object({
    id: z.string(),
    title: z.string(),
    status: z.enum(["seen", "secondary", "memory", "office"]),
  }),
});

const Table = z.object({
  id: z.string(),
  title: Message,
  columns: z.array(
    z.object({
      name: Message,
      unit: z.string().optional(),
      materialId: z.string().optional(),
      tank: z.enum(["A", "B"]).optional(),
    }),
  ),
  rows: z.array(z.array(z.union([Message, z.number(), z.string(), z.null()]))),
});

const whose = {
  rule: z.object({ id: z.string(), version: z.number().int() }),
  subject: z.object({
    kind: z.enum(["planting", "valve", "bed", "structure", "shed", "bed-plan", "trial", "farm-season"]),
    id: z.string(),
  }),
  asOf: z.string(),
};

export const AnswerSchema = z
  .discriminatedUnion("kind", [
    z.object({
      kind: z.literal("advice"),
      ...whose,
      decision: z.object({ code: z.string(), text: Message }),
      steps: z.array(Step),
      window: z.object({ from: z.string().nullable(), to: z.string().nullable(), endsBy: Message }),
      stakes: z.object({ harm: z.number(), reason: Message, actBy: z.string().nullable() }),
      working: z.array(WorkingLineSchema),
      estimated: z.array(EstimatedSchema),
      evidence: z.array(z.string()),
      grade: z.enum(["strong", "moderate", "weak", "practice"]),
      limits: z.array(Message),
      cautions: z.array(CautionSchema),
      wouldChange: z.array(Message),
      cases: z.array(Case),
      expected: ExpectedSchema.nullable(),
      amounts: z.record(z.string(), z.number()),
      charts: z.array(Chart),
      ranges: z.array(Range).optional(),
      table: z.array(Table).optional(),
    }),
    z.object({
      kind: z.literal("needs-more"),
      ...whose,
      missing: z.array(z.object({ field: z.string(), measure: Message, couldMove: Message })),
      working: z.array(WorkingLineSchema),
      estimated: z.array(EstimatedSchema),
    }),
    z.object({ kind: z.literal("does-not-apply"), ...whose, reason: Message }),
    z.object({ kind: z.literal("refused"), ...whose, problems: z.array(FieldProblemSchema) }),
  ])
  .openapi("Answer");

/** Holds the wire to the rules: a change to either that the other does not follow fails to compile. */
type WireAnswer = z.infer<typeof AnswerSchema>;
type Follows<Wide, _Narrow extends Wide> = true;
export type AnswerIsOnTheWire = Follows<WireAnswer, Answer>;

/** An answer said in a reader's language and units, in the order it is read. */
export const SaidSchema = z
  .object({
    language: z.string(),
    units: z.enum(["metric", "us"]),
    decision: z.string(),
    steps: z.array(z.string()),
    window: z.string().nullable(),
    reason: z.string().nullable(),
    cautions: z.array(
      z.object({ id: z.string(), version: z.number().int(), severity: z.string(), text: z.string() }),
    ),
    limits: z.array(z.string()),
    wouldChange: z.array(z.string()),
    cases: z.array(z.object({ when: z.string(), decision: z.string(), steps: z.array(z.string()) })),
    missing: z.array(z.object({ field: z.string(), measure: z.string(), couldMove: z.string() })),
    problems: z.array(FieldProblemSchema),
  })
  .openapi("Said");
export type Said = z.infer<typeof SaidSchema>;
export type Expected = z.infer<typeof ExpectedSchema>;
