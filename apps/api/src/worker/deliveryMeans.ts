import type { DeliveryMeans } from "@pith/services";
import { guardedPost, httpTexts, recordingTexts, webPush } from "@pith/services/outwards";
import { z } from "zod";

/** What a deployment says about reaching people: the API on Node and the worker alone read it alike. */
export const deliverySettings = {
  DASHBOARD_ORIGIN: z.url().default("http://localhost:3000"),
  /** This installation's own key for web push (RFC 8292), and how its push services reach whoever runs it. */
  VAPID_PUBLIC_KEY: z.string().min(80).optional(),
  VAPID_PRIVATE_KEY: z.string().min(40).optional(),
  VAPID_SUBJECT: z
    .string()
    .regex(/^(mailto:|https:\/\/)/, "must begin with mailto: or https://")
    .default("mailto:pith@localhost"),
  /** 32 random bytes in base64url that webhooks' secrets are sealed with. */
  PITH_SEAL_KEY: z
    .string()
    .regex(/^[A-Za-z0-9_-]{43}$/, "must be 32 bytes in base64url")
    .optional(),
  /** The service that sends text messages, and what it knows this installation by. */
  TEXT_URL: z.url({ protocol: /^https?$/ }).optional(),
  TEXT_TOKEN: z.string().min(1).optional(),
  /** Without one, where text messages are written down instead of being sent: for a try. */
  PITH_TEXTS_FILE: z.string().optional(),
  /** A lead's webhooks may go to this very machine: for a try, never for a deployment. */
  PITH_LOCAL_HOOKS: z.enum(["yes", "no"]).default("no"),
};

type Settings = z.infer<z.ZodObject<typeof deliverySettings>>;

function textsOf({ TEXT_URL: url, TEXT_TOKEN: token, PITH_TEXTS_FILE: file }: Settings) {
  if (url) return { text: httpTexts({ url, token }) };
  return file ? { text: recordingTexts(file) } : {};
}

export function deliveryMeansOf(
  said: Settings & { SMTP_URL?: string | undefined; PITH_MAIL_FOLDER?: string | undefined },
): DeliveryMeans {
  const localHooks = said.PITH_LOCAL_HOOKS === "yes";
  const { VAPID_PUBLIC_KEY: publicKey, VAPID_PRIVATE_KEY: privateKey, VAPID_SUBJECT: subject } = said;
  return {
    dashboardUrl: said.DASHBOARD_ORIGIN.replace(/\/$/, ""),
    mail: said.SMTP_URL !== undefined || said.PITH_MAIL_FOLDER !== undefined,
    ...(publicKey && privateKey && { push: webPush({ publicKey, privateKey, subject }) }),
    ...textsOf(said),
    ...(said.PITH_SEAL_KEY && { sealKey: said.PITH_SEAL_KEY }),
    localHooks,
    post: guardedPost(),
    postHook: guardedPost({ localToo: localHooks }),
  };
}
