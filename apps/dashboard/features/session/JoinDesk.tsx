"use client";

import Link from "next/link";
import { useEffect, useState } from "react";
import { type Invited, join, readInvitation } from "./actions.ts";
import { LineForm } from "./LineForm.tsx";

type Key =
  | "reading"
  | "gone"
  | "name"
  | "password"
  | "passwordHint"
  | "submit"
  | "busy"
  | "signIn"
  | "lead"
  | "agent"
  | "farmer"
  | "reader";

interface Props {
  words: Record<Key, string>;
  /** With `{by}`, `{office}`, `{email}` and `{farms}` in their places. */
  asked: string;
  farms: string;
}

const fill = (pattern: string, values: Record<string, string>) =>
  pattern.replace(/\{(\w+)\}/g, (_, name: string) => values[name] ?? "");

/** What the invitation is for, and what it takes to join. */
export function JoinDesk({ words, asked, farms }: Props) {
  const [invited, setInvited] = useState<Invited | null | undefined>();
  useEffect(() => {
    readInvitation(window.location.hash.slice(1)).then(setInvited, () => setInvited(null));
  }, []);
  if (invited === undefined) return <p role="status">{words.reading}</p>;
  if (invited === null) {
    return (
      <p className="refusal" role="alert">
        {words.gone}
      </p>
    );
  }
  const { officeName, invitedBy, email, name, role, farmNames } = invited;
  return (
    <>
      <p className="decision">{fill(asked, { by: invitedBy, office: officeName, email })}</p>
      <p>{words[role]}</p>
      {farmNames.length > 0 && <p>{fill(farms, { farms: farmNames.join(", ") })}</p>}
      <LineForm
        action={join}
        lines={[
          { name: "name", label: words.name, type: "text", autoComplete: "name", value: name },
          {
            name: "newPassword",
            label: words.password,
            type: "password",
            autoComplete: "new-password",
            hint: words.passwordHint,
          },
        ]}
        withToken
        submit={words.submit}
        busy={words.busy}
        after={<Link href="/sign-in">{words.signIn}</Link>}
      />
    </>
  );
}
