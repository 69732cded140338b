import type messages from "./messages/en.json";

/** Every text key is checked by the compiler against the English catalogue. */
declare module "next-intl" {
  interface AppConfig {
    Messages: typeof messages;
    Locale: import("@pith/rules").Language;
  }
}
