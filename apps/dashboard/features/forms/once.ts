import type { FormEvent } from "react";

/** A form that is on its way is not sent again: what a second tap sends would wait, and be done once more after the first. */
export const once = (busy: boolean) => (event: FormEvent) => {
  if (busy) event.preventDefault();
};
