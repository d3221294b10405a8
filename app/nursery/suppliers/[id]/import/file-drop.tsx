"use client";

import { type DragEvent, useState } from "react";

/** Where a list is dropped or chosen. */
export function FileDrop({ take, busy, last }: { take: (file: File) => void; busy: boolean; last: string | null }) {
  const [over, setOver] = useState(false);
  const drop = (event: DragEvent) => {
    event.preventDefault();
    setOver(false);
    const file = event.dataTransfer.files[0];
    if (file && !busy) take(file);
  };
  return (
    <section
      aria-label="The file"
      className={over ? "file-drop over" : "file-drop"}
      onDragOver={(event) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={drop}
    >
      <p>
        <label htmlFor="list-file">Drop the availability list here, as it came, or choose the file (XLSX or CSV, up to 20,000 lines).</label>
      </p>
      <input
        id="list-file"
        type="file"
        accept=".xlsx,.csv,.txt,.tsv,.xls,text/csv"
        disabled={busy}
        onChange={(event) => {
          const file = event.target.files?.[0];
          if (file) take(file);
          event.target.value = "";
        }}
      />
      <p className="small soft">{last ? `The last list was ${last}. ` : ""}Columns, sizes and names are read and shown; nothing is written until you accept.</p>
    </section>
  );
}
