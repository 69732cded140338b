import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { homeOf, type Seat } from "../server/seat.ts";
import { NavLink } from "./NavLink.tsx";
import { OfficeName } from "./OfficeName.tsx";

const PLACES = {
  agent: ["round", "farms", "evidence", "ledger", "office"],
  farmer: ["today", "record"],
} as const;

/** Pages with an address of their own that are found through a place. */
const HOLDS: Record<string, readonly string[] | undefined> = {
  office: ["/settings", "/guides", "/standing-orders"],
};

/** The bulletin's head: its name, whose it is, where one can turn to. */
export async function Masthead({ seat }: { seat: Seat | null }) {
  const t = await getTranslations("places");
  return (
    <header className="masthead">
      <div className="masthead-inner">
        <Link href={seat ? homeOf(seat.role) : "/"} className="wordmark">
          Pith
        </Link>
        {seat && <OfficeName seat={seat} label={t("changeOffice")} />}
        {seat && !seat.needsSecondStep && (
          <nav aria-label={t("label")}>
            <ul>
              {PLACES[seat.role].map((place) => (
                <li key={place}>
                  <NavLink href={`/${place}`} holds={HOLDS[place]}>
                    {t(place)}
                  </NavLink>
                </li>
              ))}
            </ul>
          </nav>
        )}
      </div>
    </header>
  );
}
