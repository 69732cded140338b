import type { OpenAPIHono } from "@hono/zod-openapi";
import type { Ctx, Memberships } from "@pith/services";
import type { Auth } from "./auth.ts";

/** Who is signed in. */
export interface Person {
  id: string;
  name: string;
  email: string;
}

/** The two connections a request uses. On the edge they live as long as the request. */
export interface Connections {
  db: Ctx["db"];
  auth: Auth;
  close?: () => Promise<void>;
  /** Work that still uses them after the handler has returned. */
  until?: Promise<void>;
}

/** What the app is given; tests pass other values. */
export interface AppDeps {
  connect: () => Connections;
  now: () => Date;
  log: (line: Record<string, unknown>) => void;
  /** Browser origins besides the API's own that may call it. */
  origins: string[];
  /** Services that forecasts can be pulled from; none unless said. */
  forecastSources?: Ctx["forecastSources"];
  /** What the ledger is signed with and replayed by; none unless said. */
  ledger?: Ctx["ledger"];
}

export interface AppEnv {
  Variables: {
    requestId: string;
    connections: Connections;
    person: Person;
    memberships: Memberships;
    ctx: Ctx;
  };
}

export type App = OpenAPIHono<AppEnv>;
