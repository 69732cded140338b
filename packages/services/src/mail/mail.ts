import { z } from "zod";

/** A letter to one person. Text is the letter; HTML, where there is any, says the same. */
export const MailSchema = z.object({
  to: z.email(),
  subject: z.string().min(1).max(200),
  text: z.string().min(1),
  html: z.string().optional(),
  headers: z.record(z.string(), z.string()).optional(),
});
export type Mail = z.infer<typeof MailSchema>;
