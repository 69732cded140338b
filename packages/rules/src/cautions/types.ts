/** How bad it is if the caution is missed. */
export type Severity = "danger" | "warning" | "care";

/** Text that travels with an advice. Changing the text makes a new version. */
export interface Caution {
  id: string;
  version: number;
  severity: Severity;
  text: { en: string; es: string };
}
