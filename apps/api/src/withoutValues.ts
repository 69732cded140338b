const PARAMETERS = /^params: [\s\S]*?(?=^ {4}at |(?![\s\S]))/gm;
const ADDRESS = /[^\s"'<>()@,;:=]+@[^\s"'<>()@,;:=]+/g;
/** As PostgreSQL quotes what it could not read, and node what it could not look up or parse. */
const QUOTED =
  /(invalid (?:input|byte|value)[^:\n]*: |is not valid JSON: |Unexpected token[^\n]*?, )"[^"\n]*"/g;

/** What went wrong, for the log, without what it was given: a failed statement quotes names, and a mail server addresses. */
export const withoutValues = (said: string): string =>
  said.replace(PARAMETERS, "").replace(QUOTED, '$1"***"').replace(ADDRESS, "***");

/** An error as the log keeps it, with what lay behind it. */
export function errorForLog(error: unknown): { message: string; stack?: string } {
  if (!(error instanceof Error)) return { message: withoutValues(String(error)) };
  const behind = error.cause instanceof Error ? ` (${error.cause.message})` : "";
  return {
    message: withoutValues(error.message) + withoutValues(behind),
    ...(error.stack && { stack: withoutValues(error.stack) }),
  };
}
