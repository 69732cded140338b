const MINUTE = 60_000;
/** Time for an agent to reach the farm and for the farm to act (common practice). */
const LEAD_MS = 120 * MINUTE;
/** Time to read what has just been issued, where its hour is near already (common practice). */
const TO_READ_MS = 30 * MINUTE;

/** From when on a warning that nobody has read is a call to make: two hours before its hour, but not before it could be read. */
export function callFrom(issuedAt: string, actBy: string): string {
  const [issued, hour] = [Date.parse(issuedAt), Date.parse(actBy)];
  return new Date(Math.max(hour - LEAD_MS, Math.min(issued + TO_READ_MS, hour), issued)).toISOString();
}
