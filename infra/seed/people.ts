import { createHmac, randomUUID } from "node:crypto";
import { authTables, type Db, memberships, offices, openAuthDatabase, withOffice } from "@pith/db";
import { hashPassword } from "better-auth/crypto";
import { eq } from "drizzle-orm";

/** A demo person's way in. */
export interface SignIn {
  email: string;
  password: string;
}

/** A password that this installation alone knows, the same at each start: made from its own secret. */
export const passwordFor = (email: string, secret: string): string =>
  createHmac("sha256", secret)
    .update(`demo ${email}`)
    .digest("hex")
    .slice(0, 16)
    .replace(/(.{4})(?=.)/g, "$1-");

/** Whether a database belongs to the demo: nobody is in it yet, or the demo's agent is. */
export async function isForDemo(authUrl: string, agentEmail: string): Promise<boolean> {
  const { drizzle, close } = openAuthDatabase(authUrl, { max: 1 });
  try {
    const { user } = authTables;
    const anybody = await drizzle.select({ id: user.id }).from(user).limit(1);
    const agent = await drizzle.select({ id: user.id }).from(user).where(eq(user.email, agentEmail));
    return anybody.length === 0 || agent.length > 0;
  } finally {
    await close();
  }
}

/** The person's id; added with the password if nobody has that address. */
export async function ensurePerson(authUrl: string, person: SignIn & { name: string }): Promise<string> {
  const { drizzle, close } = openAuthDatabase(authUrl, { max: 1 });
  try {
    const { user, account } = authTables;
    const [known] = await drizzle.select({ id: user.id }).from(user).where(eq(user.email, person.email));
    if (known) return known.id;
    const id = randomUUID();
    const password = await hashPassword(person.password);
    await drizzle.transaction(async (tx) => {
      await tx.insert(user).values({ id, name: person.name, email: person.email, emailVerified: true });
      await tx
        .insert(account)
        .values({ id: randomUUID(), userId: id, accountId: id, providerId: "credential", password });
    });
    return id;
  } finally {
    await close();
  }
}

/** An office with its first agent, who leads it. */
export async function addOffice(
  db: Db,
  officeId: string,
  agent: { id: string; name: string; email: string },
): Promise<void> {
  await withOffice(db, { officeId, role: "lead", farmIds: "*", userId: agent.id }, async (tx) => {
    await tx
      .insert(offices)
      .values({ id: officeId, name: "Office of Aldertarn County", county: "Aldertarn" });
    const { id: userId, name, email } = agent;
    await tx.insert(memberships).values({ officeId, userId, role: "lead", name, email });
  });
}

/** A farmer of one farm. */
export async function addFarmer(
  db: Db,
  place: { officeId: string; farmId: string; agentId: string },
  farmer: { id: string; name: string; email: string },
): Promise<void> {
  const { officeId, farmId, agentId } = place;
  await withOffice(db, { officeId, role: "agent", farmIds: "*", userId: agentId }, async (tx) => {
    const { id: userId, name, email } = farmer;
    await tx.insert(memberships).values({ officeId, userId, role: "farmer", farmIds: [farmId], name, email });
  });
}
