import { text as whole } from "node:stream/consumers";
import PostalMime from "postal-mime";
import { SMTPServer } from "smtp-server";
import { afterAll, beforeAll, expect, test } from "vitest";
import { openMail } from "../../apps/api/src/worker/openMail.ts";
import { startWorker } from "../../apps/api/src/worker/startWorker.ts";
import { cookiesOf, hasSession, PASSWORD, post, signIn } from "./peopleSupport.ts";
import { type Api, startApi } from "./support.ts";

/** From an invitation to a sign-in, by letters that really went through a mail server. */

let api: Api;
let server: SMTPServer;
let worker: ReturnType<typeof startWorker>;
const log: Record<string, unknown>[] = [];
const got: { to: string; subject: string; link: string }[] = [];
beforeAll(async () => {
  api = await startApi();
  server = new SMTPServer({
    authOptional: true,
    disabledCommands: ["STARTTLS"],
    onData(stream, { envelope }, done) {
      const read = async () => {
        const { subject = "", text = "" } = await PostalMime.parse(await whole(stream));
        const to = envelope.rcptTo[0]?.address ?? "";
        got.push({ to, subject, link: /^http\S+$/m.exec(text)?.[0] ?? "" });
      };
      read().then(() => done(), done);
    },
  });
  await new Promise<void>((ready) => server.listen(0, "127.0.0.1", ready));
  const address = server.server.address();
  const port = typeof address === "object" && address ? address.port : 0;
  worker = startWorker({
    jobsUrl: api.database.jobsUrl,
    deps: { db: api.db, now: () => api.clock.now },
    mail: openMail({
      SMTP_URL: `smtp://127.0.0.1:${port}`,
      PITH_MAIL_FROM: "Pith <advice@aldertarn.example>",
      PITH_MAIL_FOLDER: undefined,
    }),
    pullFor: [],
    log: (line) => log.push(line),
  });
});
afterAll(async () => {
  await worker?.stop();
  await new Promise<void>((done) => server?.close(() => done()));
  await api?.close();
});

const letterTo = async (to: string, page: string) => {
  const its = () =>
    got.find((letter) => letter.to === to && letter.link.startsWith(`${api.dashboard}${page}#`));
  await expect.poll(its, { interval: 20, timeout: 20_000 }).toBeDefined();
  const { subject, link } = its() ?? { subject: "", link: "" };
  return { subject, token: link.split("#")[1] ?? "" };
};

test("an invitation, a link and a new password arrive, work, and leave nothing behind", async () => {
  const email = "wren@aldertarn.example";
  await api
    .as(api.agent)
    .post(`/v1/offices/${api.office.id}/invitations`, {
      email,
      name: "Wren",
      role: "farmer",
      farmIds: [api.farm.id],
    })
    .expect(201);
  const invitation = await letterTo(email, "/join");
  expect(invitation.subject).toBe(
    "Office of Aldertarn County asks you in / Office of Aldertarn County lo invita",
  );
  const joined = { token: invitation.token, name: "Wren Fellgate", password: PASSWORD };
  await post(api, "/v1/invitations/accept", joined).expect(200);

  await post(api, "/v1/auth/sign-in/link", { email }).expect(200);
  const { token } = await letterTo(email, "/sign-in/link");
  const inside = await post(api, "/v1/auth/sign-in/link/use", { token }).expect(200);
  expect(hasSession(inside)).toBe(true);
  const me = await api
    .as({ id: "", name: "", email, cookie: cookiesOf(inside) })
    .get("/v1/me")
    .expect(200);
  expect(me.body.memberships).toMatchObject([{ role: "farmer", farmIds: [api.farm.id] }]);

  await post(api, "/v1/auth/password/forgotten", { email }).expect(200);
  const reset = await letterTo(email, "/sign-in/new-password");
  const newPassword = "an entirely new password";
  await post(api, "/v1/auth/password/reset", { token: reset.token, newPassword }).expect(200);
  await signIn(api, email, newPassword).expect(200);

  await expect
    .poll(async () => (await api.admin`select id from auth.mails`).length, { timeout: 10_000 })
    .toBe(0);
  for (const secret of [invitation.token, token, reset.token, email]) {
    expect(JSON.stringify([...log, ...api.log])).not.toContain(secret);
  }
});
