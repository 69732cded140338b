import type { Said } from "@pith/contract";
import type { getTranslations } from "next-intl/server";
import type { Leaf } from "./leaf.ts";

type Words = Awaited<ReturnType<typeof getTranslations<"caution">>>;
type Severity = "danger" | "warning" | "care";
const severityOf = (word: string): Severity => (word === "danger" || word === "warning" ? word : "care");

const LOZENGE = "M18 2 34 18 18 34 2 18Z";
/** As on the screen: solid for danger, half for a warning, open for care. */
const FILLED: Record<Severity, string> = {
  danger: LOZENGE,
  warning: "M2 18H34L18 34Z",
  care: "M18 15 21 18 18 21 15 18Z",
};
const WEIGHT: Record<Severity, number> = { danger: 2.5, warning: 1.5, care: 0.5 };
const INDENT = 28;

/** Cautions, worst first, each told by mark, word and the lines around it, and each whole on one page. */
export function cautionsOn(leaf: Leaf, cautions: Said["cautions"], t: Words): void {
  for (const one of cautions) leaf.whole(() => cautionOn(leaf, one, t));
}

function cautionOn(leaf: Leaf, { severity, text }: Said["cautions"][number], t: Words): void {
  const kind = severityOf(severity);
  leaf.down(8);
  leaf.stroke(0, leaf.wide, WEIGHT[kind]);
  leaf.down(5);
  leaf.shape(LOZENGE, 0, { scale: 0.5, filled: false });
  leaf.shape(FILLED[kind], 0, { scale: 0.5, filled: true });
  leaf.text(t(kind).toLocaleUpperCase(), { size: 9, bold: true, sans: true, indent: INDENT });
  leaf.text(text, { size: 11, bold: kind === "danger", indent: INDENT });
  leaf.down(6);
  leaf.stroke(0, leaf.wide, WEIGHT[kind]);
}
