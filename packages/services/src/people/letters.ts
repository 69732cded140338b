import type { Role } from "@pith/contract";
import type { Mail } from "../mail/mail.ts";

/** The letters that bear a secret. Plain text, short, and each says how long its link lasts and what to do if it was not asked for. */

const letter = (to: string, subject: string, paragraphs: string[]): Mail => ({
  to,
  subject: subject.slice(0, 200),
  text: `${paragraphs.join("\n\n")}\n`,
});

export const LINK_LASTS_MINUTES = 15;
export const RESET_LASTS_MINUTES = 30;
export const CONFIRM_LASTS_HOURS = 24;
export const INVITATION_LASTS_DAYS = 7;

export const signInLetter = (to: string, link: string): Mail =>
  letter(to, "Your link to sign in to Pith", [
    "Open this link to sign in:",
    link,
    `It works once, within ${LINK_LASTS_MINUTES} minutes. If you did not ask for it, you need do nothing.`,
  ]);

export const resetLetter = (to: string, link: string): Mail =>
  letter(to, "A new password for Pith", [
    "Open this link to choose a new password:",
    link,
    `It works once, within ${RESET_LASTS_MINUTES} minutes. If you did not ask for it, you need do nothing: your password stays as it is.`,
  ]);

export const confirmLetter = (to: string, link: string): Mail =>
  letter(to, "Confirm your e-mail address for Pith", [
    "Somebody signed in with this address and its password, but the address has not been confirmed yet. Open this link to confirm it, then sign in again:",
    link,
    `It works for ${CONFIRM_LASTS_HOURS} hours. If this was not you, do nothing.`,
  ]);

const AS: Record<Role, string> = {
  lead: "as a lead of the office",
  agent: "as an agent of the office",
  farmer: "as a farmer",
  reader: "to read along",
};

export const invitationLetter = (
  to: string,
  asked: { name: string; officeName: string; by: string; role: Role },
  link: string,
): Mail =>
  letter(to, `${asked.officeName} asks you in`, [
    `${asked.name},`,
    `${asked.by} of ${asked.officeName} asks you to join them in Pith ${AS[asked.role]}. Open this link to join:`,
    link,
    `It works once, within ${INVITATION_LASTS_DAYS} days. If you do not know the office, do nothing.`,
  ]);
