import type { DraftDetail } from "@pith/contract";
import { type Message, type Reader, render } from "@pith/rules";
import { getTranslations } from "next-intl/server";
import { amountText, figureText } from "../format/measured.ts";

type RangeData = NonNullable<Extract<DraftDetail["answer"], { kind: "advice" }>["ranges"]>[number];
type Class = RangeData["classes"][number];

/** Vertical rules that each class has more than the one below it: the more there is, the denser the ruling. */
const RULES_MORE = 4;

/** The contents of a test on the rods of the guides that read them, a table of the same beneath each guide. */
export async function Ranges({ ranges, reader }: { ranges: RangeData[]; reader: Reader }) {
  const t = await getTranslations("ranges");
  const guides = [...new Map(ranges.map(({ guide }) => [guide.id, guide])).values()];
  return (
    <>
      <p className="faint">{t("scale")}</p>
      {guides.map((guide) => {
        const read = ranges.filter((range) => range.guide.id === guide.id);
        return (
          <section key={guide.id} className="ranges" aria-label={guide.title}>
            <h3>
              {guide.title} <GuideStatus status={guide.status} />
            </h3>
            {read.map((range) => (
              <RangeChart key={range.id} range={range} reader={reader} />
            ))}
            <RangeTable ranges={read} caption={guide.title} reader={reader} />
          </section>
        );
      })}
    </>
  );
}

/** What a guide's numbers are worth is said in words beside its title. */
async function GuideStatus({ status }: { status: RangeData["guide"]["status"] }) {
  const t = await getTranslations("ranges.statuses");
  const unverified = isUnverified(status);
  return <span className={unverified ? "guide-status unverified" : "guide-status"}>{t(status)}</span>;
}

const isUnverified = (status: RangeData["guide"]["status"]) => status === "memory" || status === "secondary";

/**
 * One content on a rod: a field for each class, ruled the denser the more it stands for, and a pin where the value is.
 * Fields are equally wide, so that a narrow class can be read as well as a wide one. No colour says good or bad.
 */
async function RangeChart({ range, reader }: { range: RangeData; reader: Reader }) {
  const t = await getTranslations("ranges");
  const words = await sayRange(range, reader);
  const count = range.classes.length;
  const width = 100 / count;
  return (
    <figure className={isUnverified(range.guide.status) ? "range unverified" : "range"}>
      <figcaption>
        <span className="range-name">{words.name}</span> <span className="number">{words.value}</span>{" "}
        <strong>{words.className}</strong>
        {words.printed && <span className="faint"> {t("printed", { value: words.printed })}</span>}
      </figcaption>
      <svg className="range-rod" aria-hidden="true">
        {range.classes.map((one, i) => (
          <g key={one.low}>
            <rect className="range-field" x={`${i * width}%`} y="18" width={`${width}%`} height="24" />
            {Array.from({ length: i * RULES_MORE }, (_, k) => percent(i, (k + 1) / (i * RULES_MORE + 1))).map(
              (x) => (
                <line key={x} className="range-rule" x1={x} x2={x} y1="18" y2="42" />
              ),
            )}
          </g>
        ))}
        <rect className="range-own" x={`${range.class * width}%`} y="18" width={`${width}%`} height="24" />
        <svg x={percent(range.class, shareOfClass(range))} y="0" overflow="visible" aria-hidden="true">
          <path className="range-halo" d="M0 4V46" />
          <path className="range-pin" d="M0 4V46" />
          <path className="range-head" d="M-6 3H6L0 15Z" />
        </svg>
      </svg>
      <ol className="range-classes">
        {words.classes.map(({ name, bounds }, i) => (
          <li key={bounds} className={i === range.class ? "own" : undefined}>
            {name} <span className="number">{bounds}</span>
          </li>
        ))}
      </ol>
    </figure>
  );

  function percent(at: number, share: number): string {
    return `${Number(((at + share) * width).toFixed(2))}%`;
  }
}

/** How far the value is through its class, 0 to 1. In the topmost, which has no end, ever nearer to it. */
function shareOfClass({ value, classes, class: at }: Pick<RangeData, "value" | "classes" | "class">) {
  const own = classes[at];
  if (!own) return 0.5;
  const { low, high } = own;
  if (high !== null) return high > low ? Math.min(1, Math.max(0, (value - low) / (high - low))) : 0.5;
  const below = classes[at - 1];
  const scale = (below ? low - below.low : low) || 1;
  const over = Math.max(0, value - low) / scale;
  return over / (1 + over);
}

async function RangeTable({
  ranges,
  caption,
  reader,
}: {
  ranges: RangeData[];
  caption: string;
  reader: Reader;
}) {
  const t = await getTranslations("ranges");
  const rows = await Promise.all(
    ranges.map(async (range) => ({ id: range.id, words: await sayRange(range, reader) })),
  );
  return (
    <details>
      <summary>{t("asTable")}</summary>
      <table className="ruled">
        <caption className="unseen">{caption}</caption>
        <thead>
          <tr>
            <th scope="col">{t("content")}</th>
            <th scope="col" className="value">
              {t("value")}
            </th>
            <th scope="col" className="value">
              {t("asPrinted")}
            </th>
            <th scope="col">{t("class")}</th>
            <th scope="col">{t("classes")}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ id, words }) => (
            <tr key={id}>
              <th scope="row">{words.name}</th>
              <td className="value">{words.value}</td>
              <td className="value" data-head={t("asPrinted")}>
                {words.printed}
              </td>
              <td>{words.className}</td>
              <td className="full">
                {words.classes.map(({ name, bounds }) => t("classBounds", { name, bounds })).join("; ")}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}

/** Everything of a range in the reader's words and units. */
async function sayRange(range: RangeData, reader: Reader) {
  const t = await getTranslations("ranges");
  // The wire cannot name the rules' closed list of units; the messages come from the rules themselves.
  const say = (message: Class["name"]) => render(message as Message, reader);
  const shown = (value: number) => figureText(value, range.unit, reader.units);
  const { reported } = range;
  return {
    name: say(range.name),
    value: amountText(range.value, range.unit, reader.units),
    printed: reported ? t("reported", { value: figureText(reported.value), unit: reported.unit }) : null,
    className: say(range.classes[range.class]?.name ?? range.name),
    classes: range.classes.map(({ name, low, high }, i) => ({
      name: say(name),
      bounds:
        high === null
          ? t("from", { low: shown(low) })
          : i === 0 && low === 0
            ? t("upTo", { high: shown(high) })
            : t("between", { low: shown(low), high: shown(high) }),
    })),
  };
}
