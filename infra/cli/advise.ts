import { readFileSync } from "node:fs";
import {
  type Answer,
  advise,
  DomainError,
  type Message,
  type Reader,
  render,
  type UnitSystem,
} from "@pith/rules";

/** `npm run -s advise -- <state.json | -> [--units metric|us]`: every rule's answer for one state, as JSON. */
try {
  const { path, units } = readArguments(process.argv.slice(2));
  const answers = advise(readState(path));
  const reader: Reader = { language: "en", units };
  print({ answers: answers.map((answer) => ({ ...answer, said: saidOf(answer, reader) })) });
} catch (error) {
  if (!(error instanceof DomainError)) throw error;
  print({
    type: "about:blank",
    title: "The state cannot be read",
    status: 422,
    detail: error.message,
    errors: error.problems,
  });
  process.exitCode = 2;
}

function readArguments(args: string[]): { path: string; units: UnitSystem } {
  const at = args.indexOf("--units");
  const units = at < 0 ? "metric" : args[at + 1];
  if (units !== "metric" && units !== "us") {
    throw new DomainError([
      { field: "--units", message: "must be metric or us", accepted: "metric, us", received: units },
    ]);
  }
  const rest = at < 0 ? args : args.filter((_, i) => i !== at && i !== at + 1);
  const path = rest[0];
  if (rest.length !== 1 || path === undefined) {
    throw new DomainError([
      {
        field: "file",
        message: "exactly one state file is read, or - for standard input",
        accepted: "a path, or -",
      },
    ]);
  }
  return { path, units };
}

function readState(path: string): unknown {
  let text: string;
  try {
    text = readFileSync(path === "-" ? 0 : path, "utf8");
  } catch {
    throw new DomainError([
      { field: "file", message: "cannot be read", accepted: "a readable file, or -", received: path },
    ]);
  }
  try {
    return JSON.parse(text);
  } catch (error) {
    const message = error instanceof Error ? error.message : "is not JSON";
    throw new DomainError([{ field: "", message, accepted: "a JSON document" }]);
  }
}

/** The words of an answer, as its reader would see them. */
function saidOf(answer: Answer, reader: Reader) {
  const words = (message: Message) => render(message, reader);
  switch (answer.kind) {
    case "advice":
      return {
        decision: words(answer.decision.text),
        steps: answer.steps.map((step) => words(step.text)),
        endsBy: words(answer.window.endsBy),
        because: words(answer.stakes.reason),
        limits: answer.limits.map(words),
        cautions: answer.cautions.map((caution) => caution.text[reader.language]),
        wouldChange: answer.wouldChange.map(words),
        cases: answer.cases.map((c) => ({
          when: words(c.when),
          decision: words(c.decision),
          steps: c.steps.map((step) => words(step.text)),
        })),
      };
    case "needs-more":
      return {
        missing: answer.missing.map((m) => ({ measure: words(m.measure), couldMove: words(m.couldMove) })),
      };
    case "does-not-apply":
      return { reason: words(answer.reason) };
    case "refused":
      return { problems: answer.problems.map((p) => `${p.field}: ${p.message}`) };
  }
}

function print(value: unknown): void {
  process.stdout.write(`${JSON.stringify(value, null, 2)}\n`);
}
