import { createRoute, z } from "@hono/zod-openapi";
import { isTimeZone, LANGUAGES } from "@pith/rules";
import { body, DoneSchema, farmPath, Id, Instant, json, officePath, problems } from "../shapes.ts";

/** How a person is told of what was issued, and whom an agent must call because nobody has read it. */

const tags = ["delivery"];
/** A person's own things in one office: a reader keeps theirs too, though they may change nothing of the office's. */
const mine = "/v1/me/offices/{officeId}" as const;

export const ChannelSchema = z.enum(["mail", "push", "text"]);
export type Channel = z.infer<typeof ChannelSchema>;
const Timing = z.enum(["off", "at-once", "daily"]);
const Clock = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/, "must be a time of the day, e.g. 06:30");

export const WishesSchema = z
  .object({
    mail: Timing,
    push: Timing,
    text: Timing,
    /** With the country's code, e.g. +12185550100. */
    textTo: z
      .string()
      .regex(/^\+[1-9]\d{6,14}$/, "must be a number with the country's code, e.g. +12185550100")
      .nullable(),
    /** When a day's advice comes in one, by the person's clock. */
    dailyAt: Clock,
    /** Nothing comes between the two but warnings of a cold night. Null: no quiet hours. */
    quiet: z.object({ from: Clock, to: Clock }).nullable(),
    timeZone: z.string().max(60).refine(isTimeZone, "must be an IANA time zone, e.g. America/Chicago"),
    language: z.enum(LANGUAGES),
  })
  .openapi("Wishes");
export type Wishes = z.infer<typeof WishesSchema>;

export const DeliverySettingsSchema = z
  .object({
    wishes: WishesSchema,
    /** Whether they said so themselves, or these are the ordinary ones. */
    chosen: z.boolean(),
    mailTo: z.string().nullable(),
    /** What is set up here; what is not is not offered. */
    offered: z.object({
      mail: z.boolean(),
      text: z.boolean(),
      /** The key a browser subscribes with. */
      pushKey: z.string().nullable(),
    }),
    browsers: z.array(
      z.object({ id: Id, service: z.string(), endpointSha256: z.string(), addedAt: Instant }),
    ),
    /** What was sent last, newest first. */
    sent: z.array(
      z.object({
        advisoryId: Id,
        channel: ChannelSchema,
        about: z.enum(["advice", "unread"]),
        dueAt: Instant,
        state: z.enum(["waiting", "sent", "dropped", "failed"]),
        sentAt: Instant.nullable(),
        outcome: z.string().nullable(),
      }),
    ),
  })
  .openapi("DeliverySettings");
export type DeliverySettings = z.infer<typeof DeliverySettingsSchema>;

export const getDelivery = createRoute({
  method: "get",
  path: `${mine}/delivery`,
  tags,
  summary: "How one wants to be told, which browsers are told, and what was sent last",
  request: { params: officePath },
  responses: { 200: json(DeliverySettingsSchema, "The settings"), ...problems },
});

export const changeDelivery = createRoute({
  method: "put",
  path: `${mine}/delivery`,
  tags,
  summary: "Say how one wants to be told: at once, once a day or not, by which way, and when not",
  request: { params: officePath, body: body(WishesSchema) },
  responses: { 200: json(DeliverySettingsSchema, "The settings"), ...problems },
});

const Base64Url = /^[A-Za-z0-9_-]+$/;
export const addBrowser = createRoute({
  method: "post",
  path: `${mine}/browsers`,
  tags,
  summary: "Let this browser be told; the same browser again changes nothing",
  request: {
    params: officePath,
    body: body(
      z.object({
        endpoint: z.url().max(1000),
        keys: z.object({
          p256dh: z.string().regex(Base64Url).min(80).max(100),
          auth: z.string().regex(Base64Url).min(20).max(30),
        }),
      }),
    ),
  },
  responses: { 201: json(z.object({ id: Id }), "The browser"), ...problems },
});

export const removeBrowser = createRoute({
  method: "delete",
  path: `${mine}/browsers/{browserId}`,
  tags,
  summary: "Tell this browser no more",
  request: { params: officePath.extend({ browserId: Id }) },
  responses: { 200: json(DoneSchema, "Done"), ...problems },
});

export const stopMail = createRoute({
  method: "post",
  path: "/v1/stop-mail/{secret}",
  tags,
  summary: "Stop mail by the link that came with it; it works once, without signing in",
  security: [],
  request: { params: z.object({ secret: z.string().max(100) }) },
  responses: { 200: json(DoneSchema, "No more mail of this office comes"), ...problems },
});

export const CallSchema = z
  .object({
    farmId: Id,
    farmName: z.string(),
    contactName: z.string().nullable(),
    phone: z.string().nullable(),
    warnings: z.array(
      z.object({
        advisoryId: Id,
        ruleId: z.string(),
        decision: z.string(),
        /** Warns of a cold night. */
        frost: z.boolean(),
        issuedAt: Instant,
        actBy: Instant,
      }),
    ),
  })
  .openapi("Call");
export type Call = z.infer<typeof CallSchema>;

export const listCalls = createRoute({
  method: "get",
  path: "/v1/offices/{officeId}/calls",
  tags,
  summary: "Farms to call: nobody there has read a warning, and its hour is near or past",
  request: { params: officePath },
  responses: { 200: json(z.object({ calls: z.array(CallSchema) }), "Most pressing first"), ...problems },
});

export const markCalled = createRoute({
  method: "post",
  path: "/v1/offices/{officeId}/farms/{farmId}/called",
  tags,
  summary: "The farm was called about the warnings named",
  request: { params: farmPath, body: body(z.object({ advisoryIds: z.array(Id).min(1).max(200) })) },
  responses: { 200: json(DoneSchema, "Done"), ...problems },
});
