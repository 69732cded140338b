import { getTranslations } from "next-intl/server";
import { WaitingList } from "./WaitingList.tsx";

/** On a farmer's page: what waits to be sent, and what is to be had at hand without signal. */
export async function WaitingHere({ who, pages }: { who: string; pages: string[] }) {
  const t = await getTranslations("waiting");
  return (
    <WaitingList
      who={who}
      pages={pages}
      words={{
        title: t("title"),
        help: t("help"),
        send: t("send"),
        letGo: t("letGo"),
        refused: t("refused"),
        change: t("change"),
        meanwhile: t("meanwhile"),
        theirs: t("theirs"),
        mine: t("mine"),
        keepTheirs: t("keepTheirs"),
        sendMine: t("sendMine"),
        photos: t.raw("photos") as string,
      }}
    />
  );
}
