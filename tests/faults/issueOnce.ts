import { openDatabase } from "@pith/db";
import { type Ctx, issueDraft } from "@pith/services";

/** A process of its own that issues one draft, so that it can be killed in the middle. */
const [url, json] = process.argv.slice(2);
if (!url || !json) throw new Error("usage: issueOnce <url> <json>");
const { officeId, actor, draftId, stateSha256, now } = JSON.parse(json) as Pick<Ctx, "officeId" | "actor"> & {
  draftId: string;
  stateSha256: string;
  now: string;
};
const db = openDatabase(url, { max: 1 });
const ctx: Ctx = { db, officeId, actor, requestId: "fault", now: () => new Date(now) };
await issueDraft(ctx, draftId, { stateSha256, note: "said once" });
await db.close();
