import type { ReactNode } from "react";

/** Several rows with one margin of notes beside them, so that long notes leave no hole in the text. */
export function Spread({ notes, children }: { notes: ReactNode; children: ReactNode }) {
  return (
    <div className="spread">
      <div>{children}</div>
      <aside className="notes">{notes}</aside>
    </div>
  );
}
