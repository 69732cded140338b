/** A guide as it was typed into the form, and the way back from a field of the guide to the control it was typed into. */

export interface NutrientRow {
  key: number;
  classes: number[];
}

export interface TypedGuide {
  raw: Record<string, unknown>;
  /** The control of a field's path; of a part of the guide its first; null where the form asks nothing like it. */
  controlOf: (path: string) => string | null;
  /** What could not be read as a number, by control. */
  unreadable: Record<string, string>;
  /** Nutrients that stand above already. */
  twice: string[];
}

export const nutrientName = (row: number, field: string) => `n${row}.${field}`;
export const className = (row: number, place: number, field: string) => `n${row}.c${place}.${field}`;

/** Reads the form. Nothing is judged here but whether a number is one: the guide's own check does the rest. */
export function typedGuide(data: FormData, rows: readonly NutrientRow[]): TypedGuide {
  const unreadable: Record<string, string> = {};
  const twice: string[] = [];
  const controls = new Map<string, string>();
  const text = (name: string) => String(data.get(name) ?? "").trim();
  /** Left out where nothing was typed: missing is not zero. */
  const number = (name: string): number | undefined => {
    const typed = text(name);
    if (typed === "") return undefined;
    const value = Number(typed);
    if (Number.isFinite(value)) return value;
    unreadable[name] = typed;
    return undefined;
  };
  const word = (path: string, name: string) => {
    controls.set(path, name);
    return text(name) || undefined;
  };
  const figure = (path: string, name: string) => {
    controls.set(path, name);
    return number(name);
  };
  /** A range of which one number was typed is that number. */
  const range = (path: string, name: string) => {
    const low = figure(`${path}.low`, `${name}.low`);
    const high = figure(`${path}.high`, `${name}.high`);
    return low === undefined && high === undefined ? undefined : { low: low ?? high, high: high ?? low };
  };

  const nutrients: Record<string, unknown> = {};
  const grid: unknown[] = [];
  for (const { key, classes } of rows) {
    const nutrient = text(nutrientName(key, "nutrient"));
    const at = `nutrients.${nutrient}`;
    if (nutrient in nutrients) {
      twice.push(nutrientName(key, "nutrient"));
      continue;
    }
    controls.set(at, nutrientName(key, "nutrient"));
    const rateForm = text(nutrientName(key, "rates"));
    const row = `recommendations.grid.${grid.length}`;
    const rates: unknown[] = [];
    nutrients[nutrient] = {
      extractant: word(`${at}.extractant`, nutrientName(key, "extractant")),
      decimals: figure(`${at}.decimals`, nutrientName(key, "decimals")),
      classes: classes.map((place, i) => {
        const named = (field: string) => className(key, place, field);
        const its = `${at}.classes.${i}`;
        const name = word(`${its}.class`, named("class"));
        const rate = rateForm && range(`${row}.rates.${rates.length}`, named("rate"));
        if (rate) {
          controls.set(`${row}.rates.${rates.length}.class`, named("class"));
          rates.push({ class: name, ...rate });
        }
        return {
          class: name,
          low: figure(`${its}.low`, named("low")),
          // The topmost class is open.
          high: figure(`${its}.high`, named("high")) ?? null,
          response: word(`${its}.response`, named("response")),
        };
      }),
    };
    if (rates.length === 0) continue;
    controls.set(`${row}.form`, nutrientName(key, "rates"));
    controls.set(`${row}.unit`, "rateUnit");
    grid.push({ nutrient, form: rateForm, unit: text("rateUnit"), rates });
  }

  const title = word("title", "title");
  controls.set("id", "title");
  const nitrogen = range("recommendations.nitrogen", "nitrogen");
  const targetPh = range("recommendations.targetPh", "targetPh");
  const crop = word("recommendations.crop", "crop");
  controls.set("recommendations.nitrogen.unit", "rateUnit");
  const recommends = Boolean(crop || nitrogen || targetPh || grid.length > 0);
  const raw = {
    id: idOf(title ?? ""),
    title: title ?? "",
    region: word("region", "region") ?? "",
    source: { key: "office-guide", locator: word("source.locator", "locator") },
    status: "office",
    unit: word("unit", "unit"),
    medium: word("medium", "medium"),
    nutrients,
    ...(recommends && {
      recommendations: {
        crop: crop ?? "",
        ...(targetPh && { targetPh }),
        ...(nitrogen && { nitrogen: { ...nitrogen, unit: text("rateUnit") } }),
        ...(grid.length > 0 && { grid }),
      },
    }),
    ...(word("note", "note") && { note: text("note") }),
  };
  return { raw, controlOf, unreadable, twice };

  function controlOf(path: string): string | null {
    for (let part = path; part !== ""; part = part.slice(0, Math.max(0, part.lastIndexOf(".")))) {
      const control =
        controls.get(part) ?? [...controls].find(([known]) => known.startsWith(`${part}.`))?.[1];
      if (control !== undefined) return control;
    }
    return null;
  }
}

/** An id of the office's own from a title: a-z, 0-9 and hyphens. */
const idOf = (title: string): string =>
  title
    .normalize("NFKD")
    .toLowerCase()
    .replace(/\p{M}/gu, "")
    .replace(/[^a-z0-9]+/g, "-")
    .slice(0, 63)
    .replace(/^-+|-+$/g, "");
