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
  };
}

export type PhotoWords = Awaited<ReturnType<typeof photoWords>>;
