import type { GuideClass, Response } from "./types.ts";

/** Classes from their printed upper bounds; each begins one printed step above the one below it. */
export function classesUpTo<const C extends GuideClass["class"]>(
  decimals: number,
  steps: readonly [C, number | null, Response, GuideClass["optimum"]?][],
): GuideClass[] {
  const scale = 10 ** decimals;
  let low = 0;
  return steps.map(([name, printed, response, optimum]) => {
    const high = printed === null ? null : Math.round(printed * scale) / scale;
    const entry: GuideClass = { class: name, low, high, response, ...(optimum && { optimum }) };
    if (high !== null) low = (Math.round(high * scale) + 1) / scale;
    return entry;
  });
}
