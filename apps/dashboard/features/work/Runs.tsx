import type { Run } from "@pith/contract";
import { getTranslations } from "next-intl/server";
import { instantText } from "../../format/dates.ts";
import { ActButton } from "../forms/ActButton.tsx";
import { retry } from "./actions.ts";

/** Pieces of work, each with how it stands; what was given up with the way to have it done again. */
export async function Runs({ runs, zone, mayRetry }: { runs: Run[]; zone: string; mayRetry: boolean }) {
  const t = await getTranslations("work");
  const nameOf = (task: string) =>
    t.has(`tasks.${task as "advise-farm"}`) ? t(`tasks.${task as "advise-farm"}`) : task;
  return (
    <ul className="listing">
      {runs.map((run) => (
        <li key={run.id}>
          <p className="listing-head">
            {nameOf(run.task)}
            {run.farmName && `, ${run.farmName}`}
          </p>
          <Progress run={run} />
          <p className="faint">
            <span className={run.status === "failed" ? "unknown" : ""}>{t(`statuses.${run.status}`)}</span>
            {" · "}
            {run.wantedBy
              ? t("wantedBy", { name: run.wantedBy, when: instantText(run.wantedAt, zone) })
              : t("byTheClock", { when: instantText(run.wantedAt, zone) })}
            {run.status === "waiting" && !run.problem && run.dueAt && (
              <> · {t("due", { when: instantText(run.dueAt, zone) })}</>
            )}
            {run.endedAt && ` · ${t("ended", { when: instantText(run.endedAt, zone) })}`}
            {run.attempts > 1 && ` · ${t("attempts", { count: run.attempts })}`}
          </p>
          {run.problem && (
            <p>
              {run.status === "waiting" && run.dueAt
                ? t("again", { problem: run.problem, when: instantText(run.dueAt, zone) })
                : run.problem}
            </p>
          )}
          {mayRetry && run.status === "failed" && (
            <ActButton
              action={retry.bind(null, run.id)}
              label={t("retry")}
              busy={t("retrying")}
              weight="quiet"
            />
          )}
        </li>
      ))}
    </ul>
  );
}

async function Progress({ run: { progress, status } }: { run: Run }) {
  const t = await getTranslations("work");
  if (!progress || (status !== "running" && status !== "waiting")) return null;
  const said = t("soFar", progress);
  return (
    <p className="working">
      <progress value={progress.done} max={progress.total} aria-label={said} /> {said}
    </p>
  );
}
