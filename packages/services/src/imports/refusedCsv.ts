import { stringify } from "csv-stringify/sync";
import type { Ctx } from "../context.ts";
import { getImport } from "./save.ts";

/** Every refused row as a CSV file, in the order of the file it came from. */
export async function refusedCsv(ctx: Ctx, farmId: string, importId: string): Promise<string> {
  const { refused } = await getImport(ctx, farmId, importId);
  return stringify(refused, {
    header: true,
    columns: ["line", "column", "value", "reason"],
    // A laboratory's cell that begins like a formula stays text in a spreadsheet.
    escape_formulas: true,
    record_delimiter: "windows",
    bom: true,
  });
}
