"use client";

import Link from "next/link";
import { usePathname } from "next/navigation";
import type { ReactNode } from "react";

/** A link that knows whether its page is open, or one of those that are found through it. */
export function NavLink({
  href,
  holds = [],
  children,
}: {
  href: string;
  holds?: readonly string[];
  children: ReactNode;
}) {
  const here = usePathname();
  const isHere = [href, ...holds].some((path) => here === path || here.startsWith(`${path}/`));
  return (
    <Link href={href} aria-current={isHere ? "page" : undefined}>
      {children}
    </Link>
  );
}
