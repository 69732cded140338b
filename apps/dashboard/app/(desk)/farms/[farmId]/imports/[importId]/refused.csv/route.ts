import { forward } from "../../../../../../../features/imports/forward.ts";

interface Props {
  params: Promise<{ farmId: string; importId: string }>;
}

/** Every refused row as a file. */
export async function GET(request: Request, { params }: Props) {
  const { farmId, importId } = await params;
  const [farm, one] = [encodeURIComponent(farmId), encodeURIComponent(importId)];
  return forward(request, (officeId) => `/v1/offices/${officeId}/farms/${farm}/imports/${one}/refused.csv`, [
    "content-disposition",
  ]);
}
