import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { RECORDS } from "./plans.ts";

/** Where something seen or done is written down. */
export async function RecordLinks({ base, query = "" }: { base: string; query?: string }) {
  const t = await getTranslations("records");
  return (
    <p className="actions">
      {RECORDS.map((kind) => (
        <Link key={kind} className="tap" href={`${base}/${kind}${query}`}>
          {t(`add.${kind}`)}
        </Link>
      ))}
    </p>
  );
}
