import { checkPlan, planDrawing } from "@pith/rules";
import { readerLanguage } from "../../format/language.ts";
import { stateOf } from "./blocks.ts";
import type { DeskProps } from "./Desk.tsx";
import { Drawings } from "./Drawings.tsx";
import { Judgement } from "./Judgement.tsx";
import { Legend } from "./Legend.tsx";
import { Placements } from "./Placements.tsx";
import { broken, viewOf } from "./view.ts";

/** The plan to read and to print: for the farmer, whose agent keeps it. */
export function ReadPlan({ plan, words, units, bedNames, valveNames, sides }: DeskProps) {
  const { blocks } = plan;
  const state = stateOf(plan, plan.state.beds, blocks);
  const [drawing, check] = [planDrawing(state), checkPlan(state)];
  const view = viewOf({ words, units, language: readerLanguage(), bedNames, blocks, drawing });
  const { beds } = state;
  return (
    <div className="plan-desk">
      <p className="faint">{words.readOnly}</p>
      <div className="plan-spread">
        <div className="plan-sheet">
          <Drawings
            drawing={drawing}
            beds={beds}
            blocks={blocks}
            view={view}
            sides={sides}
            hands={{ selected: null, moving: null, broken: broken(check.hard) }}
          />
          <Legend
            drawing={drawing}
            blocks={blocks}
            view={view}
            valveNames={valveNames}
            beds={beds}
            sides={sides}
          />
        </div>
        <div className="plan-side">
          <Judgement check={check} view={view} change={null} />
        </div>
        <div className="plan-more">
          <section>
            <h2>{words.placements}</h2>
            <Placements blocks={blocks} bedOrder={beds.map((b) => b.id)} view={view} />
          </section>
        </div>
      </div>
    </div>
  );
}
