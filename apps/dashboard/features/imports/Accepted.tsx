import type { Import } from "@pith/contract";
import type { Choice } from "../forms/plan.ts";
import { fill, type ImportWords } from "./words.ts";

interface Props {
  rows: Import["accepted"];
  beds: Choice[];
  words: ImportWords;
}

/** The first rows as they will be stored, one column for each field that any of them has. */
export function Accepted({ rows, beds, words }: Props) {
  const named: Record<string, unknown>[] = rows.map(({ bedId, ...row }) => {
    const bed = beds.find(({ value }) => value === bedId)?.label;
    return bed === undefined ? row : { ...row, bed };
  });
  const order = Object.keys(words.fields);
  const names = [...new Set(named.flatMap((row) => Object.keys(row)))].sort(
    (a, b) => order.indexOf(a) - order.indexOf(b),
  );
  return (
    <table className="ruled accepted">
      <caption>{words.firstRows}</caption>
      <thead>
        <tr>
          {names.map((name) => (
            <th key={name} scope="col">
              {words.fields[name] ?? name}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {named.map((row) => (
          <tr key={JSON.stringify(row)}>
            {names.map((name) => (
              <td key={name} className="number" data-head={words.fields[name] ?? name}>
                {cellText(row[name], words)}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

interface Value {
  nutrient: string;
  extractant?: string;
  mgPerKg: number;
  reported?: { value: number; unit: string };
}

const isValue = (value: object): value is Value => "nutrient" in value && "mgPerKg" in value;
const figure = (value: number) => String(Number(value.toPrecision(6)));

function cellText(value: unknown, words: ImportWords): string {
  if (value === undefined || value === null) return "";
  if (typeof value === "number") return figure(value);
  if (typeof value === "boolean") return value ? words.yes : words.no;
  if (Array.isArray(value)) return value.map((one) => cellText(one, words)).join("; ");
  if (typeof value !== "object") return words.choices[String(value)] ?? String(value);
  if (isValue(value)) return nutrientText(value, words);
  return Object.values(value)
    .map((one) => cellText(one, words))
    .filter((text) => text !== "")
    .join(" ");
}

/** `K 120 (ammonium acetate), printed as 320 lb/acre`. */
function nutrientText({ nutrient, extractant, mgPerKg, reported }: Value, words: ImportWords): string {
  const method = extractant ? (words.choices[extractant] ?? extractant) : words.methodNotStated;
  const text = { nutrient, value: figure(mgPerKg), method };
  if (!reported) return fill(words.nutrient, text);
  return fill(words.nutrientPrinted, { ...text, printed: figure(reported.value), unit: reported.unit });
}
