"use client";

import type { Column, Import } from "@pith/contract";
import { useState } from "react";
import type { Choice } from "../forms/plan.ts";
import { Accepted } from "./Accepted.tsx";
import { Columns } from "./Columns.tsx";
import { fill, type ImportWords } from "./words.ts";

interface Props {
  read: Import;
  /** The import's own page, under which its lists can be fetched. */
  page: string;
  change?: (columns: Column[]) => void;
  /** The farm's beds, to name them by. */
  beds: Choice[];
  words: ImportWords;
}

/** What a file was read as: its columns, the rows that would be stored, and each refused row with its reason. */
export function Preview({ read, page, change, beds, words }: Props) {
  const { refused, duplicates } = read;
  // Before it is known what the columns are, no row was looked at.
  if (read.questions.length > 0) {
    return (
      <div className="flow">
        <Columns read={read} change={change} words={words} />
      </div>
    );
  }
  return (
    <div className="flow">
      <dl className="facts tallies">
        <dt>{words.acceptedTitle}</dt>
        <dd className="number">{read.acceptedCount.toLocaleString("en")}</dd>
        <dt>{words.refusedTitle}</dt>
        <dd className="number">{read.refusedCount.toLocaleString("en")}</dd>
        <dt>{words.duplicates}</dt>
        <dd className="number">{read.duplicateCount.toLocaleString("en")}</dd>
      </dl>
      <Columns read={read} change={change} words={words} />
      <h3>{words.refusedTitle}</h3>
      {refused.length === 0 ? (
        <p>{words.noneRefused}</p>
      ) : (
        <>
          <p>
            <a className="tap" href={`${page}/refused.csv`} download={`refused-${read.fileName}.csv`}>
              {fill(words.download, { count: refused.length.toLocaleString("en") })}
            </a>
          </p>
          <Refused refused={refused} words={words} />
        </>
      )}
      {duplicates.length > 0 && <Duplicates duplicates={duplicates} words={words} />}
      <h3>{words.acceptedTitle}</h3>
      {read.accepted.length === 0 ? (
        <p>{words.noneAccepted}</p>
      ) : (
        <Accepted rows={read.accepted} beds={beds} words={words} />
      )}
    </div>
  );
}

/** More than these are shown when they are asked for: thousands of table rows are slow to lay out on a phone. */
const FIRST = 100;

/** A list's first entries, and the rest once they are asked for. */
function useFirst<T>(all: T[], words: ImportWords) {
  const [whole, setWhole] = useState(false);
  const shown = whole ? all : all.slice(0, FIRST);
  const more =
    shown.length < all.length ? (
      <p>
        <button type="button" className="quiet" onClick={() => setWhole(true)}>
          {fill(words.showAll, { count: all.length.toLocaleString("en") })}
        </button>
      </p>
    ) : null;
  return { shown, more };
}

function Refused({ refused, words }: { refused: Import["refused"]; words: ImportWords }) {
  const { shown, more } = useFirst(refused, words);
  return (
    <>
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
          {shown.map(({ line, column, reason, value }) => (
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
      {more}
    </>
  );
}

function Duplicates({ duplicates, words }: { duplicates: Import["duplicates"]; words: ImportWords }) {
  const { shown, more } = useFirst(duplicates, words);
  return (
    <details>
      <summary>{words.whichDuplicates}</summary>
      <ul className="plain number">
        {shown.map(({ line, sameAs }) => (
          <li key={line}>
            {sameAs === null ? fill(words.isStored, { line }) : fill(words.repeats, { line, other: sameAs })}
          </li>
        ))}
      </ul>
      {more}
    </details>
  );
}
