import type { Role } from "@pith/contract";
import type { Mail } from "../mail/mail.ts";

/** The letters that bear a secret. Plain text, short, and each says how long its link lasts and what to do if it was not asked for. */

/** In both languages: who gets such a letter has often not told anybody yet which one they read. */
const letter = (to: string, subjects: [string, string], link: string, says: [string[], string[]]): Mail => {
  const [english, spanish] = says.map(([before = "", after = ""]) => [before, link, after]);
  return {
    to,
    subject: subjects.join(" / ").slice(0, 200),
    text: `${[...(english ?? []), "----", ...(spanish ?? [])].join("\n\n")}\n`,
  };
};

export const LINK_LASTS_MINUTES = 15;
export const RESET_LASTS_MINUTES = 30;
export const CONFIRM_LASTS_HOURS = 24;
export const INVITATION_LASTS_DAYS = 7;

export const signInLetter = (to: string, link: string): Mail =>
  letter(to, ["Your link to sign in to Pith", "Su enlace para entrar en Pith"], link, [
    [
      "Open this link to sign in:",
      `It works once, within ${LINK_LASTS_MINUTES} minutes. If you did not ask for it, you need do nothing.`,
    ],
    [
      "Abra este enlace para entrar:",
      `Sirve una vez, dentro de ${LINK_LASTS_MINUTES} minutos. Si no lo pidió, no tiene que hacer nada.`,
    ],
  ]);

export const resetLetter = (to: string, link: string): Mail =>
  letter(to, ["A new password for Pith", "Una contraseña nueva para Pith"], link, [
    [
      "Open this link to choose a new password:",
      `It works once, within ${RESET_LASTS_MINUTES} minutes. If you did not ask for it, you need do nothing: your password stays as it is.`,
    ],
    [
      "Abra este enlace para escoger una contraseña nueva:",
      `Sirve una vez, dentro de ${RESET_LASTS_MINUTES} minutos. Si no lo pidió, no tiene que hacer nada: su contraseña queda como está.`,
    ],
  ]);

export const confirmLetter = (to: string, link: string): Mail =>
  letter(to, ["Confirm your e-mail address for Pith", "Confirme su correo para Pith"], link, [
    [
      "Somebody signed in with this address and its password, but the address has not been confirmed yet. Open this link to confirm it, then sign in again:",
      `It works for ${CONFIRM_LASTS_HOURS} hours. If this was not you, do nothing.`,
    ],
    [
      "Alguien entró con esta dirección y su contraseña, pero la dirección todavía no está confirmada. Abra este enlace para confirmarla, y entre de nuevo:",
      `Sirve por ${CONFIRM_LASTS_HOURS} horas. Si no fue usted, no haga nada.`,
    ],
  ]);

const AS: Record<Role, [string, string]> = {
  lead: ["as a lead of the office", "como responsable de la oficina"],
  agent: ["as an agent of the office", "como asesor de la oficina"],
  farmer: ["as a farmer", "como productor"],
  reader: ["to read along", "para leer"],
};

export const invitationLetter = (
  to: string,
  asked: { name: string; officeName: string; by: string; role: Role },
  link: string,
): Mail => {
  const [as, como] = AS[asked.role];
  const subjects: [string, string] = [`${asked.officeName} asks you in`, `${asked.officeName} lo invita`];
  return letter(to, subjects, link, [
    [
      `${asked.name},\n\n${asked.by} of ${asked.officeName} asks you to join them in Pith ${as}. Open this link to join:`,
      `It works once, within ${INVITATION_LASTS_DAYS} days. If you do not know the office, do nothing.`,
    ],
    [
      `${asked.name}:\n\n${asked.by} de ${asked.officeName} lo invita a unirse en Pith ${como}. Abra este enlace para unirse:`,
      `Sirve una vez, dentro de ${INVITATION_LASTS_DAYS} días. Si no conoce la oficina, no haga nada.`,
    ],
  ]);
};
