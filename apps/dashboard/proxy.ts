import { type NextRequest, NextResponse } from "next/server";
import { isFromElsewhere } from "./server/elsewhere.ts";

/**
 * Refuses what a page of another site would change, and gives each page its content security policy: scripts run only with
 * this request's nonce, nothing comes from elsewhere.
 */
export function proxy(request: NextRequest) {
  if (isFromElsewhere(request) && !FROM_ANYWHERE.test(request.nextUrl.pathname)) {
    return new NextResponse(null, { status: 403 });
  }
  const nonce = Buffer.from(crypto.randomUUID()).toString("base64");
  const policy = policyWith(nonce, process.env.NODE_ENV === "development");
  const headers = new Headers(request.headers);
  headers.set("x-nonce", nonce);
  headers.set("content-security-policy", policy);
  // The page's own address, so that signing in can lead back to it.
  headers.set("x-address", request.nextUrl.pathname + request.nextUrl.search);
  const response = NextResponse.next({ request: { headers } });
  response.headers.set("content-security-policy", policy);
  return response;
}

/** What a mail program calls by itself, with a secret of its own. */
const FROM_ANYWHERE = /^\/stop-mail\//;

/** SHA-256 of `display:none`. */
const DISPLAY_NONE = "sha256-aqNNdDLnnrDOnTNdkJpYlAxKVJtLt9CtFLklmInuUAE=";

function policyWith(nonce: string, development: boolean): string {
  return [
    "default-src 'self'",
    `script-src 'self' 'nonce-${nonce}' 'strict-dynamic'${development ? " 'unsafe-eval'" : ""}`,
    // The development server writes its styles inline.
    `style-src 'self' ${development ? "'unsafe-inline'" : `'nonce-${nonce}'`}`,
    // React hides a part of a drawing with this one attribute while the rest of the page still arrives.
    `style-src-attr ${development ? "'unsafe-inline'" : `'unsafe-hashes' '${DISPLAY_NONE}'`}`,
    "img-src 'self' data:",
    "font-src 'self'",
    "connect-src 'self'",
    "worker-src 'self'",
    "manifest-src 'self'",
    "object-src 'none'",
    "base-uri 'self'",
    "form-action 'self'",
    "frame-ancestors 'none'",
  ].join("; ");
}

export const config = {
  matcher: [{ source: "/((?!_next/static|_next/image|icon|apple-touch-icon|healthz).*)" }],
};
