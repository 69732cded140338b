import { sql } from "drizzle-orm";
import { boolean, integer, pgSchema, text, timestamp, uuid } from "drizzle-orm/pg-core";

/**
 * Tables of the sign-in library, in a schema and under a role of their own. No tenant policies: a session is read
 * before the tenant is known. Its adapter wants `Date`s and these names.
 */
const auth = pgSchema("auth");

const id = () => uuid("id").notNull().primaryKey().default(sql`gen_random_uuid()`);
const at = (name: string) => timestamp(name, { withTimezone: true, mode: "date" });
const times = () => ({
  createdAt: at("created_at").notNull().defaultNow(),
  updatedAt: at("updated_at").notNull().defaultNow(),
});

const user = auth.table("user", {
  id: id(),
  name: text("name").notNull(),
  email: text("email").notNull(),
  emailVerified: boolean("email_verified").notNull().default(false),
  image: text("image"),
  twoFactorEnabled: boolean("two_factor_enabled").notNull().default(false),
  ...times(),
});

const session = auth.table("session", {
  id: id(),
  userId: uuid("user_id").notNull(),
  token: text("token").notNull(),
  expiresAt: at("expires_at").notNull(),
  ipAddress: text("ip_address"),
  userAgent: text("user_agent"),
  ...times(),
});

const account = auth.table("account", {
  id: id(),
  userId: uuid("user_id").notNull(),
  accountId: text("account_id").notNull(),
  providerId: text("provider_id").notNull(),
  accessToken: text("access_token"),
  refreshToken: text("refresh_token"),
  idToken: text("id_token"),
  accessTokenExpiresAt: at("access_token_expires_at"),
  refreshTokenExpiresAt: at("refresh_token_expires_at"),
  scope: text("scope"),
  password: text("password"),
  ...times(),
});

const verification = auth.table("verification", {
  id: id(),
  identifier: text("identifier").notNull(),
  value: text("value").notNull(),
  expiresAt: at("expires_at").notNull(),
  ...times(),
});

const twoFactor = auth.table("two_factor", {
  id: id(),
  userId: uuid("user_id").notNull(),
  secret: text("secret").notNull(),
  backupCodes: text("backup_codes").notNull(),
  verified: boolean("verified").notNull().default(true),
  failedVerificationCount: integer("failed_verification_count").notNull().default(0),
  lockedUntil: at("locked_until"),
});

/** Ours, beside the library's: how often somebody tried something. */
const attempts = auth.table("attempts", {
  key: text("key").notNull().primaryKey(),
  count: integer("count").notNull(),
  endsAt: at("ends_at").notNull(),
});

export const authTables = { user, session, account, verification, twoFactor, attempts };
