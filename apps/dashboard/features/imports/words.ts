import { getTranslations } from "next-intl/server";

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
    fields: t.raw("fields") as Record<string, string>,
    duplicates: t("duplicates"),
    preview: t("preview"),
    save: t("save"),
    saving: t("saving"),
    discard: t("discard"),
  };
}
export type ImportWords = Awaited<ReturnType<typeof importWords>>;
