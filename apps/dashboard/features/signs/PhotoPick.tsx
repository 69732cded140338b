"use client";

import { useEffect, useRef, useState } from "react";
import { PHOTOS, TAKEN } from "../offline/names.ts";
import { openedAgain } from "../offline/store.ts";
import { MOST_PHOTOS, shrink } from "./shrink.ts";
import { Way } from "./Way.tsx";
import type { PickWords } from "./words.ts";

interface Picked {
  picture: Blob;
  /** The picture as an address, to be looked at. */
  shown: string;
}

/** Photographs that go along with a form: made small at once, so that the phone can keep them where there is no signal. */
export function PhotoPick({ who, words }: { who: string; words: PickWords }) {
  const [picked, setPicked] = useState<Picked[]>([]);
  const [busy, setBusy] = useState(false);
  const [unreadable, setUnreadable] = useState(false);
  const box = useRef<HTMLFieldSetElement>(null);

  useEffect(() => {
    void openedAgain(who).then(async (one) => {
      if (one?.photos) setPicked(await Promise.all(one.photos.map(({ picture }) => shownOf(picture))));
    });
  }, [who]);

  useEffect(() => {
    const form = box.current?.form;
    const handOn = ({ formData }: FormDataEvent) => {
      for (const { picture } of picked) formData.append(PHOTOS, picture);
    };
    form?.addEventListener("formdata", handOn);
    return () => form?.removeEventListener("formdata", handOn);
  }, [picked]);

  // What the phone keeps now is no longer this form's.
  useEffect(() => {
    const empty = () => setPicked([]);
    window.addEventListener(TAKEN, empty);
    return () => window.removeEventListener(TAKEN, empty);
  }, []);

  async function add(files: File[]) {
    setBusy(true);
    setUnreadable(false);
    for (const file of files.slice(0, MOST_PHOTOS - picked.length)) {
      const small = await shrink(file);
      if (small) {
        const one = await shownOf(small);
        setPicked((before) => [...before, one]);
      } else setUnreadable(true);
    }
    setBusy(false);
  }

  return (
    <fieldset ref={box} className="form-section photo-desk">
      <legend>{words.title}</legend>
      <p className="hint">{words.along}</p>
      <ul className="photos">
        {picked.map(({ shown }, i) => (
          <li key={shown}>
            {/* biome-ignore lint/performance/noImgElement: it is on this phone alone */}
            <img src={shown} alt={words.nth.replace("{nth}", String(i + 1))} />
            <button
              type="button"
              className="quiet"
              onClick={() => setPicked(picked.filter((one) => one.shown !== shown))}
            >
              {words.remove}
              <span className="unseen">: {words.nth.replace("{nth}", String(i + 1))}</span>
            </button>
          </li>
        ))}
      </ul>
      <div role="status">{busy && <p>{words.shrinking}</p>}</div>
      {unreadable && (
        <p className="refusal" role="alert">
          {words.unreadable}
        </p>
      )}
      {picked.length >= MOST_PHOTOS ? (
        <p>{words.full}</p>
      ) : (
        <div className="photo-ways">
          <Way label={words.take} busy={busy} onFiles={add} camera />
          <Way label={words.choose} busy={busy} onFiles={add} />
        </div>
      )}
    </fieldset>
  );
}

/** As data: no page of ours may show a picture from anywhere but the office or itself. */
const shownOf = (picture: Blob): Promise<Picked> =>
  new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve({ picture, shown: String(reader.result) });
    reader.onerror = () => reject(reader.error);
    reader.readAsDataURL(picture);
  });
