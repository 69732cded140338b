import type { Issuing } from "./issuing.ts";

/** On whose word it goes out: an agent's, two agents', or nobody's but a standing order's. */
export interface Authority {
  /** The agent under whose name; null where a standing order issues. */
  agentId: string | null;
  confirmedBy: string | null;
  standingOrder: Issuing["standingOrder"];
  /** The agent's own words, kept already. */
  note: { id: string; sha256: string } | null;
}
