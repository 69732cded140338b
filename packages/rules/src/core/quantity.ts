import { z } from "zod";
import { parseAtTheDoor } from "./fields.ts";
import { type Estimated, type SourceRef, Working, type WorkingLine } from "./working.ts";

/** What every quantity answers with. `value` keeps full floating precision; rounding is for people. */
export interface QuantityAnswer<O> {
  value: O;
  working: WorkingLine[];
  estimated: Estimated[];
  sources: SourceRef[];
}

/** How an output is listed. */
export interface OutputSpec {
  meaning: string;
  unit: string;
}

/** One named, sourced computation. */
export interface Quantity<I = unknown, O = Record<string, unknown>> {
  id: string;
  question: string;
  schema: z.ZodType<I>;
  outputs: Record<string, OutputSpec>;
  sources: SourceRef[];
  /** Validates, computes, shows its working. Throws DomainError for input outside the stated range. */
  compute(raw: unknown): QuantityAnswer<O>;
}

/** Declares a quantity: its fields, its sources and the computation that writes its working down. */
export function defineQuantity<S extends z.ZodType, O extends object>(spec: {
  id: string;
  question: string;
  schema: S;
  outputs: { [K in keyof O]: OutputSpec };
  sources: SourceRef[];
  compute: (input: z.output<S>, working: Working) => O;
}): Quantity<z.output<S>, O> {
  return {
    id: spec.id,
    question: spec.question,
    schema: spec.schema as unknown as z.ZodType<z.output<S>>,
    outputs: spec.outputs,
    sources: spec.sources,
    compute(raw) {
      const working = new Working();
      const value = spec.compute(parseAtTheDoor(spec.schema, raw), working);
      return { value, working: working.lines, estimated: working.estimated, sources: spec.sources };
    },
  };
}

/** A field as `GET /v1/quantities` lists it. */
export interface InputListing {
  name: string;
  required: boolean;
  meaning: string;
  unit: string;
  min?: number;
  max?: number;
  words?: string[];
}

/** The inputs of a quantity, read from the same schema that validates them. */
export function listInputs(quantity: Quantity): InputListing[] {
  const json = z.toJSONSchema(quantity.schema, { io: "input", unrepresentable: "any" }) as JsonSchema;
  const parts = json.properties ? [json] : (json.anyOf ?? json.allOf ?? []);
  const seen = new Map<string, InputListing>();
  for (const part of parts) {
    for (const [name, field] of Object.entries(part.properties ?? {})) {
      const required = part.required?.includes(name) ?? false;
      seen.set(name, {
        name,
        required,
        meaning: field.meaning ?? field.description ?? "",
        unit: field.unit ?? "",
        ...(field.min !== undefined && { min: field.min }),
        ...(field.max !== undefined && { max: field.max }),
        ...(field.enum && { words: field.enum.map(String) }),
      });
    }
  }
  return [...seen.values()];
}

interface JsonSchema {
  properties?: Record<string, JsonSchema>;
  required?: string[];
  anyOf?: JsonSchema[];
  allOf?: JsonSchema[];
  enum?: unknown[];
  description?: string;
  meaning?: string;
  unit?: string;
  min?: number;
  max?: number;
}
