import { type Message, type Reader, render } from "@pith/rules";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { dayAt, dayText, longDayText } from "../../format/dates.ts";
import { Cautions } from "../../ui/Cautions.tsx";
import { PrintButton } from "../../ui/PrintButton.tsx";
import { readerOf } from "../advice/reader.ts";
import { DoseTable } from "./DoseTable.tsx";
import { dosesOf } from "./doses.ts";
import type { Sheet, SheetSource } from "./gather.ts";
import { StockTable } from "./StockTable.tsx";

interface Props {
  sheet: Sheet;
  officeName: string;
  back: { href: string; label: string };
}

/** One page for the wall of the shed: what, how much, when, in which tank, what to be careful of, and what it rests on. */
export async function ShedSheet({ sheet, officeName, back }: Props) {
  const t = await getTranslations("shedSheet");
  const { detail, sources, today } = sheet;
  const feeding = sources.filter((one) => one.ruleId === "feeding");
  const spread = sources.filter((one) => one.ruleId === "lime" || one.ruleId === "wood-ash");
  const buying = sources.filter((one) => one.ruleId === "shed");
  const doses = dosesOf(feeding, today);
  const reader = readerOf(detail);
  const dosed = new Set(doses.rows.map((row) => row.source));
  const resting = feeding.filter((one) => !dosed.has(one));
  const tanks = sources
    .map((source) => ({ source, lines: stepsSaid(source, IN_THE_TANKS, reader) }))
    .filter(({ lines }) => lines.length > 0);
  const toBuy = buying.flatMap((source) => stepsSaid(source, TO_BUY, reader));

  return (
    <article className="shed-sheet">
      <p className="crumbs">
        <Link href={back.href}>{back.label}</Link>
      </p>
      <header className="sheet-head">
        <h1>{t("title", { farm: detail.farm.name })}</h1>
        <p>
          {longDayText(today)} <span className="faint">{officeName}</span>
        </p>
        {sources.length > 0 && <PrintButton label={t("print")} />}
      </header>
      {sources.length === 0 ? (
        <p className="decision-under">{t("empty")}</p>
      ) : (
        <>
          <section aria-labelledby="doses">
            <h2 id="doses">{t("doses")}</h2>
            {doses.rows.length > 0 ? <DoseTable doses={doses} detail={detail} /> : <p>{t("noDoses")}</p>}
            {resting.length + sheet.unsaid.length > 0 && (
              <ul className="sheet-lines">
                {resting.map((one) => (
                  <li key={one.href}>
                    <strong>{one.subjectName}:</strong> {one.said.decision}
                  </li>
                ))}
                {sheet.unsaid.map((one) => (
                  <li key={one.id} className="unknown">
                    <strong>{one.subjectName}:</strong> {one.headline}
                  </li>
                ))}
              </ul>
            )}
          </section>
          {spread.length > 0 && (
            <section aria-labelledby="spread">
              <h2 id="spread">{t("spread")}</h2>
              <ul className="sheet-lines">
                {spread.map((one) => (
                  <li key={one.href}>
                    <strong>{one.subjectName}:</strong> {one.said.decision}{" "}
                    {stepsSaid(one, SPREAD_WHEN, reader).join(" ")}
                  </li>
                ))}
              </ul>
            </section>
          )}
          {tanks.length > 0 && (
            <section aria-labelledby="tanks">
              <h2 id="tanks">{t("tanks")}</h2>
              <div className="sheet-tanks">
                {tanks.map(({ source, lines }) => (
                  <div key={source.href} className="sheet-tank">
                    <h3>{source.subjectName}</h3>
                    <ul className="sheet-lines">
                      {lines.map((line) => (
                        <li key={line}>{line}</li>
                      ))}
                    </ul>
                  </div>
                ))}
              </div>
            </section>
          )}
          <section aria-labelledby="stock">
            <h2 id="stock">{t("stock")}</h2>
            <StockTable doses={doses} detail={detail} records={sheet.records} />
            {toBuy.length > 0 && (
              <>
                <h3>{t("toBuy")}</h3>
                <ul className="sheet-lines">
                  {toBuy.map((line) => (
                    <li key={line}>{line}</li>
                  ))}
                </ul>
              </>
            )}
          </section>
          <Cautions cautions={allCautions(sources)} />
          <section className="sheet-rests" aria-labelledby="rests">
            <h2 id="rests">{t("rests")}</h2>
            <p>{t("basis")}</p>
            <ul className="sheet-lines">
              {sources.map((one) => (
                <li key={one.href}>
                  <Link href={one.href}>
                    {t(`advice.${one.ruleId}` as "advice.feeding", { where: one.subjectName })}
                  </Link>
                  : <RestsOn source={one} />
                </li>
              ))}
            </ul>
          </section>
        </>
      )}
    </article>
  );
}

async function RestsOn({ source: { issued, madeAt } }: { source: SheetSource }) {
  const [t, statuses] = await Promise.all([getTranslations("shedSheet"), getTranslations("advice.statuses")]);
  const day = dayText(dayAt(madeAt));
  if (!issued) return <span className="unknown">{t("draft", { day })}</span>;
  const status = statuses(issued.status);
  return <>{t("issued", { name: issued.issuedBy, day, seq: issued.ledgerSeq, status })}</>;
}

/** What they say that belongs on the wall; the rest is in the advice itself. */
const IN_THE_TANKS =
  /^(feeding\.step\.(tank|next-turn|injector|ec|hard-water)|containers\.step\.(product|injector|too-strong|does-not-dissolve|stock-))/;
const SPREAD_WHEN = /^lime\.step\.in-time$/;
const TO_BUY = /^shed\.step\.(buy|unpriced|uncounted)/;

function stepsSaid({ answer }: SheetSource, which: RegExp, reader: Reader): string[] {
  if (answer.kind !== "advice") return [];
  return answer.steps
    .filter(({ text }) => which.test(text.key))
    .map(({ text }) => render(text as Message, reader));
}

const WEIGHT: Record<string, number> = { danger: 0, warning: 1 };

/** Every caution once, worst first. */
function allCautions(sources: SheetSource[]) {
  const all = sources.flatMap((one) => one.said.cautions);
  const once = new Map(all.map((caution) => [`${caution.id}@${caution.version}`, caution]));
  return [...once.values()].sort((a, b) => (WEIGHT[a.severity] ?? 2) - (WEIGHT[b.severity] ?? 2));
}
