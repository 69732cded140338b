"use client";

import type { PlantingState, Reader, ValveState, WhatIf } from "@pith/rules";
import { differing, whatIfOf } from "@pith/rules/what-if";
import { useTranslations } from "next-intl";
import { useDeferredValue, useEffect, useMemo, useState } from "react";
import { Answers } from "./Answers.tsx";
import type { Where } from "./actions.ts";
import { Choices } from "./Choices.tsx";
import { Keeping } from "./Keeping.tsx";
import { addressOf, slidersOf } from "./sliders.ts";

interface Props {
  where: Where;
  planting: PlantingState;
  valve: ValveState | null;
  asked: WhatIf;
  today: string;
  reader: Reader;
}

/** What is tried, beside what the planting's rules say of it: they run here, at every move. */
export function Desk({ where, planting, valve, asked, today, reader }: Props) {
  const t = useTranslations("whatIf");
  const desk = useMemo(() => whatIfOf({ planting, valve }), [planting, valve]);
  const sliders = useMemo(() => slidersOf(desk.starting, today), [desk, today]);
  // An address may ask for what cannot be tried on this planting.
  const [choices, setChoices] = useState<WhatIf>(() =>
    Object.fromEntries(sliders.flatMap(({ name }) => (name in asked ? [[name, asked[name]]] : []))),
  );
  // The handle never waits for the rules.
  const followed = useDeferredValue(choices);
  const tried = useMemo(() => differing(followed, desk.starting), [followed, desk]);
  const explored = useMemo(() => desk.explore(tried), [desk, tried]);
  useAddress(tried);
  return (
    <div className="what-if">
      <div className="what-if-choices">
        <Choices {...{ sliders, starting: desk.starting, choices, reader }} onChange={setChoices} />
        <Keeping
          {...{ where, planting, starting: desk.starting, tried, explored, reader, today }}
          onReset={() => setChoices({})}
        />
      </div>
      <div className="what-if-answers">
        {Object.keys(tried).length === 0 && <p className="lead">{t("nothing")}</p>}
        <Answers explored={explored} tried={tried} reader={reader} />
      </div>
    </div>
  );
}

/** How often a browser lets its address be rewritten without complaint. */
const PAUSE_MS = 400;

/** What is tried stands in the address, so that it can be sent to a colleague and come back to. */
function useAddress(tried: WhatIf) {
  useEffect(() => {
    const timer = setTimeout(() => {
      const query = addressOf(tried);
      const search = query === "" ? "" : `?${query}`;
      // A page that is being led elsewhere is not called back by what it says already.
      if (search === window.location.search) return;
      window.history.replaceState(null, "", search || window.location.pathname);
    }, PAUSE_MS);
    return () => clearTimeout(timer);
  }, [tried]);
}
