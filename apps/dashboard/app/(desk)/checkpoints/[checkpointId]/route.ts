import { handOn } from "../../../../features/keeping/handOn.ts";

interface Props {
  params: Promise<{ checkpointId: string }>;
}

/** A signed checkpoint as a file: for agents and for the farm's own people, to keep outside the office. */
export async function GET(request: Request, { params }: Props): Promise<Response> {
  const id = encodeURIComponent((await params).checkpointId);
  return handOn(request, (officeId) => `/v1/offices/${officeId}/ledger/checkpoints/${id}`);
}
