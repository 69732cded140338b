"use client";

import type { Column, Import } from "@pith/contract";
import { type FormEvent, useEffect, useRef, useState } from "react";
import { Field } from "../forms/Form.tsx";
import type { Choice, FieldView, FormState } from "../forms/plan.ts";
import { decode } from "./decode.ts";
import { longWork, type Progress } from "./longWork.ts";
import { Preview } from "./Preview.tsx";
import { Questions } from "./Questions.tsx";
import { Settle } from "./Settle.tsx";
import { Working } from "./Working.tsx";
import type { ImportWords } from "./words.ts";

/** What the import desk sends: the file's text and what was said about it. */
interface ImportRequest {
  kind: Import["kind"];
  fileName: string;
  csv: string;
  siteId?: string;
  bedId?: string;
  issuedAt?: string;
  depthCm?: number;
  labName?: string;
  columns?: Column[];
}

interface Props {
  /** Where the farm's imports are: each has its page there. */
  imports: string;
  /** Laboratories whose columns are remembered. */
  labs: string[];
  sites: Choice[];
  beds: Choice[];
  units: { depth: string; toCm: number };
  /** How large a file of each kind may be. */
  mostBytes: Record<Import["kind"], number>;
  statusOf: (importId: string) => Promise<string | null>;
  discard: (importId: string) => Promise<void>;
  words: ImportWords;
}

/** Chooses a file, shows how it is read, asks what it does not say, and only then saves. The text never leaves the page in between. */
export function ImportDesk({
  imports,
  labs,
  sites,
  beds,
  units,
  mostBytes,
  statusOf,
  discard,
  words,
}: Props) {
  const [kind, setKind] = useState<Import["kind"]>("soil-tests");
  const [state, setState] = useState<FormState>({ attempt: 0, message: null, problems: {}, typed: {} });
  const [request, setRequest] = useState<ImportRequest | null>(null);
  const [read, setRead] = useState<Import | null>(null);
  const [busy, setBusy] = useState(false);
  const [stopped, setStopped] = useState(false);
  const [progress, setProgress] = useState<Progress | null>(null);
  const stop = useRef<AbortController | null>(null);
  const form = useRef<HTMLFormElement>(null);
  const result = useRef<HTMLElement>(null);
  const note = useRef<HTMLParagraphElement>(null);

  useEffect(() => {
    if (state.attempt === 0) return;
    form.current?.querySelector<HTMLElement>("[aria-invalid=true], [role=alert]")?.focus();
  }, [state]);
  // The button that stopped it is gone, and the cursor with it.
  useEffect(() => {
    if (stopped) note.current?.focus();
  }, [stopped]);
  useEffect(() => {
    if (read) result.current?.focus();
  }, [read]);

  const refuse = (message: string | null, problems: Record<string, string>) => {
    setRead(null);
    setState(({ attempt, typed }) => ({ attempt: attempt + 1, message, problems, typed }));
  };
  const look = async (wanted: ImportRequest) => {
    const controller = new AbortController();
    stop.current = controller;
    setRequest(wanted);
    setProgress(null);
    setStopped(false);
    setBusy(true);
    const ended = await longWork(`${imports}/read`, wanted, controller.signal, setProgress);
    if (ended.how === "signed-out") return window.location.reload();
    setBusy(false);
    switch (ended.how) {
      case "done":
        setState((before) => ({ ...before, message: null, problems: {} }));
        return setRead(ended.value);
      case "stopped":
        return setStopped(true);
      case "refused":
        return refuse(ended.message, ended.problems);
      default:
        return refuse(words.unreachable, {});
    }
  };

  const submit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    if (busy) return;
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
    void file.arrayBuffer().then((bytes) =>
      look({
        kind,
        fileName: file.name,
        csv: decode(bytes),
        siteId: text("siteId") || undefined,
        bedId: text("bedId") || undefined,
        labName: text("labName") || undefined,
        depthCm: depth === "" ? undefined : Number(depth) * units.toCm,
        issuedAt: issued === "" ? undefined : new Date(issued).toISOString(),
      }),
    );
  };

  const again = (columns: Column[]) => {
    if (request && !busy) void look({ ...request, columns });
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
            <div className="field">
              <label htmlFor="f-labName">
                {words.lab}
                <span className="optional"> {words.optional}</span>
              </label>
              <input
                id="f-labName"
                name="labName"
                list="known-labs"
                maxLength={80}
                autoComplete="off"
                aria-describedby="f-labName-hint"
              />
              <datalist id="known-labs">
                {labs.map((lab) => (
                  <option key={lab} value={lab} />
                ))}
              </datalist>
              <p id="f-labName-hint" className="hint">
                {words.labHint}
              </p>
            </div>
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
      {busy && <Working progress={progress} stop={() => stop.current?.abort()} words={words} />}
      {stopped && (
        <p ref={note} className="notice" role="status" tabIndex={-1}>
          {words.stopped}
        </p>
      )}
      {read && request && (
        <section ref={result} tabIndex={-1} className="preview flow" aria-label={words.preview}>
          <h2>{read.fileName}</h2>
          {read.questions.length > 0 ? (
            <Questions key={read.id} read={read} busy={busy} words={words} answer={again} />
          ) : (
            <Settle
              key={read.id}
              page={`${imports}/${read.id}`}
              statusOf={() => statusOf(read.id)}
              discard={() => discard(read.id)}
              nothing={read.acceptedCount === 0}
              words={words}
            />
          )}
          <Preview
            key={`${read.id} preview`}
            read={read}
            page={`${imports}/${read.id}`}
            change={again}
            beds={beds}
            words={words}
          />
        </section>
      )}
    </>
  );
}
