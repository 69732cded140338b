/** A short form of plain lines, as the ways in and the account use it. */

export interface Line {
  name: string;
  label: string;
  type: "email" | "password" | "text" | "code" | "flag";
  autoComplete?: string;
  hint?: string;
  value?: string;
}

export interface LineState {
  attempt: number;
  /** Why it was refused. */
  message: string | null;
  /** What was done. */
  done: string | null;
  /** What was typed, where it may stand there again. */
  kept: Record<string, string>;
}

export const untried: LineState = { attempt: 0, message: null, done: null, kept: {} };
