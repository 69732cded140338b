import type { ImportLine } from "@pith/contract";
import type { Api, Person } from "./support.ts";

/** An answer asked for line by line, read as it comes. */
export async function* linesOf(
  api: Api,
  who: Person,
  path: string,
  body?: object,
  signal?: AbortSignal,
): AsyncGenerator<ImportLine> {
  const response = await fetch(`${api.origin}${path}`, {
    method: "POST",
    headers: {
      accept: "application/x-ndjson",
      cookie: who.cookie,
      ...(body && { "content-type": "application/json" }),
    },
    body: body && JSON.stringify(body),
    signal,
  });
  if (!response.ok || !response.body) throw new Error(`${response.status}: ${await response.text()}`);
  const type = response.headers.get("content-type");
  if (!type?.startsWith("application/x-ndjson")) throw new Error(`came as ${type}`);
  let rest = "";
  const decoder = new TextDecoder();
  const reader = response.body.getReader();
  for (;;) {
    const { done, value } = await reader.read();
    if (done) return;
    const lines = (rest + decoder.decode(value, { stream: true })).split("\n");
    rest = lines.pop() ?? "";
    for (const line of lines) yield JSON.parse(line) as ImportLine;
  }
}

/** All of them, told apart. */
export async function allLines(...of: Parameters<typeof linesOf>) {
  const lines: ImportLine[] = [];
  for await (const line of linesOf(...of)) lines.push(line);
  const last = lines.at(-1);
  return {
    progress: lines.filter((l) => "phase" in l),
    result: last && "result" in last ? last.result : undefined,
    problem: last && "problem" in last ? last.problem : undefined,
  };
}
