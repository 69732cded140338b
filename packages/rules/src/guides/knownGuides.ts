import { z } from "zod";
import { type Guide, GuideSchema } from "./schema.ts";

/** The offices' guides met last, by id: the same few come with every state of a round. */
const kept = new Map<string, Guide>();
const MOST_GUIDES = 64;

/** A guide as it is known already, if it is the same in every part, else looked over and kept. */
export const KnownGuideSchema = z.custom<Guide>().transform((raw: unknown, context): Guide => {
  const id = isRecord(raw) && typeof raw.id === "string" ? raw.id : undefined;
  const known = id === undefined ? undefined : kept.get(id);
  if (known && isSame(raw, known)) return known;
  const parsed = GuideSchema.safeParse(raw);
  if (parsed.success) return keep(parsed.data);
  for (const issue of parsed.error.issues) context.addIssue({ ...issue });
  return z.NEVER;
});

function keep(guide: Guide): Guide {
  kept.delete(guide.id);
  const [oldest] = kept.keys();
  if (kept.size >= MOST_GUIDES && oldest !== undefined) kept.delete(oldest);
  kept.set(guide.id, guide);
  return guide;
}

const isRecord = (raw: unknown): raw is Record<string, unknown> => typeof raw === "object" && raw !== null;

/** Equal part by part; NaN, which equals nothing, is never taken for a bound. */
function isSame(raw: unknown, known: unknown): boolean {
  if (!isRecord(raw) || !isRecord(known)) return raw === known;
  if (Array.isArray(raw) !== Array.isArray(known)) return false;
  const names = Object.keys(known);
  if (Object.keys(raw).length !== names.length) return false;
  for (const name of names) if (!isSame(raw[name], known[name])) return false;
  return true;
}
