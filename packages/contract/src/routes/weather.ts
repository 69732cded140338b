import { createRoute, z } from "@hono/zod-openapi";
import { body, Id, Instant, json, officePath, problems } from "../shapes.ts";

/** Weather that comes in by itself: services that forecasts are pulled from, and what is wrong with them. */

export const ForecastSourceSchema = z.enum(["met-norway"]);

/** How a site's service is doing. */
export const SourceStateSchema = z.object({
  lastTriedAt: Instant,
  lastSuccessAt: Instant.nullable(),
  /** In words, while the service fails. */
  lastError: z.string().nullable(),
  /** Not asked before; null while nobody knows. */
  nextDueAt: Instant.nullable(),
});

export const AlarmSchema = z
  .object({
    farmId: Id,
    farmName: z.string(),
    siteId: Id,
    siteName: z.string(),
    /** `silent`: a sensor that has stopped sending; the others are of the site's forecasts. */
    kind: z.enum(["never-answered", "failing", "stale", "deprecated", "silent"]),
    /** Since when; null where it was never otherwise. */
    since: Instant.nullable(),
    message: z.string(),
  })
  .openapi("Alarm");
export type Alarm = z.infer<typeof AlarmSchema>;

export const pullForecasts = createRoute({
  method: "post",
  path: "/v1/offices/{officeId}/forecasts/pull",
  tags: ["weather"],
  summary:
    "Pull the newest forecast of every site that is switched on, or of one; farms with a new one are advised again",
  request: { params: officePath, body: body(z.object({ siteId: Id.optional() })) },
  responses: {
    200: json(
      z.object({
        sites: z.array(
          z.object({
            farmId: Id,
            siteId: Id,
            siteName: z.string(),
            outcome: z.enum(["stored", "unchanged", "not-due", "under-way", "failed"]),
            issuedAt: Instant.nullable(),
            /** What went wrong, or the instant before which the service is not asked again. */
            message: z.string().nullable(),
          }),
        ),
      }),
      "What became of each site",
    ),
    ...problems,
  },
});
