import { SEASON_TABLES, type SeasonRecord } from "@pith/contract";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { dayText } from "../../format/dates.ts";
import { readerLanguage } from "../../format/language.ts";
import { Cautions } from "../../ui/Cautions.tsx";
import { PrintButton } from "../../ui/PrintButton.tsx";
import { rowsOfBed } from "./cells.ts";
import { OF_BED, OF_FARM } from "./columns.ts";
import { RowsTable } from "./RowsTable.tsx";
import { Totals } from "./Totals.tsx";

interface Props {
  record: SeasonRecord;
  farmId: string;
  officeName: string;
  back: { href: string; label: string };
}

/** A farm's season to lay before an auditor: on paper each page says whose and which season. */
export async function SeasonSheet({ record, farmId, officeName, back }: Props) {
  const t = await getTranslations("seasonRecord");
  const { tables, units, season } = record;
  const said = { t, units, language: readerLanguage() };
  const page = `/season-record/${farmId}`;
  const title = t("title", { farm: record.farm, season: record.seasonName });
  const days = t("days", { from: dayText(record.from), to: dayText(record.to) });
  const farm = tables.totals.find((row) => row.bedId === null);
  return (
    <article className="season-sheet">
      <div className="season-running print-only">
        {title} <span className="faint">{officeName}</span>
      </div>
      <div className="season-body">
        <p className="crumbs">
          <Link href={back.href}>{back.label}</Link>
        </p>
        <header className="sheet-head">
          <h1>{title}</h1>
          <p>
            {days} <span className="faint">{officeName}</span>
          </p>
          <PrintButton label={t("print")} />
          <a className="tap no-print" href={`${page}/${season}/record.pdf`}>
            {t("pdf")}
          </a>
        </header>
        <p className="actions no-print">
          <Link className="tap" href={`${page}?season=${season - 1}`}>
            {t("before", { season: season - 1 })}
          </Link>
          <Link className="tap" href={`${page}?season=${season + 1}`}>
            {t("after", { season: season + 1 })}
          </Link>
        </p>
        <section aria-labelledby="missing">
          <h2 id="missing">{t("missing")}</h2>
          {tables.missing.length === 0 ? (
            <p>{t("nothingMissing")}</p>
          ) : (
            <ul className="sheet-lines">
              {tables.missing.map((line) => (
                <li key={`${line.code} ${line.id} ${line.text}`}>
                  {line.bed && <strong>{line.bed}: </strong>}
                  {line.on && <span className="number">{dayText(line.on)} </span>}
                  {line.text}
                </li>
              ))}
            </ul>
          )}
        </section>
        {farm && (
          <section aria-labelledby="farm">
            <h2 id="farm">{t("wholeFarm")}</h2>
            <Totals row={farm} said={said} />
          </section>
        )}
        {tables.beds.map((bed) => (
          <section key={bed.bedId} className="season-bed" aria-labelledby={bed.bedId}>
            <h2 id={bed.bedId}>{bed.bed}</h2>
            <p>
              {t(`certification.${bed.certification}`, { certifier: bed.certifier ?? t("unknown") })}{" "}
              <span className="faint">{bed.site}</span>
            </p>
            {OF_BED.map((table) => {
              const rows = rowsOfBed(tables, table, bed);
              if (rows.length === 0) return null;
              return (
                <div key={table}>
                  <h3>{t(`tables.${table}`)}</h3>
                  <RowsTable table={table} rows={rows} said={said} />
                </div>
              );
            })}
            {tables.totals
              .filter((row) => row.bedId === bed.bedId)
              .map((row) => (
                <div key={row.bed}>
                  <h3>{t("tables.totals")}</h3>
                  <Totals row={row} said={said} />
                </div>
              ))}
          </section>
        ))}
        {OF_FARM.map((table) =>
          tables[table].length === 0 ? null : (
            <section key={table} aria-labelledby={table}>
              <h2 id={table}>{t(`tables.${table}`)}</h2>
              <RowsTable table={table} rows={tables[table]} said={said} />
            </section>
          ),
        )}
        <section className="no-print" aria-labelledby="files">
          <h2 id="files">{t("files")}</h2>
          <p>{t("filesWhy")}</p>
          <p className="actions">
            {SEASON_TABLES.map((table) => (
              <a
                key={table}
                className="tap"
                href={`${page}/${season}/${table}`}
                download={`season-${season}-${table}.csv`}
              >
                {t(`tables.${table}`)}
              </a>
            ))}
          </p>
        </section>
        <Cautions cautions={record.cautions} />
        <section aria-labelledby="notes">
          <h2 id="notes">{t("notes")}</h2>
          <ul className="sheet-lines">
            {record.notes.map((note) => (
              <li key={note}>{note}</li>
            ))}
          </ul>
        </section>
      </div>
    </article>
  );
}
