import { createRoute, z } from "@hono/zod-openapi";
import { body, DoneSchema, Id, json, officePath, problems } from "../shapes.ts";
import { RoleSchema } from "./open.ts";
import { NewPassword } from "./signIn.ts";

/** A person's own account, the people of an office, who is asked in, and what the audit says. */

type Method = "get" | "post" | "patch" | "put" | "delete";
/** It stands in letters that others get: a line of its own, without what could make another. */
const Name = z
  .string()
  .trim()
  .min(1)
  .max(120)
  .regex(/^[^\p{Cc}\p{Zl}\p{Zp}]*$/u, "must be one line without control characters")
  .openapi({ example: "Maren Oakhollow" });
const own = <M extends Method, P extends string>(method: M, path: P, summary: string) => ({
  method,
  path: `/v1/me${path}` as const,
  tags: ["account"],
  summary,
});
const Password = z.object({ password: z.string().max(200).openapi({ example: "a long enough password" }) });
const BackupCodes = z.object({ backupCodes: z.array(z.string()) });

export const changeMe = createRoute({
  ...own("patch", "", "What the person is called, in every office they are in"),
  request: { body: body(z.object({ name: Name })) },
  responses: { 200: json(DoneSchema, "Changed"), ...problems },
});

export const changePassword = createRoute({
  ...own("post", "/password", "Changes the password; every other session ends"),
  request: { body: body(Password.extend({ newPassword: NewPassword })) },
  responses: { 200: json(DoneSchema, "Changed"), ...problems },
});

export const beginSecondStep = createRoute({
  ...own("post", "/second-step", "Makes the secret of a second step; it counts once a code has been typed"),
  request: { body: body(Password) },
  responses: {
    200: json(
      BackupCodes.extend({
        /** For the app, as a picture or typed: the address of RFC 6238 secrets. */
        uri: z.string(),
        secret: z.string(),
      }),
      "The secret, and the codes to keep for a lost phone. Neither is shown again.",
    ),
    ...problems,
  },
});

export const confirmSecondStep = createRoute({
  ...own("post", "/second-step/confirm", "Turns the second step on by a first code of the app"),
  request: { body: body(z.object({ code: z.string().trim().min(6).max(8).openapi({ example: "492039" }) })) },
  responses: { 200: json(DoneSchema, "On"), ...problems },
});

export const newBackupCodes = createRoute({
  ...own("post", "/second-step/codes", "Makes new codes for a lost phone; the old ones end"),
  request: { body: body(Password) },
  responses: { 200: json(BackupCodes, "The codes. They are not shown again."), ...problems },
});

export const endSecondStep = createRoute({
  ...own("post", "/second-step/end", "Turns the second step off"),
  request: { body: body(Password) },
  responses: { 200: json(DoneSchema, "Off"), ...problems },
});

export const SessionSchema = z
  .object({
    id: Id,
    startedAt: z.string(),
    /** To within a day. */
    seenAt: z.string(),
    endsAt: z.string(),
    networkAddress: z.string().nullable(),
    browser: z.string().nullable(),
    /** The one that asks. */
    current: z.boolean(),
  })
  .openapi("Session");
export type Session = z.infer<typeof SessionSchema>;

export const listSessions = createRoute({
  ...own("get", "/sessions", "Where the person is signed in"),
  responses: { 200: json(z.object({ sessions: z.array(SessionSchema) }), "Newest first"), ...problems },
});

export const endSession = createRoute({
  ...own("delete", "/sessions/{id}", "Ends one session"),
  request: { params: z.object({ id: Id }) },
  responses: { 200: json(DoneSchema, "Ended"), ...problems },
});

export const endOtherSessions = createRoute({
  ...own("delete", "/sessions", "Ends every session but the one that asks"),
  responses: { 200: json(z.object({ ended: z.number().int() }), "How many ended"), ...problems },
});

export const leaveOffice = createRoute({
  ...own("delete", "/offices/{officeId}", "Leaves an office"),
  request: { params: officePath },
  responses: { 200: json(DoneSchema, "Left"), ...problems },
});

const PersonSchema = z
  .object({
    id: Id,
    userId: Id,
    name: z.string(),
    email: z.string().nullable(),
    role: RoleSchema,
    /** Of farmer and reader. */
    farmIds: z.array(Id),
  })
  .openapi("PersonOfOffice");
export type PersonOfOffice = z.infer<typeof PersonSchema>;

const place = { role: RoleSchema, farmIds: z.array(Id).max(500) };
const inOffice = <M extends Method, P extends string>(method: M, path: P, summary: string) => ({
  method,
  path: `/v1/offices/{officeId}${path}` as const,
  tags: ["people"],
  summary,
});
const withId = officePath.extend({ id: Id });

export const listPeople = createRoute({
  ...inOffice("get", "/people", "Who belongs to the office, as what"),
  request: { params: officePath },
  responses: {
    200: json(
      z.object({
        people: z.array(PersonSchema),
        /** Whether the office asks its staff for a second step. */
        secondStepForStaff: z.boolean(),
      }),
      "By name",
    ),
    ...problems,
  },
});

export const changePerson = createRoute({
  ...inOffice("patch", "/people/{id}", "Changes a person's role and farms"),
  request: { params: withId, body: body(z.object(place)) },
  responses: { 200: json(PersonSchema, "As it is now"), ...problems },
});

export const removePerson = createRoute({
  ...inOffice("delete", "/people/{id}", "Takes a person out of the office"),
  request: { params: withId },
  responses: { 200: json(DoneSchema, "Gone"), ...problems },
});

export const askForSecondStep = createRoute({
  ...inOffice("put", "/second-step", "Whether lead and agents must sign in with a second step"),
  request: { params: officePath, body: body(z.object({ asked: z.boolean() })) },
  responses: { 200: json(DoneSchema, "Kept"), ...problems },
});

const InvitationSchema = z
  .object({
    id: Id,
    email: z.string(),
    name: z.string(),
    ...place,
    invitedBy: z.string(),
    invitedAt: z.string(),
    expiresAt: z.string(),
    expired: z.boolean(),
  })
  .openapi("Invitation");
export type Invitation = z.infer<typeof InvitationSchema>;

export const listInvitations = createRoute({
  ...inOffice("get", "/invitations", "Who is asked in and has not come yet"),
  request: { params: officePath },
  responses: { 200: json(z.object({ invitations: z.array(InvitationSchema) }), "Newest first"), ...problems },
});

export const invite = createRoute({
  ...inOffice(
    "post",
    "/invitations",
    "Asks somebody in by mail; asking the same address again replaces what was asked",
  ),
  request: {
    params: officePath,
    body: body(
      z.object({
        email: z.email().max(254).openapi({ example: "new@aldertarn.example" }),
        name: Name,
        ...place,
      }),
    ),
  },
  responses: {
    201: json(InvitationSchema, "Asked; says nothing about whether the address has an account"),
    ...problems,
  },
});

export const resendInvitation = createRoute({
  ...inOffice(
    "post",
    "/invitations/{id}/resend",
    "Sends an invitation again with a new link; the old link ends",
  ),
  request: { params: withId },
  responses: { 200: json(InvitationSchema, "Sent again"), ...problems },
});

export const revokeInvitation = createRoute({
  ...inOffice("delete", "/invitations/{id}", "Takes an invitation back"),
  request: { params: withId },
  responses: { 200: json(DoneSchema, "Taken back"), ...problems },
});

const AuditLineSchema = z
  .object({
    id: Id,
    at: z.string(),
    /** Null for the server itself, and for whoever has been erased. */
    who: z.string().nullable(),
    action: z.string(),
    entity: z.string(),
    entityId: z.string().nullable(),
    detail: z.record(z.string(), z.unknown()),
  })
  .openapi("AuditLine");
export type AuditLine = z.infer<typeof AuditLineSchema>;

export const listAudit = createRoute({
  ...inOffice("get", "/audit", "Who did what in the office, sign-ins too; newest first"),
  request: {
    params: officePath,
    query: z.object({
      /** The last line of the page before, as `next` gave it. */
      after: z.string().max(100).optional(),
      /** Only what begins like this, e.g. `sign-in`. */
      action: z.string().max(60).optional(),
      limit: z.coerce.number().int().min(1).max(200).optional(),
    }),
  },
  responses: {
    200: json(
      z.object({
        lines: z.array(AuditLineSchema),
        /** For `after`; null on the last page. */
        next: z.string().nullable(),
      }),
      "A page of the audit",
    ),
    ...problems,
  },
});
