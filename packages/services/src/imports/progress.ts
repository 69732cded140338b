import type { ImportLine } from "@pith/contract";

export type Progress = Extract<ImportLine, { phase: string }>;

/** Somebody who watches a long piece of work and may stop it. */
export interface Watch {
  report(progress: Progress): Promise<void>;
  signal: AbortSignal;
}

/** Nobody stays to see the end: the work stops where it is, and its transaction is taken back. */
export class Stopped extends Error {
  constructor() {
    super("stopped by whoever asked for it");
    this.name = "Stopped";
  }
}

/** Says how far it is, lets other work of the server have its turn, and goes no further once nobody watches. */
export async function step(watch: Watch | undefined, progress: Progress): Promise<void> {
  if (!watch) return;
  await watch.report(progress);
  await new Promise((later) => setTimeout(later, 0));
  if (watch.signal.aborted) throw new Stopped();
}
