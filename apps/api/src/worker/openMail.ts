import { randomUUID } from "node:crypto";
import { mkdir, rename, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { type Mail, ServiceError } from "@pith/services";
import { createTransport } from "nodemailer";

/** Sends letters. The same id makes the same Message-ID, by which whoever gets one twice can tell. */
export interface MailDoor {
  send(mail: Mail, id?: string): Promise<void>;
  close(): void;
}

interface Settings {
  SMTP_URL?: string | undefined;
  PITH_MAIL_FROM: string;
  PITH_MAIL_FOLDER?: string | undefined;
}

/** By the mail server; without one into the folder; without either not at all. */
export function openMail({ SMTP_URL, PITH_MAIL_FROM: from, PITH_MAIL_FOLDER: folder }: Settings): MailDoor {
  const host = /@([\w.-]+)/.exec(from)?.[1] ?? "localhost";
  const letter = ({ headers, ...mail }: Mail, id: string = randomUUID()) => ({
    ...mail,
    from,
    messageId: `<${id}@${host}>`,
    // So that no holiday notice answers it (RFC 3834).
    headers: { "Auto-Submitted": "auto-generated", ...headers },
  });
  if (SMTP_URL) {
    const transport = createTransport(SMTP_URL);
    return {
      send: async (mail, id) => void (await transport.sendMail(letter(mail, id))),
      close: () => transport.close(),
    };
  }
  const writer = createTransport({ streamTransport: true, buffer: true });
  return {
    async send(mail, id) {
      if (!folder)
        throw new ServiceError("conflict", "This server is not set up to send mail: SMTP_URL is not set.");
      const { message } = await writer.sendMail(letter(mail, id));
      await mkdir(folder, { recursive: true, mode: 0o700 });
      const path = join(folder, `${new Date().toISOString().replaceAll(":", "")}-${randomUUID()}.eml`);
      await writeFile(`${path}.part`, message as Buffer, { mode: 0o600 });
      await rename(`${path}.part`, path); // whole or not there
    },
    close: () => {},
  };
}
