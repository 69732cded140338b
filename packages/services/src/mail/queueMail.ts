import { type AuthDb, mailTables } from "@pith/db";
import { type Mail, MailSchema } from "./mail.ts";

/**
 * Lays down a letter that bears a secret and belongs to no office: a link to sign in, an invitation. It is sent soon, and
 * tried again for sixteen hours; then it is gone. What an office sends is written when it is sent, from ids, by a job.
 */
export async function queueMail(authDb: Pick<AuthDb, "drizzle">, mail: Mail): Promise<void> {
  await authDb.drizzle.insert(mailTables.mails).values({ mail: MailSchema.parse(mail) });
}
