import { NUTRIENTS } from "@pith/rules";
import { getTranslations } from "next-intl/server";

/** Fields that a column of a file can be read into. */
const COLUMN_FIELDS = {
  soil: [
    ...["sampledOn", "bed", "depthCm", "sampleRef", "labName", "medium", "extractant"],
    ...["waterPh", "bufferPh", "organicMatterPct", "cecCmolPerKg", "acidityCmolPerKg", "freeLime", "ec"],
    ...NUTRIENTS,
  ],
  weather: [
    ...["date", "tMaxC", "tMinC", "rainMm", "rhMaxPct", "rhMinPct", "rhMeanPct", "dewPointC"],
    ...["windMPerS", "windHeightM", "rsMjPerM2Day", "sunshineH"],
  ],
};

/** A sentence of the catalogue with its places filled; the island has no catalogue to ask. */
export const fill = (sentence: string, values: Record<string, string | number>): string =>
  sentence.replace(/\{(\w+)\}/g, (_, name) => String(values[name] ?? ""));

/** The words of the import desk, resolved on the server so that the island carries no catalogue. */
export async function importWords() {
  const t = await getTranslations("imports");
  return {
    kind: t("kind"),
    soilTests: t("soilTests"),
    weather: t("weather"),
    forecast: t("forecast"),
    file: t("file"),
    fileHint: t("fileHint"),
    weatherHint: t("weatherHint"),
    site: t("site"),
    bed: t("bed"),
    bedFromFile: t("bedFromFile"),
    depth: t("depth"),
    depthHint: t("depthHint"),
    lab: t("lab"),
    labHint: t("labHint"),
    issuedAt: t("issuedAt"),
    optional: t("optional"),
    read: t("read"),
    reading: t("reading"),
    noFile: t("noFile"),
    tooLarge: t("tooLarge"),
    weatherTooLarge: t("weatherTooLarge"),
    notANumber: t("notANumber"),
    needed: t("needed"),
    // Said of the preview.
    questions: t("questions"),
    questionsHelp: t("questionsHelp"),
    choose: t("choose"),
    answer: t("answer"),
    columns: t("columns"),
    header: t("header"),
    readAs: t("readAs"),
    unit: t("unit"),
    asLastTime: t("asLastTime"),
    asBefore: t.raw("asBefore" as never) as string,
    remembered: t.raw("remembered" as never) as string,
    willRemember: t.raw("willRemember" as never) as string,
    change: t("change"),
    changeHelp: t("changeHelp"),
    askAgain: t("askAgain"),
    readAgain: t("readAgain"),
    abouts: t.raw("abouts" as never) as Record<string, string>,
    aboutHelp: t.raw("aboutHelp" as never) as Record<string, string>,
    allAlike: t("allAlike"),
    // Units, methods and bases that need more words than their name.
    choices: t.raw("choices" as never) as Record<string, string>,
    columnFields: COLUMN_FIELDS,
    leftOut: t("leftOut"),
    acceptedTitle: t("acceptedTitle"),
    refusedTitle: t("refusedTitle"),
    line: t("line"),
    column: t("column"),
    reason: t("reason"),
    value: t("value"),
    noneRefused: t("noneRefused"),
    noneAccepted: t("noneAccepted"),
    firstRows: t("firstRows"),
    // Names of the fields a column can be read into; a nutrient is its own name.
    fields: t.raw("fields" as never) as Record<string, string>,
    duplicates: t("duplicates"),
    whichDuplicates: t("whichDuplicates"),
    isStored: t.raw("isStored" as never) as string,
    repeats: t.raw("repeats" as never) as string,
    download: t.raw("download" as never) as string,
    showAll: t.raw("showAll" as never) as string,
    nutrient: t.raw("nutrient" as never) as string,
    nutrientPrinted: t.raw("nutrientPrinted" as never) as string,
    methodNotStated: t("methodNotStated"),
    yes: t("yes"),
    no: t("no"),
    preview: t("preview"),
    save: t("save"),
    saving: t("saving"),
    discard: t("discard"),
    // Said while it works.
    phases: t.raw("phases" as never) as Record<string, string>,
    rowsDone: t.raw("rowsDone" as never) as string,
    stop: t("stop"),
    stopped: t("stopped"),
    unreachable: t("unreachable"),
  };
}
export type ImportWords = Awaited<ReturnType<typeof importWords>>;
