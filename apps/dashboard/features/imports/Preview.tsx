import type { Import } from "@pith/contract";
import type { ImportWords } from "./words.ts";

/** What a file was read as: its columns, the rows that would be stored, and each refused row with its reason. */
export function Preview({ read, words }: { read: Import; words: ImportWords }) {
  return (
    <div className="flow">
      <dl className="facts tallies">
        <dt>{words.acceptedTitle}</dt>
        <dd className="number">{read.acceptedCount}</dd>
        <dt>{words.refusedTitle}</dt>
        <dd className="number">{read.refusedCount}</dd>
        <dt>{words.duplicates}</dt>
        <dd className="number">{read.duplicateCount}</dd>
      </dl>
      <h3>{words.columns}</h3>
      <table className="ruled">
        <caption className="unseen">{words.columns}</caption>
        <thead>
          <tr>
            <th scope="col">{words.header}</th>
            <th scope="col">{words.readAs}</th>
            <th scope="col">{words.unit}</th>
          </tr>
        </thead>
        <tbody>
          {read.columns.map((column) => (
            <tr key={column.header}>
              <th scope="row">{column.header}</th>
              <td>
                {column.field !== null ? (
                  (words.fields[column.field] ?? column.field)
                ) : (
                  <span className="unknown">{words.leftOut}</span>
                )}
              </td>
              <td className="number">{[column.unit, column.extractant].filter(Boolean).join(", ")}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <h3>{words.refusedTitle}</h3>
      {read.refused.length === 0 ? (
        <p>{words.noneRefused}</p>
      ) : (
        <Refused refused={read.refused} words={words} />
      )}
      <h3>{words.acceptedTitle}</h3>
      {read.accepted.length === 0 ? (
        <p>{words.noneAccepted}</p>
      ) : (
        <Accepted rows={read.accepted} words={words} />
      )}
    </div>
  );
}

function Refused({ refused, words }: { refused: Import["refused"]; words: ImportWords }) {
  return (
    <table className="ruled refused">
      <caption className="unseen">{words.refusedTitle}</caption>
      <thead>
        <tr>
          <th scope="col" className="value">
            {words.line}
          </th>
          <th scope="col">{words.column}</th>
          <th scope="col">{words.value}</th>
          <th scope="col">{words.reason}</th>
        </tr>
      </thead>
      <tbody>
        {refused.map(({ line, column, reason, value }) => (
          <tr key={`${line} ${column} ${reason}`}>
            <td className="value" data-head={words.line}>
              {line}
            </td>
            <td>{column}</td>
            <td className="number" data-head={value === null ? undefined : words.value}>
              {value}
            </td>
            <td className="full">{reason}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** The first rows as they will be stored, one column for each field that any of them has. */
function Accepted({ rows, words }: { rows: Import["accepted"]; words: ImportWords }) {
  const names = [...new Set(rows.flatMap((row) => Object.keys(row)))].filter((name) => !/Id$/.test(name));
  return (
    <table className="ruled accepted">
      <caption>{words.firstRows}</caption>
      <thead>
        <tr>
          {names.map((name) => (
            <th key={name} scope="col">
              {name}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={JSON.stringify(row)}>
            {names.map((name) => (
              <td key={name} className="number" data-head={words.fields[name] ?? name}>
                {cellText(row[name])}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function cellText(value: unknown): string {
  if (value === undefined || value === null) return "";
  if (typeof value === "number") return String(Number(value.toPrecision(6)));
  if (Array.isArray(value)) return value.map((one) => cellText(one)).join("; ");
  if (typeof value === "object") {
    return Object.values(value)
      .map((one) => cellText(one))
      .filter((text) => text !== "")
      .join(" ");
  }
  return String(value);
}
