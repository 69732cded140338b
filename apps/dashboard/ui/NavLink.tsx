"use client";

import Link from "next/link";
import { usePathname } from "next/navigation";
import type { ReactNode } from "react";

/** A link that knows whether its page is open. */
export function NavLink({ href, children }: { href: string; children: ReactNode }) {
  const here = usePathname();
  return (
    <Link href={href} aria-current={here === href || here.startsWith(`${href}/`) ? "page" : undefined}>
      {children}
    </Link>
  );
}
