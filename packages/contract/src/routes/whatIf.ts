import { createRoute, z } from "@hono/zod-openapi";
import { WhatIfSchema } from "../rulesWords.ts";
import { body, DoneSchema, farmPath, Id, json, problems } from "../shapes.ts";

/** What an agent tries on a planting: the rules run where it is tried, and what is chosen becomes a draft to issue. */

/** A state as the rules read it; its whole shape is theirs. */
const State = z.looseObject({ kind: z.string(), asOf: z.string() });

export const WhatIfOfSchema = z
  .object({
    planting: State,
    /** The valve that waters it, where something stands on it. */
    valve: State.nullable(),
    /** What was chosen and is a draft now. */
    drafted: z.object({ choices: WhatIfSchema, draftId: Id.nullable() }).nullable(),
  })
  .openapi("WhatIf");
export type WhatIfOf = z.infer<typeof WhatIfOfSchema>;

const tags = ["what-if"];
const path = "/v1/offices/{officeId}/farms/{farmId}/plantings/{plantingId}/what-if" as const;
const params = farmPath.extend({ plantingId: Id });

export const getWhatIf = createRoute({
  method: "get",
  path,
  tags,
  summary: "The states of a planting and its valve, to run the rules on, and what was chosen of it",
  request: { params },
  responses: { 200: json(WhatIfOfSchema, "The states, as the rules read them now"), ...problems },
});

export const draftWhatIf = createRoute({
  method: "put",
  path,
  tags,
  summary: "Make a draft of a choice, to read and issue as any other; one a planting",
  request: { params, body: body(z.object({ choices: WhatIfSchema })) },
  responses: { 200: json(z.object({ draftId: Id }), "The draft"), ...problems },
});

export const letGoWhatIf = createRoute({
  method: "delete",
  path,
  tags,
  summary: "Let a drafted choice go, and its draft with it",
  request: { params },
  responses: { 200: json(DoneSchema, "Gone; also where there was none"), ...problems },
});
