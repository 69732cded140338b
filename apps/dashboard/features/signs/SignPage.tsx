import { farmRoutes } from "@pith/contract";
import Link from "next/link";
import { notFound } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { dayText } from "../../format/dates.ts";
import { call } from "../../server/api.ts";
import { type Seat, whoOf } from "../../server/seat.ts";
import { Row } from "../../ui/Row.tsx";
import { Saved } from "../../ui/Saved.tsx";
import { linesOf } from "../records/lines.ts";
import { wholeRecords } from "../records/wholeRecords.ts";
import { altTexts } from "./altTexts.ts";
import { PhotoDesk } from "./PhotoDesk.tsx";
import { SignPhotos } from "./SignPhotos.tsx";
import { photoWords } from "./words.ts";

interface Props {
  seat: Seat;
  farmId: string;
  signId: string;
  asked: Record<string, string>;
}

/** One sign: what was seen, and its photographs. */
export async function SignPage({ seat, farmId, signId, asked }: Props) {
  const params = { officeId: seat.officeId, farmId };
  const [detail, records, t, words, desk, labels] = await Promise.all([
    call(farmRoutes.getFarm, { params }),
    wholeRecords(params, ["signs"]),
    getTranslations("records"),
    getTranslations("words"),
    photoWords(),
    getTranslations("photos"),
  ]);
  const sign = records.signs.find((one) => one.id === signId);
  if (!sign) notFound();
  const planting = detail.plantings.find((one) => one.id === sign.plantingId);
  const line = linesOf(records, detail, { t, words }).find((one) => one.id === signId);
  const alt = await altTexts(sign, detail);
  const back = seat.role === "agent" ? `/farms/${farmId}/plantings/${sign.plantingId}#records` : "/record";
  return (
    <>
      <p className="crumbs">
        <Link href={back}>
          {seat.role === "agent" ? (planting?.varietyName ?? detail.farm.name) : t("title")}
        </Link>
      </p>
      <Saved asked={asked} />
      <Row notes={<p>{labels("lead")}</p>}>
        <p className="faint">
          {planting?.varietyName}, <time dateTime={sign.on}>{dayText(sign.on)}</time>
        </p>
        <h1>{labels("title")}</h1>
        <p className="decision-under">{line?.what}</p>
        {seat.mayWrite ? (
          <PhotoDesk
            farmId={farmId}
            signId={signId}
            photos={sign.photos.map(({ id }, i) => ({ id, alt: alt[i] ?? "" }))}
            words={desk}
            {...(seat.role === "farmer" && {
              offline: {
                who: whoOf(seat),
                page: `/record/${farmId}/signs/${signId}`,
                label: `${labels("title")}: ${line?.what ?? ""}`,
              },
            })}
          />
        ) : (
          <SignPhotos sign={sign} detail={detail} />
        )}
        <p className="no-print">
          <Link className="tap" href={back}>
            {labels("done")}
          </Link>
        </p>
      </Row>
    </>
  );
}
