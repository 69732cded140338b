import type { ReactNode } from "react";

interface Props {
  id: string;
  label: string;
  unit?: string;
  optional?: string;
  problem?: string | undefined;
  children: (described: { id: string; "aria-invalid"?: true; "aria-describedby"?: string }) => ReactNode;
}

/** A label, a line to write on, its unit at the end and what is wrong with it beneath. */
export function Line({ id, label, unit, optional, problem, children }: Props) {
  const described = [unit && `${id}-unit`, problem && `${id}-problem`].filter(Boolean).join(" ");
  return (
    <div className="field">
      <label htmlFor={id}>
        {label} {optional && <span className="optional">{optional}</span>}
      </label>
      <div className="field-line">
        {children({
          id,
          ...(problem ? { "aria-invalid": true as const } : {}),
          ...(described ? { "aria-describedby": described } : {}),
        })}
        {unit && (
          <span id={`${id}-unit`} className="unit">
            {unit}
          </span>
        )}
      </div>
      {problem && (
        <p id={`${id}-problem`} className="problem" role="alert">
          {problem}
        </p>
      )}
    </div>
  );
}

/** A number as it was typed, a comma for its point allowed; undefined where it is none or out of range. */
export function numberIn(text: FormDataEntryValue | null, low: number, high: number): number | undefined {
  const typed = String(text ?? "").trim();
  const value = Number(typed.replace(",", "."));
  return typed === "" || !Number.isFinite(value) || value < low || value > high ? undefined : value;
}
