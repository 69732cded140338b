"use client";

import type { ComponentProps } from "react";
import { Broken } from "../ui/Broken.tsx";

export default function BrokenPage(props: ComponentProps<typeof Broken>) {
  return (
    <main id="main">
      <Broken {...props} />
    </main>
  );
}
