import { stringify } from "csv-stringify/sync";
import { Zip, ZipDeflate, ZipPassThrough } from "fflate";
import { type Ctx, requireLead } from "../context.ts";
import { neverFormula } from "../seasonRecord/csv.ts";
import { auditExport, inSnapshot, officeName } from "./exportOffice.ts";
import { rowsOf, tablesOf } from "./rows.ts";
import { EXPORTED, LEFT_OUT } from "./tables.ts";

const encoder = new TextEncoder();
const SUFFIX: Record<string, string> = { "image/jpeg": "jpg", "image/png": "png", "image/webp": "webp" };

/** The same as a zip of CSV files, one a table, with the photographs as pictures. To read, not to take in again. */
export async function exportOfficeAsCsv(
  ctx: Ctx,
  write: (bytes: Uint8Array<ArrayBuffer>) => Promise<unknown>,
): Promise<void> {
  requireLead(ctx);
  await auditExport(ctx, "office.export-csv", ctx.officeId);
  let broken: Error | undefined;
  const ready: Uint8Array<ArrayBuffer>[] = [];
  const zip = new Zip((error, bytes) => {
    if (error) broken = error;
    else ready.push(new Uint8Array(bytes));
  });
  const flush = async () => {
    if (broken) throw broken;
    for (const bytes of ready.splice(0)) await write(bytes);
  };
  await inSnapshot(ctx, async (tx) => {
    const about = new ZipDeflate("read-me.txt");
    zip.add(about);
    about.push(encoder.encode(readMe(await officeName(tx, ctx.officeId), ctx.now())), true);
    const tables = await tablesOf(tx, EXPORTED);
    for (const name of EXPORTED) {
      const table = tables.get(name);
      if (!table) throw new Error(`there is no table ${name}`);
      const file = new ZipDeflate(`${name}.csv`);
      zip.add(file);
      file.push(encoder.encode(stringify([table.columns])));
      for await (const rows of rowsOf(tx, table)) {
        const cells = rows.map((text) => {
          const row = JSON.parse(text) as Record<string, unknown>;
          if (name === "photos") row.bytes = pathOf(row);
          return table.columns.map((column) => cellOf(row[column]));
        });
        file.push(encoder.encode(stringify(cells, { cast: { string: neverFormula } })));
        await flush();
      }
      file.push(new Uint8Array(), true);
      await flush();
    }
    // After the tables, because a zip takes one file at a time, and never more of them at once than a few.
    const photos = tables.get("photos");
    if (photos) {
      for await (const rows of rowsOf(tx, photos)) {
        for (const text of rows) {
          const row = JSON.parse(text) as Record<string, unknown>;
          const picture = new ZipPassThrough(pathOf(row)); // pictures are pressed already
          zip.add(picture);
          picture.push(bytesOf(String(row.bytes)), true);
          await flush();
        }
      }
    }
    zip.end();
    await flush();
  });
}

const cellOf = (value: unknown): string | number => {
  if (value === null || value === undefined) return "";
  if (typeof value === "number") return value;
  return typeof value === "object" ? JSON.stringify(value) : String(value);
};

const pathOf = (row: Record<string, unknown>): string =>
  `photos/${row.id}.${SUFFIX[String(row.media_type)] ?? "bin"}`;

/** PostgreSQL writes bytes as `\x` and hex. */
const bytesOf = (hex: string): Uint8Array =>
  Uint8Array.from(hex.slice(2).match(/../g) ?? [], (pair) => Number.parseInt(pair, 16));

const readMe = (
  office: string,
  at: Date,
): string => `Everything that ${office} owns, as of ${at.toISOString()}.
One file a table, in UTF-8; instants in UTC; units in the columns' names; lists and objects as JSON; pictures beside it.
To take an office in elsewhere, use the other export, whose lines are JSON and signed.
Left out: ${Object.entries(LEFT_OUT)
  .map(([table, why]) => `${table} (${why})`)
  .join("; ")}. People's passwords and sign-ins are never in an export.
`;
