import { chooseOffice } from "../features/session/office.ts";
import type { Seat } from "../server/seat.ts";

/** Whose bulletin it is; whoever belongs to several offices turns to another here. */
export function OfficeName({ seat, label }: { seat: Seat; label: string }) {
  if (seat.offices.length < 2) return <span className="office">{seat.officeName}</span>;
  return (
    <details className="offices">
      <summary>
        <span className="office">{seat.officeName}</span> <span className="faint">{label}</span>
      </summary>
      <form action={chooseOffice}>
        {seat.offices
          .filter(({ id }) => id !== seat.officeId)
          .map(({ id, name }) => (
            <button key={id} type="submit" name="office" value={id} className="quiet">
              {name}
            </button>
          ))}
      </form>
    </details>
  );
}
