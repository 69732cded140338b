import type { Import, ImportLine } from "@pith/contract";

export type Progress = Extract<ImportLine, { phase: string }>;

/** How long work ended: with the import, with a refusal, because it was stopped, or with nobody signed in. */
export type Ended =
  | { how: "done"; value: Import }
  | { how: "refused"; message: string | null; problems: Record<string, string> }
  | { how: "stopped" }
  | { how: "unreachable" }
  | { how: "signed-out" };

/** Asks for long work line by line and says each line of progress. Aborting the signal stops the work itself. */
export async function longWork(
  address: string,
  body: object | undefined,
  signal: AbortSignal,
  onProgress: (progress: Progress) => void,
): Promise<Ended> {
  try {
    const answer = await fetch(address, {
      method: "POST",
      headers: {
        accept: "application/x-ndjson, application/problem+json",
        ...(body && { "content-type": "application/json" }),
      },
      body: body && JSON.stringify(body),
      signal,
      redirect: "manual",
    });
    if (answer.type === "opaqueredirect") return { how: "signed-out" };
    if (!answer.ok || !answer.body) {
      const problem = (await answer.json().catch(() => null)) as Problem | null;
      return problem ? refusal(problem) : { how: "unreachable" };
    }
    for await (const line of linesIn(answer.body)) {
      if ("phase" in line) onProgress(line);
      else if ("result" in line) return { how: "done", value: line.result };
      else return refusal(line.problem);
    }
    return { how: "unreachable" };
  } catch {
    return { how: signal.aborted ? "stopped" : "unreachable" };
  }
}

type Problem = Extract<ImportLine, { problem: unknown }>["problem"];

function refusal({ errors = [], detail, title }: Problem): Ended {
  const problems = Object.fromEntries(errors.map(({ field, message }) => [field, message]));
  return { how: "refused", message: errors.length > 0 ? null : (detail ?? title), problems };
}

async function* linesIn(body: ReadableStream<Uint8Array>): AsyncGenerator<ImportLine> {
  const reader = body.getReader();
  const decoder = new TextDecoder();
  let rest = "";
  for (;;) {
    const { done, value } = await reader.read();
    const lines = (rest + decoder.decode(value, { stream: !done })).split("\n");
    rest = lines.pop() ?? "";
    for (const line of lines) if (line !== "") yield JSON.parse(line) as ImportLine;
    if (done) return;
  }
}
