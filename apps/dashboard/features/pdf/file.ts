/** A file to open in the browser, under a name to keep it by; it is somebody's own and kept by nobody on the way. */
export const pdfFile = (bytes: Uint8Array, name: string): Response =>
  new Response(new Uint8Array(bytes), {
    headers: {
      "content-type": "application/pdf",
      "content-disposition": `inline; filename="${name}"`,
      "cache-control": "no-store",
    },
  });
