import { useLanguage } from "../../ui/Language.tsx";
import type { Waiting } from "./store.ts";
import { whenText } from "./whenText.ts";

export type WaitingWords = Record<
  "letGo" | "refused" | "change" | "meanwhile" | "theirs" | "mine" | "keepTheirs" | "sendMine" | "photos",
  string
>;

interface Props {
  one: Waiting;
  words: WaitingWords;
  onLetGo: () => void;
  onSend: () => void;
}

/** One that waits: what the office said against it, or what another said meanwhile, and what its writer may do. */
export function WaitingOne({ one, words, onLetGo, onSend }: Props) {
  const { label, at, refused, meanwhile, photos = [], photosTo, page, key } = one;
  const language = useLanguage();
  const of = <span className="unseen">: {label}</span>;
  return (
    <li>
      <p>
        {label} <span className="faint">{whenText(at, language)}</span>
      </p>
      {photos.length > 0 && <p className="faint">{words.photos.replace("{count}", String(photos.length))}</p>}
      {meanwhile && (
        <>
          <p className="refusal">{words.meanwhile}</p>
          <dl className="facts">
            <dt>{words.theirs}</dt>
            <dd>{meanwhile.theirs}</dd>
            <dt>{words.mine}</dt>
            <dd>{meanwhile.mine}</dd>
          </dl>
        </>
      )}
      {refused !== null && !meanwhile && (
        <p className="refusal">
          {words.refused} {refused}
        </p>
      )}
      <p className="actions">
        {meanwhile && (
          <button type="button" className="press" onClick={onSend}>
            {words.sendMine}
            {of}
          </button>
        )}
        {/* A plain link: without signal the phone gives the page that it kept. What arrived already is not written again. */}
        {refused !== null && photosTo === undefined && page && (
          <a className={meanwhile ? "tap" : "press"} href={`${page}?again=${key}`}>
            {words.change}
            {of}
          </a>
        )}
        <button type="button" className="quiet" onClick={onLetGo}>
          {meanwhile ? words.keepTheirs : words.letGo}
          {of}
        </button>
      </p>
    </li>
  );
}
