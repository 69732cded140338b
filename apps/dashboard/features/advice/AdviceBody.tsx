import type { AdvisoryDetail, DraftDetail } from "@pith/contract";
import type { Reader } from "@pith/rules";
import { getTranslations } from "next-intl/server";
import { AdviceTable } from "../../ui/AdviceTable.tsx";
import { Chart } from "../../ui/Chart.tsx";
import { Ranges } from "../../ui/RangeChart.tsx";
import { Row } from "../../ui/Row.tsx";
import { Spread } from "../../ui/Spread.tsx";
import { Steps } from "../../ui/Steps.tsx";
import { EvidenceNotes } from "../evidence/EvidenceNotes.tsx";
import { EstimatedList, Working } from "./Working.tsx";

interface Props {
  answer: DraftDetail["answer"] | AdvisoryDetail["answerOfRule"];
  said: DraftDetail["said"];
  reader: Reader;
}

/** Up to so many columns a table stands in the text; with more it takes the margin of notes too. */
const NARROW = 5;

/** Everything about an answer below its decision and cautions: what to do first, then how it was found. */
export async function AdviceBody({ answer, said, reader }: Props) {
  const t = await getTranslations("advice");
  const evidence = answer.kind === "advice" ? answer.evidence : [];
  const computed = answer.kind === "advice" || answer.kind === "needs-more";
  const tables = (answer.kind === "advice" && answer.table) || [];
  const narrow = tables.filter(({ columns }) => columns.length <= NARROW);
  const wide = tables.filter(({ columns }) => columns.length > NARROW);
  const ranges = (answer.kind === "advice" && answer.ranges) || [];
  return (
    <>
      <Spread
        notes={
          <>
            {answer.kind === "advice" && evidence.length > 0 && (
              <>
                <h2 className="label">{t("evidence", { grade: t(`grades.${answer.grade}`) })}</h2>
                <EvidenceNotes ids={evidence} />
              </>
            )}
            {said.limits.length > 0 && (
              <>
                <h2 className="label">{t("limits")}</h2>
                <ul className="plain flow">
                  {said.limits.map((limit) => (
                    <li key={limit}>{limit}</li>
                  ))}
                </ul>
              </>
            )}
          </>
        }
      >
        {said.steps.length > 0 && (
          <Row side={<h2>{t("steps")}</h2>}>
            <Steps steps={said.steps} />
          </Row>
        )}
        {ranges.length > 0 && (
          <Row side={<h2>{t("ranges")}</h2>}>
            <Ranges ranges={ranges} reader={reader} />
          </Row>
        )}
        {narrow.length > 0 && (
          <Row side={<h2>{t("tables")}</h2>} className="advice-tables">
            {narrow.map((table) => (
              <AdviceTable key={table.id} table={table} reader={reader} />
            ))}
          </Row>
        )}
        {said.cases.length > 0 && (
          <Row side={<h2>{t("cases")}</h2>}>
            <p className="unknown">{t("casesHelp")}</p>
            {said.cases.map((one) => (
              <div key={one.when} className="case flow">
                <p>
                  <em>{one.when}</em>
                </p>
                <p>
                  <strong>{one.decision}</strong>
                </p>
                {one.steps.length > 0 && <Steps steps={one.steps} />}
              </div>
            ))}
          </Row>
        )}
        {said.missing.length > 0 && (
          <Row side={<h2>{t("missing")}</h2>}>
            <ul className="listing">
              {said.missing.map((one) => (
                <li key={one.field}>
                  <p className="listing-head">{one.measure}</p>
                  <p className="unknown">{one.couldMove}</p>
                </li>
              ))}
            </ul>
          </Row>
        )}
        {said.problems.length > 0 && (
          <Row side={<h2>{t("problems")}</h2>}>
            <ul className="listing">
              {said.problems.map((one) => (
                <li key={`${one.field} ${one.message}`}>
                  <span className="label">{one.field}</span> {one.message}
                  {one.accepted && (
                    <span className="faint"> ({t("accepted", { accepted: one.accepted })})</span>
                  )}
                </li>
              ))}
            </ul>
          </Row>
        )}
        {said.wouldChange.length > 0 && (
          <Row side={<h2>{t("wouldChange")}</h2>}>
            <ul className="listing">
              {said.wouldChange.map((one) => (
                <li key={one}>{one}</li>
              ))}
            </ul>
          </Row>
        )}
        {computed && (
          <Row side={<h2>{t("estimated")}</h2>}>
            <EstimatedList estimated={answer.estimated} names={reader.bedNames} />
          </Row>
        )}
      </Spread>
      {wide.length > 0 && (
        <Row side={<h2>{t("tables")}</h2>} wide className="advice-tables">
          {wide.map((table) => (
            <AdviceTable key={table.id} table={table} reader={reader} />
          ))}
        </Row>
      )}
      {answer.kind === "advice" && answer.charts.length > 0 && (
        <Row side={<h2>{t("charts")}</h2>} wide>
          {answer.charts.map((chart) => (
            <Chart key={chart.id} chart={chart} reader={reader} />
          ))}
        </Row>
      )}
      {computed && answer.working.length > 0 && (
        <Row id="working" side={<h2>{t("working")}</h2>} wide>
          <p className="faint">{t("workingUnits")}</p>
          <Working lines={answer.working} caption={t("working")} names={reader.bedNames} />
        </Row>
      )}
    </>
  );
}
