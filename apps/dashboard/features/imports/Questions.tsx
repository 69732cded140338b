"use client";

import type { Column, Import } from "@pith/contract";
import { type FormEvent, useState } from "react";
import type { ImportWords } from "./words.ts";

type Question = Import["questions"][number];

interface Props {
  read: Import;
  busy: boolean;
  words: ImportWords;
  answer: (columns: Column[]) => void;
}

/** So many alike are answered in one go. */
const MANY = 3;

/** What the file does not say itself: asked for each column, never guessed. */
export function Questions({ read, busy, words, answer }: Props) {
  const [said, setSaid] = useState<Record<number, string>>({});
  const [tried, setTried] = useState(false);
  const numbered = read.questions.map((question, index) => ({ question, index }));
  const kinds = [...new Set(read.questions.map((q) => q.about))];
  const isOpen = ({ question, index }: { question: Question; index: number }) =>
    !isAnswer(question, said[index] ?? "");

  const submit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    setTried(true);
    const first = numbered.find(isOpen);
    if (first) return document.getElementById(`q${first.index}`)?.focus();
    answer(
      read.columns.map((column) =>
        numbered.reduce((now, { question, index }) => answered(now, question, said[index] ?? ""), column),
      ),
    );
  };

  return (
    <form className="form" onSubmit={submit} noValidate>
      <h3>{words.questions}</h3>
      <p>{words.questionsHelp}</p>
      {kinds.map((about) => {
        const group = numbered.filter(({ question }) => question.about === about);
        const alike = shared(group.map(({ question }) => question));
        const missing = group.filter(isOpen);
        return (
          <fieldset key={about} className="form-section">
            <legend>{words.abouts[about]}</legend>
            {words.aboutHelp[about] && <p className="hint">{words.aboutHelp[about]}</p>}
            {alike && (
              <div className="field field-choice all-alike">
                <label htmlFor={`all-${about}`}>{words.allAlike}</label>
                <select
                  id={`all-${about}`}
                  value=""
                  onChange={(event) =>
                    setSaid((before) => ({
                      ...before,
                      ...Object.fromEntries(missing.map(({ index }) => [index, event.target.value])),
                    }))
                  }
                >
                  <option value="">{words.choose}</option>
                  {alike.map((choice) => (
                    <option key={choice} value={choice}>
                      {words.choices[choice] ?? choice}
                    </option>
                  ))}
                </select>
              </div>
            )}
            {group.map(({ question, index }) => (
              <Ask
                key={question.headers.join("\n")}
                question={question}
                id={`q${index}`}
                value={said[index] ?? ""}
                missing={tried && isOpen({ question, index })}
                words={words}
                onSay={(value) => setSaid((before) => ({ ...before, [index]: value }))}
              />
            ))}
          </fieldset>
        );
      })}
      <p className="form-end">
        <button type="submit" className="press" aria-disabled={busy}>
          {busy ? words.reading : words.answer}
        </button>
      </p>
    </form>
  );
}

interface AskProps {
  question: Question;
  id: string;
  value: string;
  missing: boolean;
  words: ImportWords;
  onSay: (value: string) => void;
}

function Ask({ question, id, value, missing, words, onSay }: AskProps) {
  const { headers, number } = question;
  const described = [headers.length > 1 && `${id}-columns`, missing && `${id}-problem`].filter(Boolean);
  const common = {
    id,
    value,
    "aria-invalid": missing ? true : undefined,
    "aria-describedby": described.join(" ") || undefined,
    onChange: (event: { target: { value: string } }) => onSay(event.target.value),
  };
  return (
    <div className={number ? "field field-number" : "field field-choice"}>
      <label htmlFor={id}>{question.ask}</label>
      <div className="field-line">
        {number ? (
          <>
            <input {...common} type="text" inputMode="decimal" autoComplete="off" />
            <span className="unit">{number.unit}</span>
          </>
        ) : (
          <select {...common}>
            <option value="">{words.choose}</option>
            {question.choices.map((choice) => (
              <option key={choice} value={choice}>
                {words.choices[choice] ?? choice}
              </option>
            ))}
          </select>
        )}
      </div>
      {headers.length > 1 && (
        <p id={`${id}-columns`} className="hint">
          {headers.join(" · ")}
        </p>
      )}
      {missing && (
        <p id={`${id}-problem`} className="problem">
          {number ? `${number.low}–${number.high} ${number.unit}` : words.needed}
        </p>
      )}
    </div>
  );
}

/** The choices of questions that are many and alike; null where they are few or differ. */
function shared(questions: Question[]): string[] | null {
  const [first] = questions;
  if (!first || questions.length < MANY || first.choices.length === 0) return null;
  const choices = first.choices.filter((c) => questions.every((q) => q.choices.includes(c)));
  return choices.length > 1 ? choices : null;
}

function isAnswer({ number }: Question, said: string): boolean {
  if (!number) return said !== "";
  const value = Number(said);
  return said.trim() !== "" && value >= number.low && value <= number.high;
}

/** A column with one answer in its place. */
function answered(column: Column, { headers, about }: Question, said: string): Column {
  if (!headers.includes(column.header)) return column;
  switch (about) {
    case "field":
      return said === column.header ? column : { ...column, field: null };
    case "density":
      return { ...column, densityKgPerM3: Number(said) };
    default:
      return { ...column, [about]: said };
  }
}
