import { stringify } from "csv-stringify/sync";

/** Rows as a CSV file (RFC 4180), with a head of the columns' names. */
export const csvOf = (columns: readonly string[], rows: readonly object[]): string =>
  stringify([...rows], { header: true, columns: [...columns], record_delimiter: "windows" });
