import { forward } from "../../../../../../../features/imports/forward.ts";

interface Props {
  params: Promise<{ farmId: string; importId: string }>;
}

/** Stores what was read; the answer comes line by line as the API says it. */
export async function POST(request: Request, { params }: Props) {
  const { farmId, importId } = await params;
  const [farm, one] = [encodeURIComponent(farmId), encodeURIComponent(importId)];
  return forward(request, (officeId) => `/v1/offices/${officeId}/farms/${farm}/imports/${one}/save`);
}
