import { type Estimated, type Reader, type WorkingLine, workingText } from "@pith/rules";
import { useLocale, useTranslations } from "next-intl";

interface Props {
  lines: WorkingLine[];
  caption: string;
  /** What the farm calls its beds, plantings and materials, by id. */
  names: Reader["bedNames"];
}

type Source = { key: string; locator?: string };

/** The calculation line by line, as one would check it with a pencil. */
export function Working({ lines, caption, names }: Props) {
  const t = useTranslations("working");
  const said = useSaid();
  const read = (text: string) => named(said(text), names);
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
            <th scope="row">{said(line.symbol)}</th>
            <td className="full">{read(line.meaning)}</td>
            <td className="full expression">{read(line.expression)}</td>
            <td className={typeof line.value === "string" ? "value words" : "value"}>
              {valueText(line.value, t("missing"), read)}
            </td>
            <td className="unit">{said(line.unit)}</td>
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
function valueText(value: WorkingLine["value"], missing: string, read: Read): string {
  if (value === null) return missing;
  if (typeof value !== "number") return read(String(value));
  return new Intl.NumberFormat("en", { maximumSignificantDigits: 4, useGrouping: false })
    .format(value)
    .replace("-", "\u2212");
}

const ID = /[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}/g;

type Read = (text: string) => string;

/** The ledger keeps a working in English; the reader's language is put over it here, on a server as in a browser. */
function useSaid(): Read {
  const language = useLocale() === "es" ? "es" : "en";
  return (text) => workingText(text, language);
}

/** The rules know things by their ids alone, so that the ledger holds no names: a name is put in last, as it is. */
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
export function EstimatedList({ estimated, names }: { estimated: Estimated[]; names?: Props["names"] }) {
  const t = useTranslations("working");
  const said = useSaid();
  if (estimated.length === 0) return <p>{t("nothingEstimated")}</p>;
  /** What the rules know by the name of a field has words here; a material's field says whose it is. */
  const nameOf = (input: string): string => {
    const [field = input, ...path] = input.split(".").toReversed();
    const key = `inputs.${field.replaceAll(/\W+/g, "-")}` as "inputs.coastal";
    if (!t.has(key)) return said(input);
    const whose = path.at(-1);
    if (whose === undefined || /^(planting|site)$/.test(whose)) return t(key);
    return t("inputOf", { what: t(key), whose: named(said(whose), names) });
  };
  return (
    <ul className="listing">
      {estimated.map(({ input, how, source }) => (
        <li key={input}>
          <span className="unknown">{nameOf(input)}</span>: {said(how)}{" "}
          {source && <SourceLink source={source} />}
        </li>
      ))}
    </ul>
  );
}
