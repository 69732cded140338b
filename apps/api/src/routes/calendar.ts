import { calendarRoutes } from "@pith/contract";
import {
  getCalendarLink,
  makeCalendarLink,
  notFound,
  readCalendar,
  revokeCalendarLink,
} from "@pith/services";
import { etag } from "hono/etag";
import type { App, AppDeps } from "../env.ts";

/** A farm's calendar, and the address it is read by. */
export function calendarRoutesOf(app: App, { now, delivery }: Pick<AppDeps, "now" | "delivery">) {
  app.openapi(calendarRoutes.getCalendarLink, async (c) =>
    c.json(await getCalendarLink(c.get("ctx"), c.req.valid("param").farmId), 200),
  );
  app.openapi(calendarRoutes.makeCalendarLink, async (c) =>
    c.json(await makeCalendarLink(c.get("ctx"), c.req.valid("param").farmId), 201),
  );
  app.openapi(calendarRoutes.revokeCalendarLink, async (c) =>
    c.json(await revokeCalendarLink(c.get("ctx"), c.req.valid("param").farmId), 200),
  );

  // Programs ask every hour, and mostly nothing has changed.
  app.use("/v1/calendars/*", etag());
  app.openapi(calendarRoutes.getCalendar, async (c) => {
    const { file } = c.req.valid("param");
    if (!file.endsWith(".ics")) throw notFound("link");
    const { db } = c.get("connections");
    const text = await readCalendar(
      { db, now, dashboardUrl: delivery?.dashboardUrl ?? "" },
      file.slice(0, -4),
    );
    return c.text(text, 200, {
      "content-type": "text/calendar; charset=utf-8",
      "cache-control": "private, no-cache",
      // The address is the key: no page that is opened from it may learn it.
      "referrer-policy": "no-referrer",
    }) as never;
  });
}
