import type { ReactNode } from "react";

interface Props {
  /** Stands in the left margin: a side-head, a day, a number. */
  side?: ReactNode;
  /** Stands in the right margin: what supports the text. */
  notes?: ReactNode;
  children: ReactNode;
  id?: string;
  className?: string;
  /** The text runs into the right margin, for tables. */
  wide?: boolean;
}

/** One row of a leaf. On a phone the margins fold above and below the text. */
export function Row({ side, notes, children, id, className = "", wide = false }: Props) {
  return (
    <section id={id} className={`leaf-row ${className}`}>
      <div className="side">{side}</div>
      <div className={wide ? "text wide" : "text"}>{children}</div>
      {notes && <aside className="notes">{notes}</aside>}
    </section>
  );
}
