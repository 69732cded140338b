import { authTables, openAuthDatabase } from "@pith/db";
import { betterAuth } from "better-auth";
import { drizzleAdapter } from "better-auth/adapters/drizzle";
import postgres from "postgres";
import { afterAll, beforeAll, expect, test } from "vitest";
import { freshDatabase, type TestDatabase } from "../support/database.ts";

/** The sign-in library works on the tables that the migrations made for it, as its own role. */

let database: TestDatabase;
beforeAll(async () => {
  database = await freshDatabase();
});
afterAll(() => database.drop());

test("sign up, sign in, read the session, sign out", async () => {
  const authDb = openAuthDatabase(database.authUrl, { max: 2 });
  const auth = betterAuth({
    database: drizzleAdapter(authDb.drizzle, { provider: "pg", schema: authTables }),
    secret: "a secret of this test and no other",
    baseURL: "http://127.0.0.1",
    emailAndPassword: { enabled: true },
    advanced: { database: { generateId: "uuid" } },
    telemetry: { enabled: false },
  });
  const person = { email: "agent@example.org", password: "long enough for this" };
  const { user } = await auth.api.signUpEmail({ body: { ...person, name: "Agent" } });
  const signedIn = await auth.api.signInEmail({ body: person, returnHeaders: true });
  const cookie = signedIn.headers.getSetCookie().map((line) => line.split(";")[0]);
  const headers = new Headers({ cookie: cookie.join("; ") });
  const session = await auth.api.getSession({ headers });
  expect(session?.user).toMatchObject({
    id: user.id,
    email: person.email,
    name: "Agent",
    emailVerified: false,
  });

  const owner = postgres(database.adminUrl, { max: 1 });
  const stored = await owner`
    select s.expires_at > now() + interval '6 days' as lasts, a.provider_id, a.password not like ${`%${person.password}%`} as hashed
    from auth.session s join auth.account a using (user_id) where s.id = ${session?.session.id ?? ""}`;
  expect(stored.map((row) => ({ ...row }))).toEqual([
    { lasts: true, provider_id: "credential", hashed: true },
  ]);

  await auth.api.signOut({ headers });
  expect(await auth.api.getSession({ headers })).toBeNull();
  await owner.end();
  await authDb.close();
});
