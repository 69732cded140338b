"use client";

import type { Column, Import } from "@pith/contract";
import type { FormEvent } from "react";
import { fill, type ImportWords } from "./words.ts";

/** How each column is read, which of them as the last time, and the way to change it. */
export function Columns({
  read,
  change,
  words,
}: {
  read: Import;
  /** Left out where the file itself is not at hand any more. */
  change?: ((columns: Column[]) => void) | undefined;
  words: ImportWords;
}) {
  const { lab } = read;
  const before = new Set(lab?.readAsBefore);
  return (
    <>
      <h3>{words.columns}</h3>
      {lab && (
        <p>
          {before.size > 0
            ? fill(words.asBefore, { lab: lab.name, count: before.size, of: read.columns.length })
            : fill(read.status === "saved" ? words.remembered : words.willRemember, { lab: lab.name })}
        </p>
      )}
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
              <td data-head={words.readAs}>
                {column.field !== null ? (
                  fieldName(column.field, words)
                ) : (
                  <span className="unknown">{words.leftOut}</span>
                )}
                {before.has(column.header) && <span className="faint small"> {words.asLastTime}</span>}
              </td>
              <td>{meaning(column, words)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {change && <Change read={read} change={change} words={words} />}
    </>
  );
}

/** Another field for a column; its unit and method are then asked, as they are where only they were wrong. */
function Change({
  read,
  change,
  words,
}: {
  read: Import;
  change: (columns: Column[]) => void;
  words: ImportWords;
}) {
  const fields = words.columnFields[read.kind === "soil-tests" ? "soil" : "weather"];
  const submit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const data = new FormData(event.currentTarget);
    change(
      read.columns.map((column, i) => {
        const field = String(data.get(`field${i}`) ?? "") || null;
        if (field === column.field && !data.has(`again${i}`)) return column;
        const open = { header: column.header, field, unit: null, extractant: null };
        return field === column.field && column.form ? { ...open, form: null } : open;
      }),
    );
  };
  return (
    <details>
      <summary>{words.change}</summary>
      <form className="form" onSubmit={submit}>
        <p>{words.changeHelp}</p>
        {read.columns.map((column, i) => (
          <fieldset key={column.header} className="form-row change-row">
            <legend className="unseen">{column.header}</legend>
            <div className="field field-choice">
              <label htmlFor={`field${i}`}>{column.header}</label>
              <select id={`field${i}`} name={`field${i}`} defaultValue={column.field ?? ""}>
                <option value="">{words.leftOut}</option>
                {fields.map((field) => (
                  <option key={field} value={field}>
                    {fieldName(field, words)}
                  </option>
                ))}
              </select>
            </div>
            {column.unit !== null && column.unit !== "pH" && (
              <div className="field field-flag">
                <label htmlFor={`again${i}`}>{words.askAgain}</label>
                <input id={`again${i}`} name={`again${i}`} type="checkbox" />
              </div>
            )}
          </fieldset>
        ))}
        <p className="form-end">
          <button type="submit" className="press">
            {words.readAgain}
          </button>
        </p>
      </form>
    </details>
  );
}

const fieldName = (field: string, words: ImportWords) => words.fields[field] ?? field;

/** What a column's numbers mean: their unit and form, the method, and the mass of soil. */
function meaning({ unit, form, field, extractant, basis, densityKgPerM3 }: Column, words: ImportWords) {
  const word = (said: string) => words.choices[said] ?? said;
  const unitText = unit === null ? null : form && form !== field ? `${word(unit)} ${form}` : word(unit);
  const parts = [
    unitText,
    extractant && word(extractant),
    basis && word(basis),
    basis === "depth-and-density" && densityKgPerM3 ? `${densityKgPerM3} kg/m³` : null,
  ];
  return parts.filter(Boolean).join(", ");
}
