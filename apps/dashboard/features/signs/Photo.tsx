import { photoAddress } from "./addresses.ts";

/** One photograph, small; it opens whole. */
export function Photo({ farmId, id, alt }: { farmId: string; id: string; alt: string }) {
  const address = photoAddress(farmId, id);
  return (
    <a href={address}>
      {/* biome-ignore lint/performance/noImgElement: it comes with this person's session, and nothing may keep or resize it on the way */}
      <img src={address} alt={alt} loading="lazy" />
    </a>
  );
}
