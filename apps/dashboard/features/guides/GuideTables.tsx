import type { Guide } from "@pith/rules";
import { getTranslations } from "next-intl/server";
import { Row } from "../../ui/Row.tsx";
import { figures, formName } from "./figures.ts";
import { classWord, extractantWord, nutrientWord, responseWord } from "./words.ts";

type Reading = NonNullable<Guide["nutrients"]["P"]>;
type Grid = NonNullable<NonNullable<Guide["recommendations"]>["grid"]>[number];

/** A guide's tables whole, as printed: one row of the leaf for each nutrient, then what it recommends besides. */
export async function GuideTables({ guide }: { guide: Guide }) {
  const readings = Object.entries(guide.nutrients) as [string, Reading][];
  return (
    <>
      {readings.map(([nutrient, reading]) => (
        <Row
          key={nutrient}
          id={`nutrient-${nutrient}`}
          className="guide-row"
          side={
            <>
              <h2>{nutrientWord(nutrient)}</h2>
              <p className="faint small">{extractantWord(reading.extractant)}</p>
            </>
          }
          notes={<ReadingNotes reading={reading} />}
        >
          <ClassTable
            guide={guide}
            nutrient={nutrient}
            reading={reading}
            rates={guide.recommendations?.grid?.find((row) => row.nutrient === nutrient)}
          />
          {reading.boundByCec && <MovingBound rows={reading.boundByCec} guide={guide} reading={reading} />}
        </Row>
      ))}
      <Recommendations guide={guide} />
    </>
  );
}

async function ClassTable({
  guide,
  nutrient,
  reading: { classes, decimals },
  rates,
}: {
  guide: Guide;
  nutrient: string;
  reading: Reading;
  rates: Grid | undefined;
}) {
  const [t, ranges] = await Promise.all([getTranslations("guides"), getTranslations("ranges")]);
  const bounds = (low: number, high: number | null) =>
    high === null
      ? ranges("from", { low: figures(low, decimals) })
      : ranges("between", { low: figures(low, decimals), high: figures(high, decimals) });
  const heads = {
    content: t("content", { unit: guide.unit }),
    response: t("response"),
    rate: rates && t("rate", { form: formName(rates.form), unit: rates.unit }),
  };
  return (
    <table className="ruled">
      <caption className="unseen">
        {t("classesOf", { nutrient: nutrientWord(nutrient), title: guide.title })}
      </caption>
      <thead>
        <tr>
          <th scope="col">{ranges("class")}</th>
          <th scope="col">{heads.content}</th>
          <th scope="col">{heads.response}</th>
          {heads.rate && (
            <th scope="col" className="value">
              {heads.rate}
            </th>
          )}
        </tr>
      </thead>
      <tbody>
        {classes.map((one) => {
          const rate = rates?.rates.find((r) => r.class === one.class);
          return (
            <tr key={one.class}>
              <th scope="row">{classWord(one.class)}</th>
              <td className="number" data-head={heads.content}>
                {bounds(one.low, one.high)}
              </td>
              <td className="full">
                {responseWord(one.response)}
                {one.topIsShared && <span className="faint"> {t("topIsShared")}</span>}
              </td>
              {heads.rate && (
                <td className="value" data-head={heads.rate}>
                  {rate ? span(rate.low, rate.high) : t("noRate")}
                </td>
              )}
            </tr>
          );
        })}
      </tbody>
    </table>
  );

  function span(low: number, high: number) {
    return low === high ? figures(low) : ranges("between", { low: figures(low), high: figures(high) });
  }
}

async function ReadingNotes({ reading: { index, note, decimals } }: { reading: Reading }) {
  const t = await getTranslations("guides");
  return (
    <div className="flow">
      <p className="faint">{t("printedTo", { decimals })}</p>
      {index && (
        <p>
          {t("index", {
            name: index.name,
            intercept: figures(index.intercept),
            perMgPerKg: figures(index.perMgPerKg),
            perPh: figures(index.perPh),
          })}
        </p>
      )}
      {note && <p lang="en">{note}</p>}
    </div>
  );
}

async function MovingBound({
  rows,
  guide,
  reading,
}: {
  rows: NonNullable<Reading["boundByCec"]>;
  guide: Guide;
  reading: Reading;
}) {
  const t = await getTranslations("guides");
  const head = t("respondsBelow", { unit: guide.unit });
  return (
    <table className="ruled">
      <caption>{t("movingBound")}</caption>
      <thead>
        <tr>
          <th scope="col">{t("cec")}</th>
          <th scope="col" className="value">
            {head}
          </th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ cecCmolPerKg, below }) => (
          <tr key={cecCmolPerKg}>
            <th scope="row">{t("cecOf", { cec: figures(cecCmolPerKg) })}</th>
            <td className="value" data-head={head}>
              {figures(below, reading.decimals)}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** What the guide recommends that does not go by a nutrient's class alone. */
async function Recommendations({ guide: { recommendations: of, unit } }: { guide: Guide }) {
  const [t, ranges] = await Promise.all([getTranslations("guides"), getTranslations("ranges")]);
  if (!of) {
    return (
      <Row className="guide-row" side={<h2>{t("recommendations")}</h2>}>
        <p className="faint">{t("noRecommendations")}</p>
      </Row>
    );
  }
  const span = (low: number, high: number) =>
    low === high ? figures(low) : ranges("between", { low: figures(low), high: figures(high) });
  const rate = (of: { low: number; high: number; unit: string }) =>
    ranges("reported", { value: span(of.low, of.high), unit: of.unit });
  return (
    <Row id="recommendations" className="guide-row" side={<h2>{t("recommendations")}</h2>}>
      <dl className="facts">
        <dt>{t("crop")}</dt>
        <dd>{of.crop}</dd>
        {of.targetPh && (
          <>
            <dt>{t("targetPh")}</dt>
            <dd>{span(of.targetPh.low, of.targetPh.high)}</dd>
          </>
        )}
        {of.nitrogen && (
          <>
            <dt>{t("nitrogen")}</dt>
            <dd>{rate(of.nitrogen)}</dd>
          </>
        )}
        {of.nitrogenSidedress && (
          <>
            <dt>{t("nitrogenSidedress")}</dt>
            <dd>{rate(of.nitrogenSidedress)}</dd>
          </>
        )}
        {of.magnesium && (
          <>
            <dt>{nutrientWord("Mg")}</dt>
            <dd>
              {t("magnesium", {
                class: classWord(of.magnesium.class),
                rate: rate(of.magnesium.withoutLime),
              })}
            </dd>
          </>
        )}
        {of.gypsum && (
          <>
            <dt>{t("gypsum")}</dt>
            <dd>
              {t("gypsumWhere", {
                rate: rate(of.gypsum.rate),
                calcium: ranges("reported", { value: figures(of.gypsum.caBelow), unit }),
                ph: figures(of.gypsum.phAtLeast),
              })}
            </dd>
          </>
        )}
      </dl>
    </Row>
  );
}
