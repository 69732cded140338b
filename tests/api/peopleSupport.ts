import { createHmac } from "node:crypto";
import request from "supertest";
import { expect } from "vitest";
import type { Api } from "./support.ts";

/** What the tests of people share: letters, their links, cookies of an answer, and codes reckoned by hand. */

export const PASSWORD = "a long enough password";

/** The letters that wait to be sent to that address, newest first; of those with a link to that page, where it is said. */
export async function lettersTo(
  api: Api,
  to: string,
  page = "",
): Promise<{ subject: string; text: string }[]> {
  const rows = await api.admin<{ mail: { subject: string; text: string } }[]>`
    select mail from auth.mails where mail ->> 'to' = ${to} order by queued_at desc, id`;
  return rows
    .map((row) => row.mail)
    .filter(({ text }) => page === "" || text.includes(`${api.dashboard}${page}#`));
}

/** The token of the newest such letter's link. It is written after the answer, so that it is waited for. */
export async function tokenTo(api: Api, to: string, page: string, before = 0): Promise<string> {
  const letters = () => lettersTo(api, to, page);
  await expect
    .poll(async () => (await letters()).length, { interval: 20, timeout: 10_000 })
    .toBeGreaterThan(before);
  return /#(\S+)$/m.exec((await letters())[0]?.text ?? "")?.[1] ?? "";
}

/** The cookies an answer leaves a browser with. */
export const cookiesOf = (answer: request.Response): string =>
  ((answer.headers["set-cookie"] ?? []) as unknown as string[])
    .filter((line) => !/max-age=0/i.test(line))
    .map((line) => line.split(";")[0])
    .join("; ");

export const hasSession = (answer: request.Response): boolean =>
  /pith\.session_token=[^;]/.test(cookiesOf(answer));

export const post = (api: Api, path: string, body: object, cookie = "") => {
  const call = request(api.origin).post(path);
  if (cookie) call.set("cookie", cookie);
  return call.send(body);
};

export const signIn = (api: Api, email: string, password = PASSWORD) =>
  post(api, "/v1/auth/sign-in/email", { email, password });

/** RFC 6238 by its own words: HMAC-SHA-1 over the count of half minutes, cut to six digits as RFC 4226 5.3 says. */
export function codeOf(base32: string, at = Date.now()): string {
  const bits = [...base32.replace(/=+$/, "")]
    .map((c) => "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567".indexOf(c).toString(2).padStart(5, "0"))
    .join("");
  const key = Buffer.from((bits.match(/.{8}/g) ?? []).map((byte) => Number.parseInt(byte, 2)));
  const count = Buffer.alloc(8);
  count.writeBigUInt64BE(BigInt(Math.floor(at / 30_000)));
  const mac = createHmac("sha1", key).update(count).digest();
  const offset = (mac.at(-1) ?? 0) & 15;
  return String((mac.readUInt32BE(offset) & 0x7fffffff) % 1_000_000).padStart(6, "0");
}

/** What the audit of an office says of that, oldest first; some of it is written after the answer. */
export async function audited(api: Api, action: string, atLeast = 1) {
  const read = () =>
    api.admin<
      { office_id: string; user_id: string; entity_id: string; detail: Record<string, unknown> }[]
    >`select office_id, user_id, entity_id, detail from audit_log where action = ${action} order by at, ctid`;
  await expect
    .poll(async () => (await read()).length, { interval: 20, timeout: 10_000 })
    .toBeGreaterThanOrEqual(atLeast);
  return read();
}
