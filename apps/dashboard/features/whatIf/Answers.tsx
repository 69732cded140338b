import type { Said } from "@pith/contract";
import { type Reader, render, type WhatIf } from "@pith/rules";
import { answerSaid, type ChoiceName, type Explored, RULE_OF } from "@pith/rules/what-if";
import { useTranslations } from "next-intl";
import { useState } from "react";
import { Cautions } from "../../ui/Cautions.tsx";
import { Chart } from "../../ui/Chart.tsx";
import { Working } from "../advice/Working.tsx";

interface Props {
  explored: Explored[];
  tried: WhatIf;
  reader: Reader;
}

/** First the rules that speak of what is tried, whole; then all others in a line each, those that answer otherwise marked. */
export function Answers({ explored, tried, reader }: Props) {
  const t = useTranslations("whatIf");
  const about = new Set((Object.keys(tried) as ChoiceName[]).map((name) => RULE_OF[name]));
  const own = explored.filter(({ rule }) => about.has(rule.id));
  const others = explored.filter(({ rule }) => !about.has(rule.id));
  const nothing = own.length === 0;
  return (
    <>
      {own.map((e) => (
        <Answer key={e.rule.id} explored={e} reader={reader} />
      ))}
      <Cautions cautions={cautionsOf([...own, ...others.filter(({ changed }) => changed)], reader)} />
      {others.length > 0 && (
        <section>
          <h2>{t(nothing ? "asThingsAre" : "others")}</h2>
          <dl className="what-if-others">
            {others.map(({ rule, asIs, tried: then, changed }) => (
              <div key={rule.id}>
                <dt>{render({ key: `what-if.rule.${rule.id}`, params: {} }, reader)}</dt>
                <dd>
                  {changed && <strong>{t("otherwise")} </strong>}
                  {said(then ?? asIs, reader) ?? t("silent")}
                  {changed && (
                    <span className="faint"> {t("before", { said: said(asIs, reader) ?? "" })}</span>
                  )}
                </dd>
              </div>
            ))}
          </dl>
        </section>
      )}
    </>
  );
}

/** Each once, worst first, of all that speak of what is tried. */
function cautionsOf(explored: Explored[], { language }: Reader): Said["cautions"] {
  const worst = { danger: 0, warning: 1, care: 2 };
  const each = new Map(explored.flatMap((e) => e.cautions.map((c) => [c.id, c] as const)));
  return [...each.values()]
    .toSorted((a, b) => worst[a.severity] - worst[b.severity])
    .map(({ id, version, severity, text }) => ({ id, version, severity, text: text[language] }));
}

/** What one rule says as tried, against what it says as things are; its own words on the choice, drawn and reckoned. */
function Answer({
  explored: { rule, asIs, tried, changed, said: more, working, charts },
  reader,
}: {
  explored: Explored;
  reader: Reader;
}) {
  const t = useTranslations("whatIf");
  const [open, setOpen] = useState(false);
  const advice = tried?.kind === "advice" ? tried : null;
  const lines = [...working, ...(advice?.working ?? [])];
  const drawn = charts.length > 0 ? charts : (advice?.charts ?? []).slice(0, 1);
  return (
    <section className="what-if-answer" data-rule={rule.id}>
      <h2>{render({ key: `what-if.rule.${rule.id}`, params: {} }, reader)}</h2>
      <p className="what-if-tried" aria-live="polite">
        {said(tried, reader) ?? t("silent")}
      </p>
      <p className="faint">
        {changed ? t("before", { said: said(asIs, reader) ?? t("silent") }) : t("same")}
      </p>
      {more.length > 0 && (
        <ul className="plain flow">
          {more.map((message) => (
            <li key={message.key}>{render(message, reader)}</li>
          ))}
        </ul>
      )}
      {drawn.map((chart) => (
        <Chart key={chart.id} chart={chart} reader={reader} />
      ))}
      {lines.length > 0 && (
        <details onToggle={(event) => setOpen(event.currentTarget.open)}>
          <summary>{t("working")}</summary>
          {open && <Working lines={lines} caption={t("working")} names={reader.bedNames} />}
        </details>
      )}
    </section>
  );
}

function said(answer: Explored["tried"], reader: Reader): string | null {
  const message = answerSaid(answer);
  return message && render(message, reader);
}
