import { addDays, type WhatIf, WhatIfSchema } from "@pith/rules";
import {
  CHOICE_NAMES,
  type ChoiceName,
  COVER_STEPS,
  MOST,
  type Starting,
  TOPPED_STEPS,
} from "@pith/rules/what-if";

/** A choice as a row of values to slide along, and where it stands untouched. */
export interface Slider {
  name: ChoiceName;
  values: (string | number)[];
  /** Null where nobody has said. */
  start: string | number | null;
}

/** A day can be tried as far ahead as a short season's last setting out. */
const DAYS_AHEAD = 90;
const STEPS: Record<"withheldPct" | "k2oKgPerHa" | "ashGPerM2" | "buriedStemCm", number> = {
  withheldPct: 2,
  k2oKgPerHa: 5,
  ashGPerM2: 10,
  buriedStemCm: 0.5,
};

export function slidersOf(starting: Starting, today: string): Slider[] {
  return CHOICE_NAMES.filter((name) => starting[name].not === null).map((name) => {
    const start = starting[name].value;
    return { name, start, values: withStart(valuesOf(name, today), start) };
  });
}

function valuesOf(name: ChoiceName, today: string): (string | number)[] {
  if (name === "setOutOn") return Array.from({ length: DAYS_AHEAD + 1 }, (_, i) => addDays(today, i));
  if (name === "cover") return [...COVER_STEPS];
  if (name === "topped") return [...TOPPED_STEPS];
  const step = STEPS[name];
  return Array.from({ length: Math.round(MOST[name] / step) + 1 }, (_, i) => i * step);
}

/** The planting's own value is always among them, also between two steps. */
function withStart(values: (string | number)[], start: string | number | null): (string | number)[] {
  if (start === null || values.includes(start)) return values;
  const after = values.findIndex((value) => value > start);
  return after < 0 ? [...values, start] : values.toSpliced(after, 0, start);
}

/** What the address of the page tries; what cannot be tried is left out. */
export function askedIn(query: Record<string, string | string[] | undefined>): WhatIf {
  const asked: Record<string, unknown> = {};
  for (const name of CHOICE_NAMES) {
    const said = query[name];
    if (typeof said !== "string") continue;
    const value = name in STEPS ? Number(said) : said;
    if (WhatIfSchema.safeParse({ [name]: value }).success) asked[name] = value;
  }
  return WhatIfSchema.parse(asked);
}

export const addressOf = (tried: WhatIf): string =>
  new URLSearchParams(Object.entries(tried).map(([name, value]) => [name, String(value)])).toString();
