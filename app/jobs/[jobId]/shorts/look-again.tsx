"use client";

import { useRouter } from "next/navigation";
import { useEffect } from "react";

const AGAIN_MS = 8_000;

/** Looks again every few seconds while the page is in front, so that what the field reports appears by itself. */
export function LookAgain() {
  const router = useRouter();
  useEffect(() => {
    const timer = setInterval(() => {
      if (document.visibilityState === "visible" && !document.querySelector("dialog[open]")) router.refresh();
    }, AGAIN_MS);
    return () => clearInterval(timer);
  }, [router]);
  return <span className="soft small screen-only">looks for news from the field by itself</span>;
}
