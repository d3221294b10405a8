"use client";

import Link from "next/link";
import { useState } from "react";
import { jobChangeAction } from "@/app/actions";
import { nameRead, textRead } from "./beds/[bedId]/field-readers";
import { TextField } from "./beds/[bedId]/text-field";

/** Name, client and address of a job, each saved as it is left. */
export function JobHead({ id, name, client, address }: { id: string; name: string; client: string; address: string }) {
  const [words, setWords] = useState("");
  const keep = (change: { name?: string; client?: string; address?: string }) => {
    setWords("Saving …");
    jobChangeAction(id, change).then(
      (fault) => setWords(fault ? fault.message : "Saved"),
      () => setWords("Not saved: the program does not answer. Type it again when it does."),
    );
  };
  return (
    <div className="sheet-head">
      <div className="spread">
        <h1 className="visually-hidden">{name}</h1>
        <TextField label="Job name" className="title-field" text={name} read={nameRead} keep={(value) => keep({ name: value })} />
        <span className="row small">
          <span role="status" className="soft">
            {words}
          </span>
          <Link href="/">All jobs</Link>
        </span>
      </div>
      <div className="row small job-lines">
        <TextField label="Client" className="cell" text={client} placeholder="Client" read={textRead(120)} keep={(value) => keep({ client: value })} />
        <TextField label="Address" className="cell" text={address} placeholder="Address" read={textRead(300)} keep={(value) => keep({ address: value })} />
      </div>
    </div>
  );
}
