import { RESPONSE_KINDS, TRIAL_DESIGNS, type TrialDesign } from "@pith/rules";

/** What the design form sends, read into what the API asks. */

export const DESIGNS = TRIAL_DESIGNS;
/** Things measured that the form has room for. */
export const RESPONSES = ["response0", "response1", "response2"] as const;
export const KINDS = RESPONSE_KINDS;

export interface DesignState {
  attempt: number;
  message: string | null;
  /** By the name of the field in the form. */
  problems: Record<string, string>;
  /** How many blocks the wanted certainty asks for, in words. */
  blocksSaid: string | null;
}
export const undesigned: DesignState = { attempt: 0, message: null, problems: {}, blocksSaid: null };

const text = (data: FormData, name: string) => String(data.get(name) ?? "").trim();
const number = (data: FormData, name: string) => Number(text(data, name) || Number.NaN);

/** One name a line. */
const lines = (data: FormData, name: string) =>
  text(data, name)
    .split("\n")
    .map((line) => line.trim())
    .filter((line) => line !== "");

/** The request as typed; what is wrong with it the API says, by field. */
export function designIn(data: FormData, siteOf: (bedId: string) => string | undefined) {
  const design = text(data, "design") as TrialDesign;
  const factor = (n: number) => ({
    name: text(data, `factor${n}`),
    levels: lines(data, `levels${n}`).map((name) => ({ name })),
  });
  const bedIds = data.getAll("bedIds").map(String);
  const responses = RESPONSES.map((row) => ({
    name: text(data, `${row}.name`),
    unit: text(data, `${row}.unit`),
    kind: text(data, `${row}.kind`),
    better: text(data, `${row}.better`),
  })).filter((response) => response.name !== "");
  return {
    siteId: siteOf(bedIds[0] ?? "") ?? "",
    name: text(data, "name"),
    design,
    factors: design === "factorial-blocks" ? [factor(1), factor(2)] : [factor(1)],
    blocks: number(data, "blocks"),
    responses,
    alpha: 0.05,
    bedIds,
    plotLengthM: number(data, "plotLengthM"),
    gapM: number(data, "gapM"),
  };
}

/** The form's field for a field of the request. */
export function fieldOf(path: string): string {
  const factor = /^factors\.(\d)\.(levels|name)/.exec(path);
  if (factor) return `${factor[2] === "levels" ? "levels" : "factor"}${Number(factor[1]) + 1}`;
  const response = /^responses\.(\d)\.(\w+)/.exec(path);
  if (response) return `response${response[1]}.${response[2]}`;
  if (path.startsWith("responses")) return "response0.name";
  if (path.startsWith("beds") || path === "siteId") return "bedIds";
  return path;
}
