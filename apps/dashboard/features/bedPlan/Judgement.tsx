import type { MoveCost, PlanBreach, PlanCheck } from "@pith/rules";
import { render } from "@pith/rules";
import { inText } from "../../format/units.ts";
import type { View } from "./view.ts";
import { fill } from "./words.ts";

export const points = (value: number) =>
  new Intl.NumberFormat("en", { maximumFractionDigits: 1 }).format(Math.abs(value) < 0.05 ? 0 : value);

/** How much better or worse a change is, in words. */
export function changeText(total: number, { words }: View): string {
  if (Math.abs(total) < 0.05) return words.same;
  return fill(total < 0 ? words.better : words.worse, { points: points(Math.abs(total)) });
}

/** So many sentences stand open; the others are folded away. */
const SHOWN = 6;

interface Props {
  check: PlanCheck;
  view: View;
  /** What the block that is taken up would change. */
  change: MoveCost | null;
}

/** Rules that the plan breaks, what it costs, and what nobody can judge; during a move also what that would change. */
export function Judgement({ check, view, change }: Props) {
  const { words } = view;
  const hard = check.hard.filter(({ kind }) => kind !== "unplaced");
  const said = (b: PlanBreach) => render(b.text, view.reader);
  const mended = new Set(change?.mends.map(said));
  const staying = hard.filter((b) => !mended.has(said(b)));
  return (
    <section className="plan-judgement flow" aria-label={words.costs}>
      <h2>{words.breaches}</h2>
      {hard.length === 0 && !change?.breaks.length && <p>{words.holds}</p>}
      <ul className="plan-breaches plain">
        {listed(change?.breaks, view, words.newly)}
        {listed(change?.mends, view, words.mended)}
        {listed(staying.slice(0, SHOWN), view)}
      </ul>
      {staying.length > SHOWN && (
        <details>
          <summary>{fill(words.moreBreaches, { n: staying.length - SHOWN })}</summary>
          <ul className="plan-breaches plain">{listed(staying.slice(SHOWN), view)}</ul>
        </details>
      )}
      <h2>{words.costs}</h2>
      <Costs check={check} view={view} change={change} />
      <Unknowns check={check} view={view} />
    </section>
  );
}

function listed(breaches: PlanBreach[] | undefined, view: View, head?: string) {
  return breaches?.map((b) => {
    const text = render(b.text, view.reader);
    return (
      <li key={`${head}${text}`} className={head === view.words.mended ? "is-mended" : undefined}>
        <span aria-hidden="true">{head === view.words.mended ? "✓" : "†"}</span>{" "}
        {head && <strong>{head}: </strong>}
        {text}
      </li>
    );
  });
}

function Costs({ check, view, change }: Props) {
  const { words, units } = view;
  const amount = (kind: PlanCheck["soft"][number]["kind"], value: number) =>
    kind === "walk"
      ? inText(value, "m", units, view.reader.language)
      : `${points(value)} ${words.units[kind]}`;
  return (
    <table className="ruled plan-costs">
      <thead>
        <tr>
          <th scope="col">{words.cost}</th>
          <th scope="col" className="value">
            {words.points}
          </th>
          {change && (
            <th scope="col" className="value">
              {words.then}
            </th>
          )}
        </tr>
      </thead>
      <tbody>
        {check.soft.map((c) => {
          const by = change?.soft.find((s) => s.kind === c.kind);
          const then = c.cost + (by?.cost ?? 0);
          return (
            <tr key={c.kind} data-cost={c.kind}>
              <th scope="row">
                {render(c.name, view.reader)}
                <span className="plan-amount number">
                  {amount(c.kind, c.amount)}
                  {by && Math.abs(by.amount) > 1e-6 && ` → ${amount(c.kind, c.amount + by.amount)}`}
                </span>
              </th>
              <td className="value" data-head={words.points}>
                {points(c.cost)}
              </td>
              {change && (
                <td
                  className={by && Math.abs(by.cost) > 0.05 ? "value is-changed" : "value"}
                  data-head={words.then}
                >
                  {points(then)}
                </td>
              )}
            </tr>
          );
        })}
      </tbody>
      <tfoot>
        <tr>
          <th scope="row">{words.total}</th>
          <td className="value" data-head={words.points} data-total>
            {points(check.total)}
          </td>
          {change && (
            <td className="value is-changed" data-head={words.then} data-total-then>
              {points(check.total + change.total)}
            </td>
          )}
        </tr>
      </tfoot>
    </table>
  );
}

function Unknowns({ check, view }: { check: PlanCheck; view: View }) {
  const { words } = view;
  if (check.unknown.length === 0) return null;
  const kinds = [...new Set(check.unknown.map(({ kind }) => kind))];
  return (
    <>
      <h2>{words.unknown}</h2>
      <ul className="plain unknown small">
        {kinds.map((kind) => {
          const these = check.unknown.filter((u) => u.kind === kind);
          const whose = new Set(
            these.flatMap(({ bedIds, blockIds }) =>
              bedIds.length > 0 ? bedIds.map(view.bedName) : blockIds.map(view.blockName),
            ),
          );
          return (
            <li key={kind}>
              {fill(words.unknownLine, { what: words.unknowns[kind], whose: [...whose].join(", ") })}
            </li>
          );
        })}
      </ul>
    </>
  );
}
