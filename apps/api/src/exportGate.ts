import { HTTPException } from "hono/http-exception";

/** Each export holds a connection for as long as it is read; the pool has ten (common practice). */
const AT_ONCE = 3;

/** Lets one export of an office be written at a time, and few in this process; one too many is refused, not kept waiting. */
export function exportGate() {
  const going = new Set<string>();
  return async (officeId: string, write: () => Promise<void>): Promise<void> => {
    if (going.has(officeId)) {
      throw new HTTPException(429, {
        message: "An export of this office is being written. Wait for it to end.",
      });
    }
    if (going.size >= AT_ONCE) {
      throw new HTTPException(429, {
        message: `${AT_ONCE} exports are being written. Try again in a minute.`,
      });
    }
    going.add(officeId);
    try {
      await write();
    } finally {
      going.delete(officeId);
    }
  };
}
