"use client";

/** Opens the browser's own print window. */
export function PrintButton({ label }: { label: string }) {
  return (
    <button type="button" className="press no-print" onClick={() => window.print()}>
      {label}
    </button>
  );
}
