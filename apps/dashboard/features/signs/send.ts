/** How sending ended: kept, refused with the office's words, or not answered. */
type Sent = { how: "kept" } | { how: "refused"; why: string } | { how: "unreachable" };

/** Longer than this, a sending is given up [ms]. */
const PATIENCE_MS = 60_000;

/** Sends a photograph and tells how much of it is on its way, which fetch cannot. Under one key it is kept once. */
export function send(
  address: string,
  key: string,
  photo: Blob,
  onShare: (share: number) => void,
): Promise<Sent> {
  return new Promise((resolve) => {
    const request = new XMLHttpRequest();
    request.open("POST", address);
    request.setRequestHeader("content-type", photo.type);
    request.setRequestHeader("idempotency-key", key);
    request.timeout = PATIENCE_MS;
    request.upload.onprogress = ({ loaded, total }) => total > 0 && onShare(loaded / total);
    request.onerror = request.ontimeout = () => resolve({ how: "unreachable" });
    request.onload = () => resolve(request.status === 201 ? { how: "kept" } : refusalIn(request));
    request.send(photo);
  });
}

function refusalIn({ status, responseText }: XMLHttpRequest): Sent {
  if (status === 502 || status === 503) return { how: "unreachable" };
  try {
    const problem = JSON.parse(responseText) as {
      title: string;
      detail?: string;
      errors?: { message: string }[];
    };
    return { how: "refused", why: problem.errors?.[0]?.message ?? problem.detail ?? problem.title };
  } catch {
    return { how: "unreachable" };
  }
}
