import { SourceFailure } from "./source.ts";

/** Bounds of one question to a service. */
export interface Bounds {
  timeoutMs: number;
  maxBytes: number;
}

/**
 * One GET whose time and size are bounded, whichever runtime it is. Redirects are not followed: a service that moved is
 * looked at by a person first.
 *
 * @param name how the service is called in a sentence
 * @throws SourceFailure where it cannot be reached, is too slow, or breaks off
 */
export async function getBounded(
  url: string,
  headers: Record<string, string>,
  name: string,
  bounds: Bounds,
): Promise<{ response: Response; text: string }> {
  const signal = AbortSignal.timeout(bounds.timeoutMs);
  const slow = `${name} did not answer within ${bounds.timeoutMs / 1000} s.`;
  let response: Response;
  try {
    response = await fetch(url, { headers, redirect: "manual", signal });
  } catch {
    throw new SourceFailure(signal.aborted ? slow : `${name} cannot be reached.`);
  }
  try {
    return { response, text: await readBounded(response, name, bounds.maxBytes) };
  } catch (error) {
    if (error instanceof SourceFailure) throw error;
    throw new SourceFailure(signal.aborted ? slow : `${name} broke off in the middle of its answer.`);
  }
}

async function readBounded(response: Response, name: string, maxBytes: number): Promise<string> {
  if (!response.body) return "";
  const decoder = new TextDecoder();
  const reader = response.body.getReader();
  let text = "";
  let bytes = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) return text + decoder.decode();
    bytes += value.byteLength;
    if (bytes > maxBytes) {
      await reader.cancel();
      throw new SourceFailure(`${name} sent more than ${maxBytes / 1_000_000} MB.`);
    }
    text += decoder.decode(value, { stream: true });
  }
}
