import { createECDH, randomBytes, randomUUID } from "node:crypto";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { advisories } from "@pith/db";
import { type Ctx, type DeliveryMeans, serverItself, tasks } from "@pith/services";
import { guardedPost, webPush } from "@pith/services/outwards";
import { newSecrets } from "../../infra/home.mjs";
import { tellOfIssued } from "../../packages/services/src/delivery/tellOfIssued.ts";
import { asOffice } from "../support/factories.ts";
import type { Api } from "./support.ts";

/** What tests of reaching people and systems share: a way to issue exactly this, and somebody outside who listens. */

export const secrets = newSecrets();
export const texts: { to: string; text: string }[] = [];
/** Where browsers' push services are; it leads to whoever listens for them. */
export const PUSH = "https://push.example";
export const pushTo = { url: "" };
const local = guardedPost({ localToo: true });
/** Everything is set up, and outside is this very machine. */
export const means: DeliveryMeans = {
  dashboardUrl: "http://dashboard.test",
  mail: true,
  push: webPush({ ...secrets.vapid, subject: "mailto:office@aldertarn.example" }),
  text: { send: async (to, text) => void texts.push({ to, text }) },
  sealKey: secrets.sealKey,
  localHooks: true,
  post: (letter) => local({ ...letter, url: letter.url.replace(PUSH, pushTo.url) }),
  postHook: local,
};

export const ctxOf = (api: Api, over: Partial<Ctx> = {}): Ctx => ({
  db: api.db,
  officeId: api.office.id,
  actor: serverItself,
  requestId: "test",
  now: () => api.clock.now,
  delivery: means,
  ...over,
});
export const doTask = (ctx: Ctx, task: keyof typeof tasks, about: { id?: string; farmId?: string }) =>
  tasks[task](ctx, about, async () => {});

let seq = 10_000;
export const CAUTION =
  "Never burn anything under a cover: people have died of the fumes; open <both> ends first.";

/** Issues an advice with just these words and hours, and everything that follows from issuing. */
export async function issueThis(
  api: Api,
  {
    rule = "irrigate",
    code = "water-now",
    decision = "Water valve 1 for 40 minutes.",
    actBy = null as string | null,
    window = { from: "2026-05-10", to: "2026-05-12" } as { from: string | null; to: string | null },
    farmId = api.farm.id,
  } = {},
): Promise<string> {
  const id = randomUUID();
  const caution = { id: "fumes", version: 1, severity: "danger", text: { en: CAUTION } };
  const answer = {
    kind: "advice",
    rule: { id: rule, version: 1 },
    subject: { kind: "valve", id: farmId },
    decision: { code, text: { key: "x", params: {} } },
    window,
    stakes: { harm: 0.2, reason: { key: "x", params: {} }, actBy },
    cautions: [caution],
  } as never;
  const said = {
    language: "en",
    units: "metric",
    decision,
    steps: ["Open valve 1.", "Close it after 40 minutes; look at the soil."],
    window: null,
    reason: null,
    cautions: [{ ...caution, text: CAUTION }],
    limits: [],
    wouldChange: [],
    cases: [],
    missing: [],
    problems: [],
  };
  const issuedAt = api.clock.now.toISOString();
  await asOffice(api.db, api.office.id, async (tx) => {
    await tellOfIssued(tx, ctxOf(api), { id, farmId, answer, issuedAt });
    await tx.insert(advisories).values({
      officeId: api.office.id,
      id,
      farmId,
      ruleId: rule,
      ruleVersion: 1,
      subjectKind: "valve",
      subjectId: farmId,
      stateSha256: "a".repeat(64),
      answer,
      rendered: { en: said, salt: "00" },
      issuedBy: api.agent.id,
      issuedAt,
      ledgerSeq: seq++,
    });
  });
  return id;
}

export interface Heard {
  path: string;
  headers: Record<string, string | string[] | undefined>;
  body: Buffer;
}

/** Somebody outside: hears what is posted, and answers as told. */
export async function listener() {
  const heard: Heard[] = [];
  const answer = { status: 201, headers: {} as Record<string, string> };
  const server = createServer((request, response) => {
    const chunks: Buffer[] = [];
    request.on("data", (chunk: Buffer) => chunks.push(chunk));
    request.on("end", () => {
      heard.push({ path: request.url ?? "", headers: request.headers, body: Buffer.concat(chunks) });
      response.writeHead(answer.status, answer.headers).end("ok");
    });
  });
  await new Promise<void>((ready) => server.listen(0, "127.0.0.1", ready));
  const url = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  return { heard, answer, url, close: () => new Promise((done) => server.close(done)) };
}

/** A browser's own half of web push. */
export function newBrowser() {
  const ecdh = createECDH("prime256v1");
  const p256dh = ecdh.generateKeys("base64url");
  const auth = randomBytes(16);
  return { ecdh, auth, keys: { p256dh, auth: auth.toString("base64url") } };
}
