import type { Estimated, Reader, WorkingLine } from "@pith/rules";
import { getTranslations } from "next-intl/server";

interface Props {
  lines: WorkingLine[];
  caption: string;
  /** What the farm calls its beds, plantings and materials, by id. */
  names: Reader["bedNames"];
}

type Source = { key: string; locator?: string };

/** The calculation line by line, as one would check it with a pencil. */
export async function Working({ lines, caption, names }: Props) {
  const t = await getTranslations("working");
  return (
    <table className="ruled">
      <caption className="unseen">{caption}</caption>
      <thead>
        <tr>
          <th scope="col">{t("symbol")}</th>
          <th scope="col">{t("meaning")}</th>
          <th scope="col">{t("expression")}</th>
          <th scope="col" className="value">
            {t("value")}
          </th>
          <th scope="col">{t("unit")}</th>
          <th scope="col">{t("source")}</th>
        </tr>
      </thead>
      <tbody>
        {numbered(lines).map(({ line, number }) => (
          <tr key={number}>
            <th scope="row">{line.symbol}</th>
            <td className="full">{named(line.meaning, names)}</td>
            <td className="full expression">{named(line.expression, names)}</td>
            <td className={typeof line.value === "string" ? "value words" : "value"}>
              {valueText(line.value, t("missing"), names)}
            </td>
            <td className="unit">{line.unit}</td>
            <td className="full">{line.source && <SourceLink source={line.source} />}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** The same symbol may stand on several lines: a line is known by its number. */
const numbered = (lines: WorkingLine[]) => lines.map((line, index) => ({ line, number: index + 1 }));

/** A number with at most four meaningful digits; the ledger keeps them all. */
function valueText(value: WorkingLine["value"], missing: string, names: Props["names"]): string {
  if (value === null) return missing;
  if (typeof value !== "number") return named(String(value), names);
  return new Intl.NumberFormat("en", { maximumSignificantDigits: 4, useGrouping: false })
    .format(value)
    .replace("-", "\u2212");
}

const ID = /[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}/g;

/** The rules know things by their ids alone, so that the ledger holds no names. */
const named = (text: string, names: Props["names"]): string => text.replace(ID, (id) => names?.get(id) ?? id);

function SourceLink({ source }: { source: Source }) {
  return (
    <a href={`/evidence#source-${source.key}`}>
      {source.key}
      {source.locator && `, ${source.locator}`}
    </a>
  );
}

/** What was not measured, and how its value was found. */
export async function EstimatedList({ estimated }: { estimated: Estimated[] }) {
  const t = await getTranslations("working");
  if (estimated.length === 0) return <p>{t("nothingEstimated")}</p>;
  return (
    <ul className="listing">
      {estimated.map(({ input, how, source }) => (
        <li key={input}>
          <span className="unknown">{input}</span>: {how} {source && <SourceLink source={source} />}
        </li>
      ))}
    </ul>
  );
}
