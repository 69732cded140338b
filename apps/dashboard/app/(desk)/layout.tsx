import type { ReactNode } from "react";
import { SignalHere } from "../../features/offline/SignalHere.tsx";
import { seat } from "../../server/seat.ts";
import { Colophon } from "../../ui/Colophon.tsx";
import { Masthead } from "../../ui/Masthead.tsx";

/** Every page of somebody who is signed in. */
export default async function DeskLayout({ children }: { children: ReactNode }) {
  const mine = await seat();
  return (
    <>
      <Masthead seat={mine} />
      <main id="main" tabIndex={-1}>
        {mine?.role === "farmer" && <SignalHere office={mine.officeId} />}
        {children}
      </main>
      <Colophon seat={mine} />
    </>
  );
}
