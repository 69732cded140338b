import { getRequestConfig } from "next-intl/server";
import messages from "../messages/en.json" with { type: "json" };

/** One language so far. A second one is a second catalogue and a choice made here. */
export default getRequestConfig(async () => ({ locale: "en", messages, timeZone: "UTC" }));
