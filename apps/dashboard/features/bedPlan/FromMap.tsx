import { bedPlacesFromGeoJson, DomainError, type PlacedBed, type PlanBed } from "@pith/rules";
import { type FormEvent, useState } from "react";
import type { BedPlacement } from "./actions.ts";
import { Line } from "./Fields.tsx";
import type { View } from "./view.ts";
import { fill } from "./words.ts";

interface Props {
  beds: readonly PlanBed[];
  view: View;
  busy: boolean;
  onSet: (places: BedPlacement[]) => void;
  note: string | null;
}

/** Beds from a map file: which polygon is which bed, what would change, and only then the change. */
export function FromMap({ beds, view, busy, onSet, note }: Props) {
  const { words } = view;
  const [read, setRead] = useState<PlacedBed[] | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const [twice, setTwice] = useState(false);

  const look = async (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const data = new FormData(event.currentTarget);
    const file = data.get("file");
    const text = file instanceof File && file.size > 0 ? await file.text() : String(data.get("text") ?? "");
    try {
      setRead(bedPlacesFromGeoJson(text).beds);
      setProblem(null);
    } catch (error) {
      if (!(error instanceof DomainError)) throw error;
      setRead(null);
      setProblem(`${error.message}`);
    }
  };
  const set = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const data = new FormData(event.currentTarget);
    const sizes = data.get("sizes") === "yes";
    const places = (read ?? []).flatMap((one): BedPlacement[] => {
      const bedId = String(data.get(`bed-${one.feature}`) ?? "");
      if (bedId === "") return [];
      return [{ bedId, place: one.place, ...(sizes ? { lengthM: one.lengthM, widthM: one.widthM } : {}) }];
    });
    const repeated = new Set(places.map((p) => p.bedId)).size < places.length;
    setTwice(repeated);
    if (!repeated && places.length > 0 && !busy) onSet(places);
  };

  return (
    <details className="plan-from-map">
      <summary>{words.mapTitle}</summary>
      <p className="hint">{words.mapHelp}</p>
      <form onSubmit={look} className="form" noValidate>
        <Line id="map-file" label={words.mapFile}>
          {(common) => (
            <input {...common} type="file" name="file" accept=".geojson,.json,application/geo+json" />
          )}
        </Line>
        <Line id="map-text" label={words.mapText} problem={problem ?? undefined}>
          {(common) => <textarea {...common} name="text" rows={4} spellCheck={false} />}
        </Line>
        <button type="submit" className="press">
          {words.mapRead}
        </button>
      </form>
      {read && (
        <form onSubmit={set} className="flow" noValidate key={JSON.stringify(read)}>
          <table className="ruled">
            <thead>
              <tr>
                {[words.mapFeature, words.mapBed, words.mapSize, words.mapPlace].map((head) => (
                  <th key={head} scope="col">
                    {head}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {read.map((one) => (
                <FeatureRow key={one.feature} one={one} beds={beds} view={view} />
              ))}
            </tbody>
          </table>
          <div className="field field-flag">
            <label htmlFor="map-sizes">{words.mapSizes}</label>
            <input id="map-sizes" type="checkbox" name="sizes" value="yes" />
          </div>
          {twice && (
            <p className="problem" role="alert">
              {words.mapTwice}
            </p>
          )}
          <button type="submit" className="press" aria-disabled={busy}>
            {busy ? words.mapSetting : words.mapSet}
          </button>
        </form>
      )}
      <p role="status">{note ?? ""}</p>
    </details>
  );
}

/** One polygon of the file beside the bed it is taken for. */
function FeatureRow({ one, beds, view }: { one: PlacedBed; beds: readonly PlanBed[]; view: View }) {
  const { words } = view;
  const name = one.label ?? String(one.feature + 1);
  const same = beds.find((b) => view.bedName(b.id).toLowerCase() === name.trim().toLowerCase());
  const [bedId, setBedId] = useState(same?.id ?? "");
  const bed = beds.find((b) => b.id === bedId);
  const size = (m: { lengthM: number; widthM: number }) =>
    `${view.length(m.lengthM)} × ${view.length(m.widthM)}`;
  const place = (p: PlacedBed["place"]) =>
    fill(words.mapPlaceText, {
      east: view.length(p.eastM),
      north: view.length(p.northM),
      bearing: `${Math.round(p.bearingDeg)}°`,
    });
  return (
    <tr>
      <th scope="row">{name}</th>
      <td data-head={words.mapBed}>
        <select
          name={`bed-${one.feature}`}
          value={bedId}
          onChange={(event) => setBedId(event.target.value)}
          aria-label={`${words.mapBed} ${name}`}
        >
          <option value="">{words.mapNone}</option>
          {beds.map((b) => (
            <option key={b.id} value={b.id}>
              {view.bedName(b.id)}
            </option>
          ))}
        </select>
      </td>
      <td data-head={words.mapSize}>
        {size(one)}
        {one.filled < 0.9 && (
          <div className="unknown">
            {fill(words.mapNotRectangle, { share: `${Math.round(one.filled * 100)} %` })}
          </div>
        )}
        {bed && <div className="faint small">{`${words.asNow}: ${size(bed)}`}</div>}
      </td>
      <td data-head={words.mapPlace}>
        {place(one.place)}
        {bed?.place && <div className="faint small">{`${words.asNow}: ${place(bed.place)}`}</div>}
      </td>
    </tr>
  );
}
