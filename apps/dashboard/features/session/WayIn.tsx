import type { ReactNode } from "react";
import { Colophon } from "../../ui/Colophon.tsx";
import { Masthead } from "../../ui/Masthead.tsx";
import { Row } from "../../ui/Row.tsx";

/** The leaf of somebody who is not signed in. */
export function WayIn({ title, notes, children }: { title: string; notes?: ReactNode; children: ReactNode }) {
  return (
    <>
      <Masthead seat={null} />
      <main id="main">
        <Row notes={notes}>
          <h1>{title}</h1>
          {children}
        </Row>
      </main>
      <Colophon seat={null} />
    </>
  );
}
