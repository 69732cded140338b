import { OpenAPIHono } from "@hono/zod-openapi";
import { problemNames, problemsOf } from "@pith/contract";
import { LANGUAGES } from "@pith/services";
import type { Context } from "hono";
import { bodyLimit } from "hono/body-limit";
import { languageDetector } from "hono/language";
import { requestId } from "hono/request-id";
import { secureHeaders } from "hono/secure-headers";
import { docsPage, problemPage } from "./docsPage.ts";
import { complete } from "./document/complete.ts";
import type { App, AppDeps, AppEnv } from "./env.ts";
import { connections } from "./middleware/connections.ts";
import { knownOrigins, logged, requestIdOnEveryAnswer, storableText } from "./middleware/guards.ts";
import { limitsOf } from "./middleware/limits.ts";
import { negotiated } from "./middleware/negotiated.ts";
import { onceOnly } from "./middleware/onceOnly.ts";
import { inOffice, signedIn } from "./middleware/person.ts";
import { tagged } from "./middleware/unchanged.ts";
import { problem, problemOf, refusal } from "./problems.ts";
import { accountRoutesOf } from "./routes/account.ts";
import { adviceRoutesOf } from "./routes/advice.ts";
import { bedPlanRoutesOf } from "./routes/bedPlans.ts";
import { calendarRoutesOf } from "./routes/calendar.ts";
import { deliveryRoutesOf } from "./routes/delivery.ts";
import { evidenceRoutesOf } from "./routes/evidence.ts";
import { farmRoutesOf } from "./routes/farms.ts";
import { guideRoutesOf } from "./routes/guides.ts";
import { importRoutesOf } from "./routes/imports.ts";
import { jobRoutesOf } from "./routes/jobs.ts";
import { ledgerRoutesOf } from "./routes/ledger.ts";
import { openRoutesOf } from "./routes/open.ts";
import { peopleRoutesOf } from "./routes/people.ts";
import { readingRoutesOf } from "./routes/readings.ts";
import { recordRoutesOf } from "./routes/records.ts";
import { seasonRecordRoutesOf } from "./routes/seasonRecord.ts";
import { sensorRoutesOf } from "./routes/sensors.ts";
import { signInRoutesOf } from "./routes/signIn.ts";
import { standingOrderRoutesOf } from "./routes/standingOrders.ts";
import { trialRoutesOf } from "./routes/trials.ts";
import { weatherRoutesOf } from "./routes/weather.ts";
import { webhookRoutesOf } from "./routes/webhooks.ts";
import { whatIfRoutesOf } from "./routes/whatIf.ts";

const MAX_BODY_BYTES = 6_000_000;
/** A station's record of a century, with each quote of it escaped; an office of some size. */
const MAX_IMPORT_BYTES = 36_000_000;
const IMPORTS = /^\/v1\/offices\/[^/]+\/(farms\/[^/]+\/imports|import|moves)$/;
/** Better-auth's session cookie; named so that the document says how a call is signed in. */
const COOKIE = "pith.session_token";

/** Advice is said in the first language of `Accept-Language` that the rules speak. */
const languageOfReader = languageDetector({
  supportedLanguages: [...LANGUAGES],
  fallbackLanguage: "en",
  order: ["header"],
  caches: false,
});

/** The whole API. The same app runs on Node and on an edge runtime; what differs is in `deps`. */
export function createApp(deps: AppDeps): App {
  const app = new OpenAPIHono<AppEnv>({
    defaultHook: async (result, c) => {
      if (result.success) return undefined;
      const errors = problemsOf(result.error, await received(c, result.target));
      return refusal(c, errors);
    },
  });

  app.use(requestId(), requestIdOnEveryAnswer);
  app.use(logged(deps.log, deps.now));
  app.use(
    secureHeaders({ contentSecurityPolicy: { defaultSrc: ["'none'"], styleSrc: ["'unsafe-inline'"] } }),
  );
  app.use(knownOrigins(deps.origins));
  app.use(languageOfReader);
  const atMost = (maxSize: number) =>
    bodyLimit({
      maxSize,
      onError: (c) => problem(c, 413, `At most ${maxSize / 1_000_000} MB are accepted.`),
    });
  const [ordinary, large] = [atMost(MAX_BODY_BYTES), atMost(MAX_IMPORT_BYTES)];
  app.use((c, next) => (IMPORTS.test(c.req.path) ? large : ordinary)(c, next));
  app.onError((error, c) => problemOf(error, c, deps.log));
  app.notFound((c) => problem(c, 404, "Nothing here under that address."));

  const { perPerson, perAddress, perBadKey } = limitsOf(deps);

  app.get("/healthz", (c) => c.json({ ok: true }));
  app.use("/v1/auth/*", connections(deps.connect), storableText);
  app.use("/v1/invitations/*", connections(deps.connect), storableText);
  app.use("/v1/me/*", connections(deps.connect), signedIn, perPerson, storableText);
  app.use("/v1/readings", perBadKey);
  for (const open of ["/v1/calendars/*", "/v1/stop-mail/*"])
    app.use(open, perAddress, connections(deps.connect));
  for (const open of ["/v1/quantities/*", "/v1/rules", "/v1/advise", "/v1/openapi.json", "/v1/docs"]) {
    app.use(open, perAddress, negotiated);
  }
  app.use(
    "/v1/offices/:officeId/*",
    connections(deps.connect),
    signedIn,
    perPerson,
    inOffice(deps),
    storableText,
    negotiated,
    onceOnly(deps.log),
    tagged,
  );

  openRoutesOf(app);
  signInRoutesOf(app, deps);
  accountRoutesOf(app, deps);
  peopleRoutesOf(app, deps);
  farmRoutesOf(app);
  recordRoutesOf(app);
  guideRoutesOf(app);
  importRoutesOf(app, deps.log);
  adviceRoutesOf(app);
  standingOrderRoutesOf(app);
  ledgerRoutesOf(app, deps);
  weatherRoutesOf(app);
  sensorRoutesOf(app);
  readingRoutesOf(app, deps);
  bedPlanRoutesOf(app);
  trialRoutesOf(app);
  seasonRecordRoutesOf(app);
  evidenceRoutesOf(app);
  deliveryRoutesOf(app, deps);
  calendarRoutesOf(app, deps);
  webhookRoutesOf(app);
  whatIfRoutesOf(app);
  jobRoutesOf(app);

  app.openAPIRegistry.registerComponent("securitySchemes", "session", {
    type: "apiKey",
    in: "cookie",
    name: COOKIE,
  });
  let document: ReturnType<typeof app.getOpenAPI31Document> | undefined;
  const theDocument = () => {
    document ??= complete(
      app.getOpenAPI31Document({
        openapi: "3.1.0",
        info: {
          title: "Pith",
          version: "1",
          description:
            "Advice for small pepper farms in short seasons: drafts with their working, evidence and cautions, what was issued, and what became of it.",
        },
        security: [{ session: [] }],
      }),
    );
    return document;
  };
  app.get("/v1/openapi.json", (c) => c.json(theDocument()));
  app.get("/v1/problems/:name", (c) => {
    const name = problemNames.find((known) => known === c.req.param("name"));
    return name ? c.html(problemPage(name)) : c.notFound();
  });
  app.get("/v1/docs", (c) => c.html(docsPage(theDocument())));
  return app;
}

/** What came in that place, so that the problem can show it beside what would be accepted. */
const received = (c: Context, target: string): unknown =>
  // An empty body was validated as an empty object; reading it as JSON would fail.
  target === "json" ? c.req.json().catch(() => ({})) : target === "query" ? c.req.query() : c.req.param();
