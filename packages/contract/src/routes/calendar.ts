import { createRoute, z } from "@hono/zod-openapi";
import { DoneSchema, farmPath, Instant, json, problems } from "../shapes.ts";

/** A farm's windows and deadlines as a calendar (RFC 5545) that other programs subscribe to. */

const tags = ["calendar"];
const link = "/v1/me/offices/{officeId}/farms/{farmId}/calendar" as const;

export const CalendarLinkSchema = z
  .object({ madeAt: Instant, lastUsedAt: Instant.nullable() })
  .nullable()
  .openapi("CalendarLink");

export const getCalendarLink = createRoute({
  method: "get",
  path: link,
  tags,
  summary: "Whether one has a calendar address of this farm, and when it was asked last",
  request: { params: farmPath },
  responses: {
    200: json(z.object({ link: CalendarLinkSchema }), "When it was made, not what it is"),
    ...problems,
  },
});

export const makeCalendarLink = createRoute({
  method: "post",
  path: link,
  tags,
  summary: "A new calendar address of this farm, shown once; the one before stops",
  request: { params: farmPath },
  responses: {
    201: json(
      z.object({ path: z.string().describe("below this API; whoever has it can read the calendar") }),
      "The address",
    ),
    ...problems,
  },
});

export const revokeCalendarLink = createRoute({
  method: "delete",
  path: link,
  tags,
  summary: "Stop the calendar address",
  request: { params: farmPath },
  responses: { 200: json(DoneSchema, "Done"), ...problems },
});

export const getCalendar = createRoute({
  method: "get",
  path: "/v1/calendars/{file}",
  tags,
  summary:
    "The calendar of an address, `<secret>.ics`: whoever has the address is let in, because calendar programs send nothing else",
  security: [],
  request: { params: z.object({ file: z.string().max(100) }) },
  responses: {
    200: { description: "RFC 5545", content: { "text/calendar": { schema: z.string() } } },
    304: { description: "As it was" },
    ...problems,
  },
});
