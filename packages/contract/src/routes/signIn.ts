import { createRoute, z } from "@hono/zod-openapi";
import { body, DoneSchema, json, problems, tooMany } from "../shapes.ts";

/**
 * The ways in. Each answers an address that is known and one that is not alike: with the same words, after the same work.
 * Tokens come from a mail's link, where they stand behind the `#`; they are used once and do not last.
 */

const Email = z.email().max(254).openapi({ example: "agent@aldertarn.example" });
/** Long enough to be no quick guess; the upper end is for the hash's sake. */
export const NewPassword = z.string().min(10).max(200).openapi({ example: "a long enough password" });
const Password = z.string().min(1).max(200).openapi({ example: "a long enough password" });
const Token = z.string().min(1).max(1000).openapi({ example: "qWjRkTzPmNbVcXsD" });
const answers = { ...problems, ...tooMany };

export const SignedInSchema = z
  .object({
    /** Whether the session has begun: its cookie came along. Otherwise the second step is still to be taken. */
    signedIn: z.boolean(),
  })
  .openapi("SignedIn");

const open = <P extends string>(path: P, summary: string) => ({
  method: "post" as const,
  path,
  tags: ["signing in"],
  summary,
  security: [],
});

export const signInWithPassword = createRoute({
  ...open("/v1/auth/sign-in/email", "Signs in with e-mail address and password"),
  request: { body: body(z.object({ email: Email, password: Password })) },
  responses: { 200: json(SignedInSchema, "Signed in, or the second step is next"), ...answers },
});

export const signInWithCode = createRoute({
  ...open("/v1/auth/sign-in/code", "Takes the second step of a sign-in"),
  request: {
    body: body(
      z.object({
        /** Six digits of the app, or one of the codes kept for a lost phone. */
        code: z.string().trim().min(6).max(20).openapi({ example: "492039" }),
        kind: z.enum(["app", "kept"]),
        /** Asks this browser for no second step for 30 days. */
        rememberBrowser: z.boolean().optional(),
      }),
    ),
  },
  responses: { 200: json(SignedInSchema, "Signed in"), ...answers },
});

export const askForLink = createRoute({
  ...open("/v1/auth/sign-in/link", "Sends a link that signs in, if somebody has that address"),
  request: { body: body(z.object({ email: Email })) },
  responses: { 200: json(DoneSchema, "Taken down; the answer says nothing about the address"), ...answers },
});

export const signInWithLink = createRoute({
  ...open("/v1/auth/sign-in/link/use", "Signs in by the token of a link"),
  request: { body: body(z.object({ token: Token })) },
  responses: { 200: json(SignedInSchema, "Signed in, or the second step is next"), ...answers },
});

export const signOut = createRoute({
  method: "post",
  path: "/v1/auth/sign-out",
  tags: ["signing in"],
  summary: "Ends the session",
  responses: { 200: json(DoneSchema, "Ended"), ...answers },
});

export const forgotPassword = createRoute({
  ...open("/v1/auth/password/forgotten", "Sends a link to a new password, if somebody has that address"),
  request: { body: body(z.object({ email: Email })) },
  responses: { 200: json(DoneSchema, "Taken down; the answer says nothing about the address"), ...answers },
});

export const resetPassword = createRoute({
  ...open("/v1/auth/password/reset", "Sets a new password by the token of a link; ends every session"),
  request: { body: body(z.object({ token: Token, newPassword: NewPassword })) },
  responses: { 200: json(DoneSchema, "Set"), ...answers },
});

export const confirmEmail = createRoute({
  ...open("/v1/auth/email/confirm", "Confirms an e-mail address by the token of a link"),
  request: { body: body(z.object({ token: Token })) },
  responses: { 200: json(DoneSchema, "Confirmed"), ...answers },
});

const InvitationToken = z.object({ token: Token });

export const InvitedSchema = z
  .object({
    officeName: z.string(),
    /** Who asked. */
    invitedBy: z.string(),
    email: z.string(),
    name: z.string(),
    role: z.enum(["lead", "agent", "farmer", "reader"]),
    farmNames: z.array(z.string()),
  })
  .openapi("Invited");

export const readInvitation = createRoute({
  ...open("/v1/invitations/read", "What an invitation is for, to whoever holds its token"),
  request: { body: body(InvitationToken) },
  responses: { 200: json(InvitedSchema, "The invitation"), ...answers },
});

export const acceptInvitation = createRoute({
  ...open(
    "/v1/invitations/accept",
    "Takes an invitation up: joins with the account of that address, or makes one",
  ),
  request: {
    body: body(
      InvitationToken.extend({
        name: z.string().trim().min(1).max(120).openapi({ example: "Maren Oakhollow" }),
        /** Becomes the account's where there is none yet; an account that is there keeps its own. */
        password: NewPassword,
      }),
    ),
  },
  responses: {
    200: json(DoneSchema, "Joined; the answer does not say whether there was an account"),
    ...answers,
  },
});
