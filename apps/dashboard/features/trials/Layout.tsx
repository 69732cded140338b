import type { FarmDetail } from "@pith/contract";
import { getTranslations } from "next-intl/server";
import { inText } from "../../format/units.ts";
import { type NamedPlot, treatmentsOf } from "./treatments.ts";

/** How a bed is drawn: its length is the width of the page. */
const WIDTH = 1000;
const HEIGHT = 110;

/** Where each plot lies, bed by bed and to scale along it; letters and hatching tell the treatments apart. */
export async function Layout({ plots, detail }: { plots: NamedPlot[]; detail: FarmDetail }) {
  const t = await getTranslations("trials");
  const treatments = treatmentsOf(plots);
  const bedIds = [...new Set(plots.map((p) => p.bedId))];
  return (
    <figure className="trial-layout flow">
      <svg className="trial-hatches" aria-hidden="true" width="0" height="0">
        <defs>
          {treatments.map(({ nth }) => (
            <Hatch key={nth} nth={nth} />
          ))}
        </defs>
      </svg>
      {bedIds.map((bedId) => {
        const bed = detail.beds.find((b) => b.id === bedId);
        const lengthM = bed?.lengthM ?? Math.max(...plots.map((p) => p.toM));
        const x = (m: number) => (m / lengthM) * WIDTH;
        const here = plots.filter((p) => p.bedId === bedId);
        return (
          <div key={bedId}>
            <p className="label">
              {t("bedLength", { bed: bed?.name ?? "", length: inText(lengthM, "m", detail.farm.units) })}
            </p>
            <svg
              viewBox={`-2 0 ${WIDTH + 4} ${HEIGHT}`}
              role="img"
              aria-label={here.map((p) => t("plotSaid", { number: p.number, letter: p.letter })).join(", ")}
            >
              <rect x="0" y="10" width={WIDTH} height="90" className="trial-bed" />
              {here.map((plot) => (
                <g key={plot.id}>
                  <rect
                    x={x(plot.fromM)}
                    y="10"
                    width={x(plot.toM) - x(plot.fromM)}
                    height="90"
                    fill={`url(#trial-hatch-${plot.nth})`}
                    className="trial-plot"
                  />
                  <text x={(x(plot.fromM) + x(plot.toM)) / 2} y="50" className="trial-letter">
                    {plot.letter}
                  </text>
                  <text x={(x(plot.fromM) + x(plot.toM)) / 2} y="84" className="trial-number">
                    {plot.number}
                  </text>
                </g>
              ))}
            </svg>
          </div>
        );
      })}
      <figcaption>
        <ul className="plain trial-legend">
          {treatments.map(({ nth, letter, treatment }) => (
            <li key={nth}>
              <svg viewBox="0 0 40 24" aria-hidden="true">
                <rect
                  x="1"
                  y="1"
                  width="38"
                  height="22"
                  fill={`url(#trial-hatch-${nth})`}
                  className="trial-plot"
                />
              </svg>
              <strong>{letter}</strong> {treatment}
            </li>
          ))}
        </ul>
      </figcaption>
    </figure>
  );
}

/** Lines closer and at another slope for each treatment; the first has none. */
function Hatch({ nth }: { nth: number }) {
  const gap = 14 - 2 * (nth % 4);
  return (
    <pattern
      id={`trial-hatch-${nth}`}
      width={gap}
      height={gap}
      patternUnits="userSpaceOnUse"
      patternTransform={`rotate(${(nth - 1) * 37})`}
    >
      <rect width={gap} height={gap} className="trial-ground" />
      {nth > 1 && <line x1="0" y1="0" x2="0" y2={gap} className="trial-line" />}
    </pattern>
  );
}
