import type { OpenAPIHono } from "@hono/zod-openapi";
import type { AuthDb, Ctx, Memberships, Post } from "@pith/services";
import type { Auth } from "./auth.ts";

/** Who is signed in. */
export interface Person {
  id: string;
  name: string;
  email: string;
  /** Whether their sign-in takes a second step. */
  secondStep: boolean;
  /** Of the session that asks. */
  sessionId: string;
}

/** The two connections a request uses, and what stands on the second. On the edge they live as long as the request. */
export interface Connections {
  db: Ctx["db"];
  authDb: AuthDb;
  auth: Auth;
  post: Post;
  close?: () => Promise<void>;
  /** Work that still uses them after the handler has returned. */
  until?: Promise<void>;
}

/** How much may be asked for in a minute. */
export interface Limits {
  /** Requests of one person. */
  person: number;
  /** Requests from one address, to what needs no sign-in. */
  address: number;
}

/** What the app is given; tests pass other values. */
export interface AppDeps {
  connect: () => Connections;
  /** What attempts are counted under is hashed with this. */
  secret: string;
  /** Addresses of proxies that say truly for whom they call; this machine is believed as it is. */
  proxies?: readonly string[];
  /** How much anybody may ask in a minute; as usual unless said. */
  limits?: Limits;
  now: () => Date;
  log: (line: Record<string, unknown>) => void;
  /** Browser origins besides the API's own that may call it. */
  origins: string[];
  /** Services that forecasts can be pulled from; none unless said. */
  forecastSources?: Ctx["forecastSources"];
  /** What people and other systems are reached with; nothing is offered unless said. */
  delivery?: Ctx["delivery"];
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
