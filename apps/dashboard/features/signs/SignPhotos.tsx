import type { FarmDetail, Records } from "@pith/contract";
import { altTexts } from "./altTexts.ts";
import { Photo } from "./Photo.tsx";

interface Props {
  sign: Records["signs"][number];
  detail: FarmDetail;
}

/** A sign's photographs, small; each opens whole. */
export async function SignPhotos({ sign, detail }: Props) {
  if (sign.photos.length === 0) return null;
  const alt = await altTexts(sign, detail);
  return (
    <ul className="photos">
      {sign.photos.map(({ id }, i) => (
        <li key={id}>
          <Photo farmId={detail.farm.id} id={id} alt={alt[i] ?? ""} />
        </li>
      ))}
    </ul>
  );
}
