"use client";

import type { ComponentProps } from "react";
import { setAside } from "../advice/actions.ts";
import { Form } from "../forms/Form.tsx";

export interface AsideWords {
  until: string;
  setAside: string;
  frame: ComponentProps<typeof Form>["words"];
}

/** Asks until which day a draft is put off. */
export function AsideForm({ draftId, words }: { draftId: string; words: AsideWords }) {
  const field = {
    name: "until",
    id: `until-${draftId}`,
    label: words.until,
    kind: "date" as const,
    unit: null,
    hint: null,
    required: true,
    value: "",
    choices: [],
  };
  return (
    <Form
      action={setAside}
      sections={[{ title: null, fields: [field], each: null }]}
      submit={words.setAside}
      words={words.frame}
    >
      <input type="hidden" name="draft" value={draftId} />
    </Form>
  );
}
