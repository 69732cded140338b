import { type AuthDb, authTables } from "@pith/db";
import { eq } from "drizzle-orm";

/** What the sign-in library holds of a person, which belongs to no office. */
export interface SignIns {
  /** The address that a person signs in with; none where nobody signs in under this id. */
  emailOf(userId: string): Promise<string | null>;
  /** Account, sessions and second step. Doing it again changes nothing. */
  remove(userId: string): Promise<void>;
}

export function signInsIn({ drizzle }: AuthDb): SignIns {
  const { user } = authTables;
  return {
    emailOf: async (userId) => {
      const [row] = await drizzle.select({ email: user.email }).from(user).where(eq(user.id, userId));
      return row?.email ?? null;
    },
    remove: async (userId) => {
      await drizzle.delete(user).where(eq(user.id, userId));
    },
  };
}
