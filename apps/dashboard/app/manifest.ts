import type { MetadataRoute } from "next";

/** Lets a phone put Pith on its home screen; it opens on the farmer's day, which leads an agent to the round. */
export default function manifest(): MetadataRoute.Manifest {
  return {
    name: "Pith",
    short_name: "Pith",
    start_url: "/today",
    scope: "/",
    display: "standalone",
    background_color: "#f5f4ef",
    theme_color: "#1d2321",
    icons: [
      { src: "/icon.svg", sizes: "any", type: "image/svg+xml", purpose: "any" },
      { src: "/icon-192.png", sizes: "192x192", type: "image/png", purpose: "any" },
      { src: "/icon-512.png", sizes: "512x512", type: "image/png", purpose: "any" },
      { src: "/icon-maskable-512.png", sizes: "512x512", type: "image/png", purpose: "maskable" },
    ],
  };
}
