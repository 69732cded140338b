import { getTranslations } from "next-intl/server";

/** The words of the photographs' island, resolved on the server so that it carries no catalogue. */
export async function photoWords() {
  const t = await getTranslations("photos");
  return {
    none: t("none"),
    take: t("take"),
    choose: t("choose"),
    shrinking: t("shrinking"),
    sending: t.raw("sending") as string,
    sent: t("sent"),
    removed: t("removed"),
    remove: t("remove"),
    removeSure: t("removeSure"),
    removing: t("removing"),
    unreadable: t("unreadable"),
    unreachable: t("unreachable"),
    refused: t.raw("refused") as string,
    notRemoved: t("notRemoved"),
    full: t("full"),
    kept: t("kept"),
  };
}

/** The words of photographs that are taken along with a form. */
export async function pickWords() {
  const t = await getTranslations("photos");
  return {
    title: t("title"),
    along: t("along"),
    take: t("take"),
    choose: t("choose"),
    remove: t("remove"),
    nth: t.raw("nth") as string,
    shrinking: t("shrinking"),
    unreadable: t("unreadable"),
    full: t("full"),
  };
}

export type PickWords = Awaited<ReturnType<typeof pickWords>>;
export type PhotoWords = Awaited<ReturnType<typeof photoWords>>;
