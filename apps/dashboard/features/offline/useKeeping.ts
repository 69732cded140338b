import { useActionState, useEffect, useRef, useState } from "react";
import { type FormState, untouched } from "../forms/plan.ts";
import { keeping, type Offline, refusedState } from "./keeping.ts";
import { openedAgain } from "./store.ts";

/** A form's state and how it is sent; opened again to change what the office refused, it starts from what was written. */
export function useKeeping(
  action: (before: FormState, data: FormData) => Promise<FormState>,
  offline: Offline | undefined,
) {
  const [again, setAgain] = useState<FormState>();
  const inPlaceOf = useRef<string>(undefined);
  const [state, send, busy] = useActionState(keeping(action, offline, inPlaceOf), untouched);
  const who = offline?.who;
  useEffect(() => {
    if (who === undefined) return;
    void openedAgain(who).then((one) => {
      if (!one) return;
      inPlaceOf.current = one.key;
      // An attempt of its own, so that the fields are mounted anew with what was written.
      const { refused, lead, problems, meanwhile } = one;
      setAgain({ attempt: -1, ...refusedState(one, { refused: refused ?? "", lead, problems, meanwhile }) });
    });
  }, [who]);
  return [state.attempt === 0 && again ? again : state, send, busy] as const;
}
