import { z } from "zod";

/** What the contract's schema says of one field. */
export interface FieldFacts {
  kind: "text" | "number" | "date" | "moment" | "word" | "flag" | "id" | "email";
  nullable: boolean;
  optional: boolean;
  min?: number;
  max?: number;
  words: string[];
}

interface Json {
  /** Several where a bare type may be null. */
  type?: string | string[];
  format?: string;
  enum?: unknown[];
  minimum?: number;
  maximum?: number;
  properties?: Record<string, Json>;
  required?: string[];
  items?: Json;
  anyOf?: Json[];
}

/** Looks a field up by its path, in which a number stands for a row of a list. */
export function factsOf(schema: z.ZodType): (path: string) => FieldFacts {
  const root = z.toJSONSchema(schema, { io: "input", unrepresentable: "any" }) as Json;
  return (path) => {
    let here = root;
    let optional = false;
    let nullable = false;
    for (const part of path.split(".")) {
      const solid = solidOf(here);
      optional = /^\d+$/.test(part) ? false : !solid.required?.includes(part);
      const next = /^\d+$/.test(part) ? solid.items : solid.properties?.[part];
      if (!next) throw new Error(`the contract has no field ${path}`);
      nullable = typesOf(next).includes("null") || (next.anyOf?.some(({ type }) => type === "null") ?? false);
      here = next;
    }
    const solid = solidOf(here);
    return {
      kind: kindOf(solid),
      nullable,
      optional,
      ...(solid.minimum !== undefined && { min: solid.minimum }),
      ...(solid.maximum !== undefined && { max: solid.maximum }),
      words: (solid.enum ?? []).map(String),
    };
  };
}

/** The same without the "or nothing". */
const solidOf = (json: Json): Json => json.anyOf?.find((option) => option.type !== "null") ?? json;

const typesOf = ({ type }: Json): string[] => (type === undefined ? [] : [type].flat());

function kindOf(json: Json): FieldFacts["kind"] {
  const types = typesOf(json);
  if (json.enum) return "word";
  if (types.includes("boolean")) return "flag";
  if (types.includes("number") || types.includes("integer")) return "number";
  if (json.format === "date") return "date";
  if (json.format === "date-time") return "moment";
  if (json.format === "uuid") return "id";
  if (json.format === "email") return "email";
  return "text";
}
