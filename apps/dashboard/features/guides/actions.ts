"use server";

import { type FieldProblem, farmRoutes, guideRoutes, type Problem } from "@pith/contract";
import { redirect } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { attempt, callTagged, unlessChanged } from "../../server/api.ts";
import { agentSeat } from "../../server/seat.ts";
import { faultsOf, type GuideFault } from "./faults.ts";

/** What became of a guide that was handed in: its page, or what is wrong with it. */
export type Added = { page: string } | { message: string; faults: GuideFault[] };

/** Adds a guide of the office's own; what is wrong comes back at its field and nothing is kept. */
export async function addGuide(raw: Record<string, unknown>): Promise<Added> {
  const { officeId } = await agentSeat();
  const added = await attempt((client) =>
    client.call(guideRoutes.addGuide, { params: { officeId }, json: { guide: raw } }),
  );
  if (added.done) return { page: `/guides/${added.value.guide.id}?saved=guide` };
  return refusalOf(added.problem);
}

/** What a chosen file led to. */
export interface FileState {
  attempt: number;
  message: string | null;
  fileName: string | null;
  faults: GuideFault[];
}

const MOST_BYTES = 200_000;

/** Reads a file in the form of the guides held here, and adds what it holds. */
export async function addGuideFile(before: FileState, data: FormData): Promise<FileState> {
  const t = await getTranslations("guides.file");
  const file = data.get("guide");
  const refuse = (message: string, faults: GuideFault[] = []): FileState => ({
    attempt: before.attempt + 1,
    message,
    fileName: file instanceof File && file.name ? file.name : null,
    faults,
  });
  if (!(file instanceof File) || file.size === 0) return refuse(t("noFile"));
  if (file.size > MOST_BYTES) return refuse(t("tooLarge"));
  const read = jsonIn(await file.text());
  if ("fault" in read) return refuse(t("notJson", { fault: read.fault }));
  const { json } = read;
  if (typeof json !== "object" || json === null || Array.isArray(json)) return refuse(t("notAGuide"));
  const added = await addGuide(json as Record<string, unknown>);
  if ("page" in added) redirect(added.page);
  return refuse(added.message, added.faults);
}

function jsonIn(text: string): { json: unknown } | { fault: string } {
  try {
    return { json: JSON.parse(text.replace(/^\uFEFF/, "")) };
  } catch (error) {
    return { fault: error instanceof Error ? error.message : String(error) };
  }
}

async function refusalOf({ title, detail, errors = [] }: Problem) {
  const t = await getTranslations("form");
  const said = title === "unreachable" ? t("unreachable") : (detail ?? title);
  const inGuide = errors.map((fault: FieldProblem) => ({
    ...fault,
    field: fault.field.replace(/^guide\.?/, ""),
  }));
  const faults = await faultsOf(inGuide);
  return { message: faults.length > 0 ? t("seeFields") : said, faults };
}

/** Reads the office's soil tests by a guide from now on; with none, by the verified guides that fit. */
export async function chooseGuide(guideId: string | null, back: string): Promise<string> {
  const { officeId } = await agentSeat();
  const problem = await setGuide(officeId, guideId);
  if (problem !== null) return problem;
  redirect(`${back}?saved=${guideId === null ? "guideLeft" : "guideChosen"}`);
}

/** Puts a guide of the office's own away; settings that name it name none from then on. */
export async function putGuideAway(id: string): Promise<string> {
  const { officeId } = await agentSeat();
  const gone = await attempt((client) => client.call(guideRoutes.retireGuide, { params: { officeId, id } }));
  if (!gone.done) return (await refusalOf(gone.problem)).message;
  redirect("/guides?taken-back=guide");
}

/** Settings are replaced whole, so all others go along as they are. Null where it went well. */
async function setGuide(officeId: string, guideId: string | null): Promise<string | null> {
  const { value, tag } = await callTagged(farmRoutes.getOffice, { params: { officeId } });
  const { soilGuide: _, ...others } = value.settings;
  const json = guideId === null ? others : { ...others, soilGuide: guideId };
  const saved = await attempt((client) =>
    client.call(farmRoutes.changeOfficeSettings, { params: { officeId }, json, ...unlessChanged(tag) }),
  );
  return saved.done ? null : (await refusalOf(saved.problem)).message;
}
