import { guideOf, inOwnForm } from "../../../../../features/guides/guides.ts";

interface Props {
  params: Promise<{ guideId: string }>;
}

/** A guide as a file, in the form in which an office gives its own. */
export async function GET(_: Request, { params }: Props): Promise<Response> {
  const guide = await inOwnForm((await guideOf((await params).guideId)).guide);
  return new Response(`${JSON.stringify(guide, null, 2)}\n`, {
    headers: {
      "content-type": "application/json",
      "content-disposition": `attachment; filename="${guide.id}.json"`,
      "cache-control": "no-store",
    },
  });
}
