// A paper as files: CSV, XLSX, and PDF for the firm's sheet of paper.
import { PrintButton } from "@/app/parts/print-button";

const FILES = [
  ["csv", "CSV", ""],
  ["xlsx", "XLSX", ""],
  ["pdf", "PDF, Letter", "letter"],
  ["pdf", "PDF, A4", "a4"],
] as const;

/** `address`: of the route that answers; `query`: what it needs beside form and size. */
export function PaperDownloads({ address, query, only = ["csv", "xlsx", "pdf"] }: { address: string; query: Readonly<Record<string, string | null>>; only?: readonly string[] }) {
  return (
    <div className="row screen-only paper-files">
      <PrintButton />
      {FILES.filter(([as]) => only.includes(as)).map(([as, words, size]) => {
        const parts = Object.entries({ ...query, as, size: size || null }).flatMap(([key, value]): [string, string][] => (value === null ? [] : [[key, value]]));
        return (
          <a key={words} className="button" href={`${address}?${new URLSearchParams(parts)}`} download>
            {words}
          </a>
        );
      })}
    </div>
  );
}
