"use server";

import { type Column, type Import, importRoutes } from "@pith/contract";
import { redirect } from "next/navigation";
import { attempt } from "../../server/api.ts";
import { agentSeat } from "../../server/seat.ts";
import { problemWords } from "../forms/words.ts";

/** What the import desk sends: the file's text and what was said about it. */
export interface ImportRequest {
  kind: Import["kind"];
  fileName: string;
  csv: string;
  siteId?: string;
  bedId?: string;
  issuedAt?: string;
  depthCm?: number;
  labName?: string;
  columns?: Column[];
}

export type Previewed =
  | { done: true; preview: Import }
  | { done: false; message: string | null; problems: Record<string, string> };

/** Reads a file and shows what would be stored. Nothing is stored yet. */
export async function preview(farmId: string, request: ImportRequest): Promise<Previewed> {
  const { officeId } = await agentSeat();
  const read = await attempt((client) =>
    client.call(importRoutes.previewImport, { params: { officeId, farmId }, json: request }),
  );
  if (read.done) return { done: true, preview: read.value };
  const { errors = [], title, detail } = read.problem;
  const problems = Object.fromEntries(errors.map(({ field, message }) => [field, message]));
  if (title === "unreachable") return { done: false, message: (await problemWords()).unreachable, problems };
  return { done: false, message: errors.length > 0 ? null : (detail ?? title), problems };
}

/** Stores the accepted rows, all or none. */
export async function save(farmId: string, importId: string): Promise<{ message: string }> {
  const { officeId } = await agentSeat();
  const saved = await attempt((client) =>
    client.call(importRoutes.saveImport, { params: { officeId, farmId, importId } }),
  );
  if (saved.done) redirect(`/farms/${farmId}/imports/${importId}?saved=import`);
  const { title, detail } = saved.problem;
  return { message: title === "unreachable" ? (await problemWords()).unreachable : (detail ?? title) };
}

/** Puts a preview away; nothing of it is stored. */
export async function discard(farmId: string, importId: string): Promise<void> {
  const { officeId } = await agentSeat();
  await attempt((client) =>
    client.call(importRoutes.discardImport, { params: { officeId, farmId, importId } }),
  );
  redirect(`/farms/${farmId}?saved=discarded#imports`);
}
