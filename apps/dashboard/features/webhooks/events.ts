import type { WebhookEvent } from "@pith/contract";

/** Listed here and not taken from the contract, whose schemas the page would then carry to the browser. */
export const EVENTS = [
  "advisory.issued",
  "advisory.answered",
  "advisory.withdrawn",
  "warning.unread",
] as const satisfies readonly WebhookEvent[];

/** The words of an event stand under its last part: a point in a key would be a step down. */
export const keyOf = (event: string) => {
  const last = event.split(".").at(-1);
  return last === "issued" || last === "answered" || last === "withdrawn" || last === "unread"
    ? last
    : "test";
};
