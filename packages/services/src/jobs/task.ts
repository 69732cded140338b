import type { Ctx } from "../context.ts";
import type { About } from "./wantJob.ts";

/** Says how far a job is. */
export type Report = (done: number, total: number) => Promise<void>;

/** Done for the office by the server itself, at least once: doing it again must change nothing more. */
export type Task = (ctx: Ctx, about: About, report: Report) => Promise<void>;
