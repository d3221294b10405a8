import type { Metadata, Viewport } from "next";
import Link from "next/link";
import type { ReactNode } from "react";
import "@fontsource/source-serif-4/latin-400.css";
import "@fontsource/source-serif-4/latin-400-italic.css";
import "@fontsource/source-serif-4/latin-600.css";
import "@fontsource/source-sans-3/latin-400.css";
import "@fontsource/source-sans-3/latin-600.css";
import "./styles/base.css";
import "./styles/layout.css";
import "./styles/sheet.css";
import "./styles/outline.css";
import "./styles/findings.css";
import "./styles/plant-add.css";
import "./styles/sheet-phone-print.css";
import { HelpSheet } from "./parts/help-sheet";

export const metadata: Metadata = {
  title: { default: "Twelvemonth", template: "%s · Twelvemonth" },
  description: "Planting beds proven through the year, from plant list to pull list.",
};
export const viewport: Viewport = { width: "device-width", initialScale: 1 };

export default function Layout({ children }: { children: ReactNode }) {
  return (
    <html lang="en">
      <body>
        <a className="skip" href="#main">
          To the content
        </a>
        <header className="masthead">
          <Link className="brand" href="/">
            Twelvemonth
          </Link>
          <nav aria-label="Main" className="row small">
            <Link href="/">Jobs</Link>
            <Link href="/nursery">Nursery</Link>
            <Link href="/plants">Plants</Link>
            <Link href="/about">Data and cautions</Link>
            <HelpSheet />
          </nav>
        </header>
        {children}
      </body>
    </html>
  );
}
