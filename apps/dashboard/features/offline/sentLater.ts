import { typeOf } from "@pith/contract";
import { getTranslations } from "next-intl/server";
import { isFromElsewhere } from "../../server/elsewhere.ts";
import type { FormState } from "../forms/plan.ts";
import { SEND_KEY } from "./names.ts";

const TOO_MANY = 429;
const KEY = /^[0-9a-f]{32}$/;

/** The key that a form's sending bears, for the API to know it by. */
export const sendKeyOf = (data: FormData): { idempotencyKey?: string } => {
  const key = String(data.get(SEND_KEY) ?? "");
  return KEY.test(key) ? { idempotencyKey: key } : {};
};

/**
 * Takes what a phone kept and sends now, from its own pages alone; says what was against it.
 *
 * @param form whose fields these are, in the catalogue
 */
export async function sentLater(
  request: Request,
  send: (data: FormData) => Promise<{ refused: FormState } | { photosTo?: string; next?: string }>,
  form: string,
): Promise<Response> {
  if (isFromElsewhere(request)) return new Response(null, { status: 403 });
  const sent = await send(await request.formData());
  if (!("refused" in sent)) return Response.json(sent);
  const { status = 422, type, message, problems, meanwhile } = sent.refused;
  // What passes by itself is no refusal: the phone keeps it and tries again.
  if (status === TOO_MANY || status >= 500 || type === typeOf("under-way")) {
    return Response.json({ message: "" }, { status: 503 });
  }
  // It was written down by an earlier try whose answer was lost twice.
  if (type === typeOf("answer-lost")) return Response.json({ message });
  // Read away from the form, where no field stands beside what is against it.
  const t = await getTranslations("fields");
  const lines = Object.entries(problems).map(([field, problem]) => {
    const key = `${form}.${field.replace(/\.\d+\./, ".")}.label` as never;
    return t.has(key) ? `${t(key)}: ${problem}` : problem;
  });
  const beside = [message, ...lines].filter(Boolean).join(" ");
  // A page kept from before this was asked knows a refusal by its status alone.
  const quiet = request.headers.get("accept") === "application/json";
  const refusal = { refused: beside, lead: message, problems, meanwhile };
  return Response.json({ ...refusal, message: beside }, { status: quiet ? 200 : 422 });
}
