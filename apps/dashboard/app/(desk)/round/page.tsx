import { adviceRoutes, type Draft, deliveryRoutes, farmRoutes } from "@pith/contract";
import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { Fragment } from "react";
import { adviseAgain } from "../../../features/advice/actions.ts";
import { Calls } from "../../../features/delivery/Calls.tsx";
import { ActButton } from "../../../features/forms/ActButton.tsx";
import { frameWords } from "../../../features/forms/words.ts";
import { Alarms } from "../../../features/round/Alarms.tsx";
import { RoundKeys } from "../../../features/round/RoundKeys.tsx";
import { asideWords, BringBack } from "../../../features/round/SetAside.tsx";
import { Automatic } from "../../../features/standingOrders/Automatic.tsx";
import { clockText, dayAt, todayIn, weekdayText } from "../../../format/dates.ts";
import { call } from "../../../server/api.ts";
import { agentSeat } from "../../../server/seat.ts";
import { readerZone } from "../../../server/zone.ts";
import { Choose } from "../../../ui/Choose.tsx";
import { Row } from "../../../ui/Row.tsx";
import { isRule, RULES } from "../../../ui/ruleNames.ts";
import { Saved } from "../../../ui/Saved.tsx";

/** So many of what standing orders issued are shown; the rest stand on their own page. */
const MOST_AUTOMATIC = 10;

/** So many that wait for a second reader are shown. */
const MOST_WAITING = 50;

/** The form that takes what was marked. */
const SEVERAL = "several";

interface Asked extends Record<string, string | undefined> {
  farm?: string;
  rule?: string;
  group?: string;
  show?: string;
  after?: string;
  shown?: string;
}

/** At first as many as are painted at once on a slow phone; more where somebody asks for more. */
const SHOWN = [20, 100, 500] as const;

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("round");
  return { title: t("title") };
}

/** What needs a decision, over all farms, most urgent first, each with the reason for its place. */
export default async function RoundPage({ searchParams }: { searchParams: Promise<Asked> }) {
  const [{ officeId }, asked, zone, t, rules, words] = await Promise.all([
    agentSeat(),
    searchParams,
    readerZone(),
    getTranslations("round"),
    getTranslations("rules"),
    frameWords(),
  ]);
  const shown = SHOWN.find((n) => String(n) === asked.shown) ?? SHOWN[0];
  const [
    { alarms, drafts, total, next },
    { drafts: waiting },
    { farms },
    { advisories: automatic },
    { calls },
  ] = await Promise.all([
    call(adviceRoutes.getRound, {
      params: { officeId },
      query: {
        farmId: asked.farm || undefined,
        ruleId: asked.rule || undefined,
        all: asked.show === "all" ? "yes" : undefined,
        setAside: asked.show === "aside" ? "only" : undefined,
        order: asked.group === "deadline" ? "deadline" : undefined,
        after: asked.after || undefined,
        limit: shown,
      },
    }),
    call(adviceRoutes.getRound, {
      params: { officeId },
      query: { second: "waiting", setAside: "yes", limit: MOST_WAITING },
    }),
    call(farmRoutes.listFarms, { params: { officeId } }),
    call(adviceRoutes.listAdvisories, {
      params: { officeId },
      query: { farmId: asked.farm || undefined, automatic: "yes", open: "yes", limit: MOST_AUTOMATIC },
    }),
    call(deliveryRoutes.listCalls, { params: { officeId } }),
  ]);
  const { farm, rule, group, show } = asked;
  const addressWith = (more: Record<string, string | undefined>) =>
    `/round?${new URLSearchParams(
      Object.entries({ farm, rule, group, show, shown: asked.shown, ...more }).flatMap(([name, value]) =>
        value ? [[name, value]] : [],
      ),
    )}`;
  const today = todayIn(zone);
  const nameOf = (ruleId: string) => (isRule(ruleId) ? rules(ruleId) : ruleId);
  const groups = groupsOf(
    drafts,
    {
      farm: ({ farmName }: Draft) => farmName,
      rule: ({ ruleId }: Draft) => nameOf(ruleId),
      deadline: ({ actBy }: Draft) => (actBy === null ? t("noHurry") : weekdayText(dayAt(actBy, zone))),
    }[asked.group ?? ""],
  );

  return (
    <>
      <Saved asked={asked} />
      <Row
        side={<p className="label">{weekdayText(today)}</p>}
        notes={<p className="keys faint">{t.rich("keys", { kbd: (chunks) => <kbd>{chunks}</kbd> })}</p>}
      >
        <h1>{t("title")}</h1>
        <p className="decision-under">{t("count", { count: total })}</p>
        <form className="filters" method="get">
          <Choose
            name="farm"
            label={t("farm")}
            chosen={farm}
            options={[["", t("allFarms")], ...farms.map(({ id, name }) => [id, name] as const)]}
          />
          <Choose
            name="rule"
            label={t("rule")}
            chosen={rule}
            options={[["", t("allRules")], ...RULES.map((id) => [id, rules(id)] as const)]}
          />
          <Choose
            name="group"
            label={t("group")}
            chosen={group}
            options={[
              ["", t("byUrgency")],
              ["farm", t("byFarm")],
              ["rule", t("byRule")],
              ["deadline", t("byDeadline")],
            ]}
          />
          <Choose
            name="show"
            label={t("show")}
            chosen={show}
            options={[
              ["", t("showAdvice")],
              ["all", t("showAll")],
              ["aside", t("showAside")],
            ]}
          />
          <button type="submit" className="quiet">
            {t("apply")}
          </button>
        </form>
      </Row>
      <Calls calls={calls} zone={zone} />
      <Alarms alarms={alarms} zone={zone} />
      {waiting.length > 0 && (
        <Row side={<h2>{t("waiting")}</h2>}>
          <ul className="listing">
            {waiting.map((one) => (
              <li key={one.id}>
                <Link className="listing-head" href={`/drafts/${one.id}#issue`} prefetch={false}>
                  {one.headline}
                </Link>
                <p className="faint">
                  {one.subjectName} · {one.farmName} ·{" "}
                  {t(one.second?.mine ? "waitingMine" : "waitingFrom", { name: one.second?.askedBy ?? "" })}
                </p>
              </li>
            ))}
          </ul>
        </Row>
      )}
      {automatic.length > 0 && (
        <Row side={<h2>{t("automatic")}</h2>} notes={<Link href="/standing-orders">{t("orders")}</Link>}>
          <Automatic advisories={automatic} zone={zone} />
        </Row>
      )}
      {drafts.length === 0 ? (
        <Row>
          <p>{asked.farm || asked.rule || asked.show ? t("emptyFiltered") : t("empty")}</p>
        </Row>
      ) : (
        <RoundKeys many={drafts.length > SHOWN[0]} words={asideWords(t, words)}>
          {groups.map(({ name, drafts: ofGroup }) => (
            <Fragment key={name}>
              {name !== "" && (
                <Row>
                  <h2 className="group">{name}</h2>
                </Row>
              )}
              {ofGroup.map((draft) => (
                <Entry
                  key={draft.id}
                  draft={draft}
                  rule={nameOf(draft.ruleId)}
                  zone={zone}
                  today={today}
                  t={t}
                  words={words}
                />
              ))}
            </Fragment>
          ))}
          <Row className="no-print">
            <form id={SEVERAL} action="/round/several" method="get">
              <button type="submit" className="press">
                {t("readSeveral")}
              </button>
            </form>
          </Row>
        </RoundKeys>
      )}
      {next !== null && (
        <Row>
          <p className="actions">
            <Link className="tap" href={addressWith({ after: next })}>
              {t("further")}
            </Link>
            {SHOWN.filter((n) => n > shown && total > shown).map((n) => (
              <Link
                key={n}
                className="tap"
                href={addressWith({ shown: String(n), after: asked.after })}
                scroll={false}
                prefetch={false}
              >
                {t("showMany", { n })}
              </Link>
            ))}
          </p>
        </Row>
      )}
      <Row>
        <ActButton
          action={adviseAgain.bind(null, asked.farm ?? null, addressWith({}).slice("/round?".length))}
          label={t("adviseAgain")}
          busy={t("advising")}
          weight="quiet"
        />
        <p className="faint">{t("adviseAgainHelp")}</p>
        <p className="actions">
          <Link className="tap" href="/issued" prefetch={false}>
            {t("allIssued")}
          </Link>
          <Link className="tap" href="/account/delivery">
            {t("delivery")}
          </Link>
        </p>
      </Row>
    </>
  );
}

/** In the order in which each group's most urgent stands in the round; without a name, all in one. */
function groupsOf(drafts: Draft[], nameOf: ((draft: Draft) => string) | undefined) {
  const groups = new Map<string, Draft[]>();
  for (const draft of drafts) {
    const name = nameOf?.(draft) ?? "";
    groups.set(name, [...(groups.get(name) ?? []), draft]);
  }
  return [...groups].map(([name, ofGroup]) => ({ name, drafts: ofGroup }));
}

interface OfDraft {
  draft: Draft;
  zone: string;
  today: string;
  t: Awaited<ReturnType<typeof getTranslations<"round">>>;
}

/** Waits for nothing: each part of a page that waits is sent as a piece for the browser to put in its place, and a round has hundreds. */
function Entry({
  draft,
  rule,
  zone,
  today,
  t,
  words,
}: OfDraft & { rule: string; words: Awaited<ReturnType<typeof frameWords>> }) {
  return (
    <Row
      className="draft"
      side={
        <>
          <ByWhen draft={draft} zone={zone} today={today} t={t} />
          {draft.kind === "advice" && (
            <label className="mark no-print">
              <input
                type="checkbox"
                form={SEVERAL}
                name="id"
                value={draft.id}
                data-mark
                aria-label={t("mark", { headline: draft.headline })}
              />{" "}
              {t("markShort")}
            </label>
          )}
        </>
      }
      notes={
        <>
          <p>{draft.reason}</p>
          {draft.setAsideUntil === null ? (
            <details className="no-print" name="aside" data-aside={draft.id}>
              <summary>{t("setAside")}</summary>
              <div data-aside-form />
            </details>
          ) : (
            <BringBack draft={draft} t={t} words={words} />
          )}
        </>
      }
    >
      <p className="faint">
        <span className="label">{rule}</span>
        {draft.kind !== "advice" && <span className="unknown"> · {t(`kinds.${draft.kind}`)}</span>}
      </p>
      <h2 className="headline">
        <Link href={`/drafts/${draft.id}`} data-entry prefetch={false}>
          {draft.headline}
        </Link>
      </h2>
      <p>
        {draft.subjectName} · <Link href={`/farms/${draft.farmId}`}>{draft.farmName}</Link>
      </p>
    </Row>
  );
}

function ByWhen({ draft, zone, today, t }: OfDraft) {
  if (draft.actBy === null) return <span className="faint">{t("noHurry")}</span>;
  const day = dayAt(draft.actBy, zone);
  return (
    <>
      <span className="faint">{t("actBy")} </span>
      <strong>{day === today ? t("today") : weekdayText(day)}</strong>{" "}
      <time dateTime={draft.actBy}>{clockText(draft.actBy, zone)}</time>
      {day < today && <span className="unknown"> {t("past")}</span>}
    </>
  );
}
