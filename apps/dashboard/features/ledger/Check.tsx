"use client";

import { useActionState } from "react";
import { once } from "../forms/once.ts";

export interface Finding {
  good: boolean;
  text: string;
  details: string[];
}

interface Props {
  action: (before: Finding | null) => Promise<Finding>;
  label: string;
  busy: string;
}

/** A check for anybody to press, with what it found. */
export function Check({ action, label, busy }: Props) {
  const [finding, send, running] = useActionState(action, null);
  return (
    <form action={send} onSubmit={once(running)}>
      <button type="submit" className="quiet" aria-disabled={running}>
        {running ? busy : label}
      </button>
      <div role="status">
        {finding && (
          <>
            <p className={finding.good ? "notice" : "refusal"}>{finding.text}</p>
            {finding.details.length > 0 && (
              <ul className="listing small">
                {finding.details.map((detail) => (
                  <li key={detail}>{detail}</li>
                ))}
              </ul>
            )}
          </>
        )}
      </div>
    </form>
  );
}
