import type { TextSender } from "./means.ts";

const TIMEOUT_MS = 10_000;

/**
 * Hands each message to a service of whoever runs this installation: one POST of `{ "to", "text" }` in JSON, taken where
 * the answer is 2xx. Its words are not read, and no redirect is followed, which could lead the token elsewhere.
 */
export const httpTexts = ({ url, token }: { url: string; token?: string | undefined }): TextSender => ({
  async send(to, text) {
    const answer = await fetch(url, {
      method: "POST",
      redirect: "error",
      headers: {
        "content-type": "application/json",
        ...(token !== undefined && { authorization: `Bearer ${token}` }),
      },
      body: JSON.stringify({ to, text }),
      signal: AbortSignal.timeout(TIMEOUT_MS),
    });
    await answer.body?.cancel();
    if (!answer.ok) throw new Error(`the text service answered ${answer.status}`);
  },
});
