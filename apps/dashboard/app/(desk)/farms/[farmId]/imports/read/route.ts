import { forward } from "../../../../../../features/imports/forward.ts";

/** Reads a file; the answer comes line by line as the API says it. */
export async function POST(request: Request, { params }: { params: Promise<{ farmId: string }> }) {
  const { farmId } = await params;
  return forward(
    request,
    (officeId) => `/v1/offices/${officeId}/farms/${encodeURIComponent(farmId)}/imports`,
  );
}
