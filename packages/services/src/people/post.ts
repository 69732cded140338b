import type { AuthDb } from "@pith/db";
import type { Mail } from "../mail/mail.ts";
import { queueMail } from "../mail/queueMail.ts";

/** How letters that bear a secret leave: laid down beside the accounts, sent by the worker, then gone. */
export interface Post {
  queue: (mail: Mail) => Promise<void>;
  /** Asked before a letter is wanted that goes to whatever address somebody typed in; throws where it is one too many. */
  mayWrite?: (to: string) => Promise<void>;
  /** Where the dashboard answers; links in letters lead there. */
  dashboardUrl: string;
}

export const postOf = (authDb: AuthDb, dashboardUrl: string): Post => ({
  queue: (mail) => queueMail(authDb, mail),
  dashboardUrl,
});

/**
 * A link of a letter. Its token stands behind the `#`, which no browser sends: it is in no server's log and in no
 * referrer, and a mail filter that opens the address does not use it up.
 */
export const linkTo = ({ dashboardUrl }: Pick<Post, "dashboardUrl">, path: string, token: string): string =>
  `${dashboardUrl.replace(/\/$/, "")}${path}#${token}`;
