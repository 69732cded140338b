/** Where a number or an equation comes from. `key` is an id of the evidence register. */
export interface SourceRef {
  key: string;
  /** Equation, table, page or row. */
  locator?: string;
}

/** One step of a calculation, as a reader would check it with a pencil. */
export interface WorkingLine {
  /** As in the source: `Ra`, `Dr`, `Ks`. */
  symbol: string;
  meaning: string;
  /** The equation in the source's symbols, and where it helps the numbers put in. */
  expression: string;
  value: number | string | boolean | null;
  unit: string;
  source: SourceRef | null;
}

/** An input that was not measured, and how its value was found. */
export interface Estimated {
  input: string;
  how: string;
  source?: SourceRef;
}

/** Collects the lines of a calculation while it runs. */
export class Working {
  readonly lines: WorkingLine[] = [];
  readonly estimated: Estimated[] = [];

  /** Writes one line down and hands its value back, so that it can stand inside an expression. */
  line<T extends number | string | boolean | null>(
    symbol: string,
    meaning: string,
    expression: string,
    value: T,
    unit: string,
    source: SourceRef | null = null,
  ): T {
    this.lines.push({ symbol, meaning, expression, value, unit, source });
    return value;
  }

  /** Says that an input had to be estimated; an input is listed once. */
  estimate(input: string, how: string, source?: SourceRef): void {
    if (this.estimated.some((e) => e.input === input)) return;
    this.estimated.push(source ? { input, how, source } : { input, how });
  }

  /** Takes over the lines of a part of the calculation. */
  include(part: Working | { working: WorkingLine[]; estimated: Estimated[] }): void {
    const lines = part instanceof Working ? part.lines : part.working;
    this.lines.push(...lines);
    for (const e of part.estimated) this.estimate(e.input, e.how, e.source);
  }
}
