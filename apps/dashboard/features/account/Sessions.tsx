import type { Session } from "@pith/contract";
import { getTranslations } from "next-intl/server";
import { dayAt, instantText, longDayText } from "../../format/dates.ts";
import { endOtherSessions, endSession } from "./actions.ts";

/** Where the person is signed in; each can be ended. */
export async function Sessions({ sessions, zone }: { sessions: Session[]; zone: string }) {
  const t = await getTranslations("account");
  return (
    <>
      <ul className="listing">
        {sessions.map(({ id, startedAt, seenAt, networkAddress, browser, current }) => (
          <li key={id}>
            <p>
              <strong>{browserName(browser) || t("unknownBrowser")}</strong>
              {current && <> {t("thisOne")}</>}
            </p>
            <p className="faint">
              {t("session", {
                from: instantText(startedAt, zone),
                seen: longDayText(dayAt(seenAt, zone)),
                address: networkAddress || t("unknownAddress"),
              })}
            </p>
            {!current && (
              <form action={endSession.bind(null, id)}>
                <button
                  type="submit"
                  className="quiet"
                  aria-label={t("endNamed", { from: instantText(startedAt, zone) })}
                >
                  {t("end")}
                </button>
              </form>
            )}
          </li>
        ))}
      </ul>
      {sessions.length > 1 && (
        <form action={endOtherSessions}>
          <button type="submit" className="press">
            {t("endOthers")}
          </button>
        </form>
      )}
    </>
  );
}

/** The kind of browser and machine, as far as it says so itself. */
function browserName(said: string | null): string {
  const browser = /(Firefox|Edg|Chrome|Safari)\//.exec(said ?? "")?.[1]?.replace("Edg", "Edge");
  const machine = /(Android|iPhone|iPad|Windows|Mac OS X|Linux)/.exec(said ?? "")?.[1];
  return [browser, machine].filter(Boolean).join(", ");
}
