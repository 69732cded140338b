/** What an installation has to reach people with. What is not set up is not offered to anybody. */
export interface DeliveryMeans {
  /** Where people read: every link that is sent begins with it. */
  dashboardUrl: string;
  /** Whether office mail goes out of this installation. */
  mail: boolean;
  push?: Push;
  text?: TextSender;
  /** 32 bytes in base64url that webhooks' secrets are sealed with; it is never in the database. */
  sealKey?: string;
  /** Webhooks may go to this very machine, over http: for a try, never for a deployment. */
  localHooks?: boolean;
  /** One request outwards, to public addresses alone. Only where the worker runs. */
  post?: CallOut;
  /** The same for a lead's webhooks, which may go to this machine where `localHooks` says so. */
  postHook?: CallOut;
}

/** Web push (RFC 8030) under this installation's own key (RFC 8292). */
export interface Push {
  publicKey: string;
  /** The sealed request for one browser (RFC 8291). Only where the worker runs. */
  sealed?: (to: PushAddress, words: string, options: { urgent: boolean; aliveS: number }) => Letter;
}

interface PushAddress {
  endpoint: string;
  p256dh: string;
  auth: string;
}

export interface Letter {
  url: string;
  headers: Record<string, string>;
  body: Uint8Array | string;
}

/** A service that sends text messages. Whoever runs an installation has theirs; there is none of ours. */
export interface TextSender {
  send(to: string, text: string): Promise<void>;
}

export type Called =
  | { status: number; tookMs: number }
  /** In our words; nothing came back that could be read. */
  | { status: null; outcome: string; tookMs: number };

export type CallOut = (letter: Letter) => Promise<Called>;
