import path from "node:path";
import type { NextConfig } from "next";
import createNextIntlPlugin from "next-intl/plugin";

const repositoryRoot = path.join(import.meta.dirname, "..", "..");

/** The content security policy carries a nonce for each request and is set in proxy.ts. */
const securityHeaders = [
  { key: "X-Content-Type-Options", value: "nosniff" },
  { key: "X-Frame-Options", value: "DENY" },
  { key: "Referrer-Policy", value: "same-origin" },
  { key: "Permissions-Policy", value: "camera=(), microphone=(), geolocation=(), payment=()" },
  { key: "Cross-Origin-Opener-Policy", value: "same-origin" },
];

const config: NextConfig = {
  output: "standalone",
  outputFileTracingRoot: repositoryRoot,
  turbopack: { root: repositoryRoot },
  transpilePackages: ["@pith/contract", "@pith/rules"],
  poweredByHeader: false,
  reactStrictMode: true,
  // A station's record of a century may hold 20 MB of text, and each quote in it is escaped on the way. What is larger
  // than this is cut off where proxy.ts stands before a route.
  experimental: { proxyClientMaxBodySize: "36mb" },
  headers: async () => [{ source: "/:path*", headers: securityHeaders }],
};

export default createNextIntlPlugin("./i18n/request.ts")(config);
