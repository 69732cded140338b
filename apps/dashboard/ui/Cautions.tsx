import type { Said } from "@pith/contract";
import { useTranslations } from "next-intl";

type Severity = "danger" | "warning" | "care";
const severityOf = (word: string): Severity => (word === "danger" || word === "warning" ? word : "care");

/** The cautions of an advice, worst first. They are told by mark, word and weight, and never left out. */
export function Cautions({ cautions }: { cautions: Said["cautions"] }) {
  const t = useTranslations("caution");
  if (cautions.length === 0) return null;
  return (
    <section className="cautions" aria-label={t("label")}>
      {cautions.map(({ id, version, severity, text }) => (
        <div key={id} className={`caution caution-${severityOf(severity)}`} data-caution={`${id}@${version}`}>
          <CautionMark severity={severityOf(severity)} />
          <p>
            <span className="caution-word">{t(severityOf(severity))}</span> <br />
            {text}
          </p>
        </div>
      ))}
    </section>
  );
}

/** A lozenge, as printers set it: solid for danger, half for a warning, open for care. */
function CautionMark({ severity }: { severity: Severity }) {
  return (
    <svg viewBox="0 0 36 36" aria-hidden="true">
      <path
        d="M18 2 34 18 18 34 2 18Z"
        fill={severity === "danger" ? "currentColor" : "none"}
        stroke="currentColor"
        strokeWidth="2.5"
        strokeLinejoin="miter"
      />
      {severity === "warning" && <path d="M2 18H34L18 34Z" fill="currentColor" />}
      {severity === "danger" && <path d="M18 9.5V20M18 23.5V27" stroke="var(--paper)" strokeWidth="3.4" />}
      {severity === "warning" && <path d="M18 8.5V15.5" stroke="currentColor" strokeWidth="3" />}
      {severity === "care" && <circle cx="18" cy="18" r="3.5" fill="currentColor" />}
    </svg>
  );
}
