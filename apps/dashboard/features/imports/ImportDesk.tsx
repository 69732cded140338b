"use client";

import type { Column, Import } from "@pith/contract";
import { type FormEvent, useEffect, useRef, useState, useTransition } from "react";
import { Field } from "../forms/Form.tsx";
import type { Choice, FieldView, FormState } from "../forms/plan.ts";
import type { ImportRequest, Previewed } from "./actions.ts";
import { decode } from "./decode.ts";
import { Preview } from "./Preview.tsx";
import { Settle } from "./Settle.tsx";
import type { ImportWords } from "./words.ts";

interface Props {
  sites: Choice[];
  beds: Choice[];
  units: { depth: string; toCm: number };
  /** How large a file of each kind may be. */
  mostBytes: Record<Import["kind"], number>;
  preview: (request: ImportRequest) => Promise<Previewed>;
  save: (importId: string) => Promise<{ message: string }>;
  discard: (importId: string) => Promise<void>;
  words: ImportWords;
}

/** Chooses a file, shows how it is read, asks what it does not say, and only then saves. The text never leaves the page in between. */
export function ImportDesk({ sites, beds, units, mostBytes, preview, save, discard, words }: Props) {
  const [kind, setKind] = useState<Import["kind"]>("soil-tests");
  const [state, setState] = useState<FormState>({ attempt: 0, message: null, problems: {}, typed: {} });
  const [request, setRequest] = useState<ImportRequest | null>(null);
  const [read, setRead] = useState<Import | null>(null);
  const [busy, start] = useTransition();
  const form = useRef<HTMLFormElement>(null);
  const result = useRef<HTMLElement>(null);

  useEffect(() => {
    if (state.attempt === 0) return;
    form.current?.querySelector<HTMLElement>("[aria-invalid=true], [role=alert]")?.focus();
  }, [state]);
  useEffect(() => {
    if (read) result.current?.focus();
  }, [read]);

  const refuse = (message: string | null, problems: Record<string, string>) => {
    setRead(null);
    setState(({ attempt, typed }) => ({ attempt: attempt + 1, message, problems, typed }));
  };
  const look = async (wanted: ImportRequest) => {
    setRequest(wanted);
    const answer = await preview(wanted);
    if (!answer.done) return refuse(answer.message, answer.problems);
    setState((before) => ({ ...before, message: null, problems: {} }));
    setRead(answer.preview);
  };

  const submit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const data = new FormData(event.currentTarget);
    const text = (name: string) => String(data.get(name) ?? "").trim();
    const typed = Object.fromEntries(
      [...data].filter((pair): pair is [string, string] => typeof pair[1] === "string"),
    );
    setState((before) => ({ ...before, typed }));
    const file = data.get("csv");
    if (!(file instanceof File) || file.size === 0) return refuse(null, { csv: words.noFile });
    if (file.size > mostBytes[kind]) {
      return refuse(null, { csv: kind === "weather" ? words.weatherTooLarge : words.tooLarge });
    }
    const depth = text("depthCm");
    if (depth !== "" && !Number.isFinite(Number(depth))) return refuse(null, { depthCm: words.notANumber });
    const issued = text("issuedAt");
    if (kind === "forecast" && issued === "") return refuse(null, { issuedAt: words.needed });
    start(async () => {
      await look({
        kind,
        fileName: file.name,
        csv: decode(await file.arrayBuffer()),
        siteId: text("siteId") || undefined,
        bedId: text("bedId") || undefined,
        labName: text("labName") || undefined,
        depthCm: depth === "" ? undefined : Number(depth) * units.toCm,
        issuedAt: issued === "" ? undefined : new Date(issued).toISOString(),
      });
    });
  };

  const field = (name: string, label: string, more: Partial<FieldView> = {}) => (
    <Field
      key={name}
      field={{
        name,
        label,
        kind: "text",
        unit: null,
        hint: null,
        required: false,
        value: "",
        choices: [],
        ...more,
      }}
      state={state}
      optional={words.optional}
    />
  );
  const kinds = [
    ["soil-tests", words.soilTests],
    ["weather", words.weather],
    ["forecast", words.forecast],
  ] as const;

  return (
    <>
      <form ref={form} className="form" onSubmit={submit} noValidate>
        {state.message && (
          <p className="refusal" role="alert" tabIndex={-1}>
            {state.message}
          </p>
        )}
        <fieldset className="choose">
          <legend>{words.kind}</legend>
          {kinds.map(([value, label]) => (
            <label key={value}>
              <input
                type="radio"
                name="kind"
                value={value}
                checked={kind === value}
                onChange={() => {
                  setKind(value);
                  setRead(null);
                }}
              />
              {label}
            </label>
          ))}
        </fieldset>
        <div className="field">
          <label htmlFor="f-csv">{words.file}</label>
          <input
            id="f-csv"
            name="csv"
            type="file"
            accept=".csv,.txt,.tsv,text/csv,text/plain"
            aria-invalid={state.problems.csv ? true : undefined}
            aria-describedby={state.problems.csv ? "f-csv-hint f-csv-problem" : "f-csv-hint"}
          />
          <p id="f-csv-hint" className="hint">
            {kind === "weather" ? words.weatherHint : words.fileHint}
          </p>
          {state.problems.csv && (
            <p id="f-csv-problem" className="problem">
              {state.problems.csv}
            </p>
          )}
        </div>
        {kind === "soil-tests" ? (
          <>
            {field("bedId", words.bed, {
              kind: "choice",
              choices: [{ value: "", label: words.bedFromFile }, ...beds],
            })}
            {field("depthCm", words.depth, { kind: "number", unit: units.depth, hint: words.depthHint })}
            {field("labName", words.lab)}
          </>
        ) : (
          field("siteId", words.site, { kind: "choice", choices: sites, required: true })
        )}
        {kind === "forecast" && field("issuedAt", words.issuedAt, { kind: "moment", required: true })}
        <p className="form-end">
          <button type="submit" className="press" aria-disabled={busy}>
            {busy ? words.reading : words.read}
          </button>
        </p>
      </form>
      {read && request && (
        <section ref={result} tabIndex={-1} className="preview flow" aria-label={words.preview}>
          <h2>{read.fileName}</h2>
          {read.questions.length > 0 ? (
            <Questions
              read={read}
              busy={busy}
              words={words}
              answer={(columns) => start(() => look({ ...request, columns }))}
            />
          ) : (
            <Settle
              save={() => save(read.id)}
              discard={() => discard(read.id)}
              nothing={read.acceptedCount === 0}
              words={words}
            />
          )}
          <Preview read={read} words={words} />
        </section>
      )}
    </>
  );
}

interface QuestionsProps {
  read: Import;
  busy: boolean;
  words: ImportWords;
  answer: (columns: Column[]) => void;
}

/** What the file does not say itself: asked for each column, never guessed. */
function Questions({ read, busy, words, answer }: QuestionsProps) {
  const [open, setOpen] = useState<string[]>([]);
  const submit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const data = new FormData(event.currentTarget);
    const said = read.questions.map((q, i) => ({ ...q, choice: String(data.get(`q${i}`) ?? "") }));
    const left = said.filter((q) => q.choice === "").map((q) => q.ask);
    setOpen(left);
    if (left.length > 0) return;
    answer(
      read.columns.map((column) => ({
        ...column,
        ...Object.fromEntries(said.filter((q) => q.header === column.header).map((q) => [q.about, q.choice])),
      })),
    );
  };
  return (
    <form className="form" onSubmit={submit} noValidate>
      <h3>{words.questions}</h3>
      <p>{words.questionsHelp}</p>
      {read.questions.map((question, index) => (
        <div key={question.ask} className="field">
          <label htmlFor={`q${index}`}>{question.ask}</label>
          <select
            id={`q${index}`}
            name={`q${index}`}
            defaultValue=""
            aria-invalid={open.includes(question.ask) ? true : undefined}
            aria-describedby={open.includes(question.ask) ? `q${index}-problem` : undefined}
          >
            <option value="">{words.choose}</option>
            {question.choices.map((choice) => (
              <option key={choice} value={choice}>
                {choice}
              </option>
            ))}
          </select>
          {open.includes(question.ask) && (
            <p id={`q${index}-problem`} className="problem">
              {words.needed}
            </p>
          )}
        </div>
      ))}
      <p className="form-end">
        <button type="submit" className="press" aria-disabled={busy}>
          {busy ? words.reading : words.answer}
        </button>
      </p>
    </form>
  );
}
