import { handOn } from "../../../../../../features/signs/handOn.ts";

interface Props {
  params: Promise<{ farmId: string; photoId: string }>;
}

/** A photograph's bytes, for who may see its farm; and taking it back. */
async function photo(request: Request, { params }: Props) {
  const { farmId, photoId } = await params;
  return handOn(request, `/farms/${encodeURIComponent(farmId)}/photos/${encodeURIComponent(photoId)}`);
}

export { photo as DELETE, photo as GET };
