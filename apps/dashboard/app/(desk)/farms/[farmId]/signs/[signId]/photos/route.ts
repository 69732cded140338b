import { handOn } from "../../../../../../../features/signs/handOn.ts";

interface Props {
  params: Promise<{ farmId: string; signId: string }>;
}

/** Attaches a photograph, sent as its bytes, to a sign. */
export async function POST(request: Request, { params }: Props) {
  const { farmId, signId } = await params;
  return handOn(request, `/farms/${encodeURIComponent(farmId)}/signs/${encodeURIComponent(signId)}/photos`);
}
