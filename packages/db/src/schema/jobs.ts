import { sql } from "drizzle-orm";
import { bigint, integer, jsonb, pgSchema, pgTable, text, uuid } from "drizzle-orm/pg-core";
import { instant, instantOrNow, ofOffice } from "./columns.ts";

export interface OfficeTask {
  attempts: number;
  /** The smaller goes first; 0 unless said. */
  priority?: number;
  /** It waits for somebody outside, who may let it wait: an office must not hold up all others with that. */
  oneAtATime?: boolean;
}

/**
 * What an office may want to be done later, and how often it is tried before it is given up. Between tries e to the
 * power of the try in seconds: five tries take a minute and a half, ten three and a half hours.
 */
export const OFFICE_TASKS = {
  /** Every rule over one farm again. */
  "advise-farm": { attempts: 5 },
  /** Every rule over every farm of the office. */
  "advise-office": { attempts: 5 },
  /** The newest forecasts of the sites that are switched on. */
  "pull-forecasts": { attempts: 5 },
  /** Flags and sums of a farm's readings, late ones included. */
  "settle-readings": { attempts: 5 },
  /** Partitions to come, and readings that nobody keeps longer. */
  "keep-readings": { attempts: 5 },
  /** What lapsed unanswered is written down as such. */
  "expire-advice": { attempts: 5 },
  /** Walk the ledger and sign where it stands. */
  "sign-ledger": { attempts: 5 },
  /** All that is due to one person, by every way they want. */
  deliver: { attempts: 12, priority: -10 },
  /** A warning whose hour to be read by has come. */
  "unread-warning": { attempts: 8, priority: -10 },
  /** One attempt to hand a message to one webhook; further ones are wanted each by itself. */
  "send-webhook": { attempts: 8, priority: 10, oneAtATime: true },
} as const satisfies Record<string, OfficeTask>;
export type TaskName = keyof typeof OFFICE_TASKS;

export const RUN_STATUSES = ["waiting", "running", "done", "failed", "overtaken"] as const;

/** What was wanted and what became of it, beside the queue. Of a farm, or of the office. */
export const runs = pgTable("runs", {
  ...ofOffice(),
  /** The queue's own number. */
  jobId: bigint("job_id", { mode: "number" }).notNull(),
  task: text("task").$type<TaskName>().notNull(),
  farmId: uuid("farm_id"),
  aboutId: uuid("about_id"),
  key: text("key").notNull(),
  /** Nobody where the office's own clock wanted it. */
  wantedBy: uuid("wanted_by").default(sql`app_user()`),
  wantedAt: instantOrNow("wanted_at"),
  status: text("status", { enum: RUN_STATUSES }).notNull().default("waiting"),
  attempts: integer("attempts").notNull().default(0),
  /** When it is done, or tried again. */
  dueAt: instant("due_at"),
  startedAt: instant("started_at"),
  endedAt: instant("ended_at"),
  done: integer("done"),
  total: integer("total"),
  /** In words of ours: nothing of a person's and nothing secret. */
  problem: text("problem"),
});

const mails = pgSchema("auth").table("mails", {
  id: uuid("id").notNull().primaryKey().default(sql`gen_random_uuid()`),
  mail: jsonb("mail").$type<Record<string, unknown>>().notNull(),
  queuedAt: instantOrNow("queued_at"),
});

/** Letters that bear a secret and belong to no office. The sign-in library's role lays them down and reads none. */
export const mailTables = { mails };
