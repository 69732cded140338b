"use client";

import Link from "next/link";
import { useEffect, useRef, useState } from "react";

/** What is worth measuring, in words. */
export interface WorthList {
  items: {
    key: string;
    ruleId: string;
    rule: string;
    subject: string;
    measure: string;
    text: string;
    how: string;
    cost: string;
  }[];
  /** Said after the list, or in its place. */
  rest: string | null;
}

interface Props {
  farmId: string;
  waiting: string;
  failed: string;
}

/**
 * For each answer on a farm, the one measurement that would narrow it most. Running every rule again takes seconds, so it
 * is asked for once somebody comes to read it.
 */
export function WorthMeasuring({ farmId, waiting, failed }: Props) {
  const place = useRef<HTMLDivElement>(null);
  const [read, setRead] = useState<WorthList | "waiting" | "failed">("waiting");

  useEffect(() => {
    const here = place.current;
    if (!here) return;
    const stop = new AbortController();
    const ask = async () => {
      const response = await fetch(`/farms/${farmId}/worth-measuring`, { signal: stop.signal });
      if (!response.ok) throw new Error(response.statusText);
      setRead((await response.json()) as WorthList);
    };
    const seen = new IntersectionObserver(([entry]) => {
      if (!entry?.isIntersecting) return;
      seen.disconnect();
      ask().catch(() => {
        if (!stop.signal.aborted) setRead("failed");
      });
    });
    seen.observe(here);
    return () => {
      seen.disconnect();
      stop.abort();
    };
  }, [farmId]);

  return (
    <div ref={place} aria-live="polite" aria-busy={read === "waiting"}>
      {typeof read === "string" ? (
        <p className="faint">{read === "waiting" ? waiting : failed}</p>
      ) : (
        <>
          <ol className="listing">
            {read.items.map((item) => (
              <li key={item.key} className="flow">
                <p>
                  <strong>{item.measure}</strong>{" "}
                  <span className="faint">
                    {item.subject}, <Link href={`/evidence#rule-${item.ruleId}`}>{item.rule}</Link>
                  </span>
                </p>
                <p>{item.text}</p>
                <p className="small">
                  {item.how} <span className="faint">{item.cost}</span>
                </p>
              </li>
            ))}
          </ol>
          {read.rest && <p className="faint">{read.rest}</p>}
        </>
      )}
    </div>
  );
}
