import type { Language } from "@pith/rules";

/** The words around an advice on its way; the advice itself is said as it was issued. A language that lacks one does not compile. */
interface Words {
  newAdvice: string;
  frostWarning: string;
  unread: string;
  frostUnread: string;
  danger: string;
  warning: string;
  care: string;
  whyYou: string;
  readAndAnswer: string;
  readCautions: string;
  readWhole: string;
  noNumber: string;
  doneBy: (when: string) => string;
  actBy: (when: string) => string;
  byNow: (decision: string) => string;
  several: (what: { frost: boolean; farms: string; count: number }) => string;
}

export const WORDS: Record<Language, Words> = {
  en: {
    newAdvice: "New advice",
    frostWarning: "Frost warning",
    unread: "Not read: call",
    frostUnread: "Frost warning not read: call",
    danger: "DANGER",
    warning: "WARNING",
    care: "TAKE CARE",
    whyYou: "You get this because an office advises your farm. How and when it comes:",
    readAndAnswer: "Read and answer it here",
    readCautions: "Read the cautions",
    readWhole: "Read it whole",
    noNumber: "no number is kept",
    doneBy: (when) => `To be done by ${when}.`,
    actBy: (when) => `Act by ${when}.`,
    byNow: (decision) => `By now: ${decision}`,
    several: ({ frost, farms, count }) =>
      `${frost ? "Frost warning and more" : "Advice"} for ${farms}: ${count}`,
  },
  es: {
    newAdvice: "Consejo nuevo",
    frostWarning: "Aviso de helada",
    unread: "Sin leer: llame",
    frostUnread: "Aviso de helada sin leer: llame",
    danger: "PELIGRO",
    warning: "ADVERTENCIA",
    care: "CUIDADO",
    whyYou: "Recibe esto porque una oficina aconseja a su finca. Cómo y cuándo llega:",
    readAndAnswer: "Léalo y conteste aquí",
    readCautions: "Lea las precauciones",
    readWhole: "Léalo entero",
    noNumber: "no hay número guardado",
    doneBy: (when) => `Para hacer antes de: ${when}.`,
    actBy: (when) => `Actúe antes de: ${when}.`,
    byNow: (decision) => `A más tardar ahora: ${decision}`,
    several: ({ frost, farms, count }) =>
      `${frost ? "Aviso de helada y más" : "Consejos"} para ${farms}: ${count}`,
  },
};

/** How urgent a caution is, in one word. */
export const labelOf = (severity: string, language: Language): string =>
  WORDS[language][severity as "danger" | "warning" | "care"] ?? WORDS[language].care;
