import { WORDS } from "./words.ts";

/** As much of a JSON schema as the document uses. */
export interface Schema {
  $ref?: string;
  type?: string | string[];
  enum?: unknown[];
  const?: unknown;
  example?: unknown;
  examples?: unknown[];
  default?: unknown;
  anyOf?: Schema[];
  oneOf?: Schema[];
  allOf?: Schema[];
  format?: string;
  pattern?: string;
  minimum?: number;
  maximum?: number;
  exclusiveMinimum?: number;
  exclusiveMaximum?: number;
  multipleOf?: number;
  minLength?: number;
  maxLength?: number;
  items?: Schema;
  prefixItems?: Schema[];
  minItems?: number;
  properties?: Record<string, Schema>;
  required?: string[];
  additionalProperties?: Schema | boolean;
}

/** Deeper than this, what may be left out is left out: a shape may hold itself. */
const DEEP = 8;

/** A value that a schema takes, the same each time. */
export function exampleOf(schema: Schema, schemas: Record<string, Schema>, name = "", depth = 0): unknown {
  const of = (inner: Schema, called = name) => exampleOf(inner, schemas, called, depth + 1);
  if (schema.example !== undefined) return schema.example;
  if (schema.examples?.length) return schema.examples[0];
  const word = WORDS[name];
  if (typeof word === "object" && word !== null && isObject(schema, schemas)) return word;
  if (schema.$ref) return of(schemas[schema.$ref.split("/").at(-1) ?? ""] ?? {});
  if (schema.const !== undefined) return schema.const;
  if (schema.enum) return schema.enum.includes(word) ? word : schema.enum[0];
  const either = schema.anyOf ?? schema.oneOf;
  if (either) return of(either.find((one) => one.type !== "null") ?? {});
  if (schema.allOf) {
    const parts = schema.allOf.map((part) => of(part));
    return parts.every((p) => typeof p === "object" && p !== null)
      ? Object.assign({}, ...(parts as object[]))
      : parts[0];
  }
  const type = Array.isArray(schema.type) ? schema.type.find((one) => one !== "null") : schema.type;
  switch (type) {
    case "object":
      return objectOf(schema, of, depth);
    case "array":
      if (schema.prefixItems) return schema.prefixItems.map((item) => of(item));
      if (depth > DEEP && !schema.minItems) return [];
      return Array.from({ length: Math.max(1, schema.minItems ?? 1) }, () => of(schema.items ?? {}));
    case "boolean":
      return false;
    case "null":
      return null;
    case "number":
    case "integer":
      return numberOf(schema, type, name);
    case "string":
      return textOf(schema, name);
    default:
      return WORDS[name] ?? (schema.properties ? objectOf(schema, of, depth) : "anything");
  }
}

const isObject = ({ $ref, type }: Schema, schemas: Record<string, Schema>): boolean =>
  ($ref ? schemas[$ref.split("/").at(-1) ?? ""]?.type : type) === "object";

function objectOf(schema: Schema, of: (inner: Schema, called?: string) => unknown, depth: number): object {
  const fields = Object.entries(schema.properties ?? {}).filter(
    ([name]) => depth <= DEEP || schema.required?.includes(name),
  );
  const value = Object.fromEntries(fields.map(([name, inner]) => [name, of(inner, name)]));
  const rest = schema.additionalProperties;
  if (fields.length > 0 || typeof rest !== "object") return value;
  return depth > DEEP ? {} : { netMm: of(rest, "netMm") };
}

function numberOf(schema: Schema, type: string, name: string): number {
  const step = schema.multipleOf ?? (type === "integer" ? 1 : 0);
  const low =
    schema.minimum ??
    (schema.exclusiveMinimum === undefined ? undefined : schema.exclusiveMinimum + (step || 0.1));
  const high =
    schema.maximum ??
    (schema.exclusiveMaximum === undefined ? undefined : schema.exclusiveMaximum - (step || 0.1));
  const word = WORDS[name];
  const fits = (n: number) => (low === undefined || n >= low) && (high === undefined || n <= high);
  if (typeof word === "number" && fits(word) && (step === 0 || word % step === 0)) return word;
  const wanted = Math.min(high ?? 1, Math.max(low ?? 1, 1));
  return step === 0 ? wanted : Math.ceil(wanted / step) * step;
}

function textOf(
  { format, pattern, minLength = 0, maxLength = Number.POSITIVE_INFINITY }: Schema,
  name: string,
): string {
  const word = WORDS[name];
  const fits = (text: string) =>
    text.length >= minLength && text.length <= maxLength && (!pattern || new RegExp(pattern, "u").test(text));
  const known = format && FORMATS[format];
  if (typeof word === "string" && fits(word)) return word;
  if (known) return known;
  const guesses = [
    name,
    "a word",
    "3f".repeat(32),
    "2026-05-10",
    "12:00",
    "1",
    "A1",
    "-".repeat(minLength),
    "x".repeat(minLength),
  ];
  return (
    guesses.find((text) => text !== "" && fits(text)) ??
    "x".repeat(Math.min(maxLength, Math.max(minLength, 1)))
  );
}

const FORMATS: Record<string, string> = {
  uuid: "7d0f1a52-64c1-4c3e-8a4e-2b9d5e6f0c31",
  date: "2026-05-10",
  "date-time": "2026-05-10T12:00:00Z",
  email: "grower@lowfell.example",
  uri: "https://office.aldertarn.example/pith",
};
