"use client";

import { useRouter } from "next/navigation";
import { useState } from "react";
import { supplierDeleteAction } from "../actions";

export function SupplierDelete({ id, name }: { id: string; name: string }) {
  const router = useRouter();
  const [refusal, setRefusal] = useState("");
  const press = async () => {
    const why = await supplierDeleteAction(id).catch(() => "The program did not answer. Try again.");
    if (why === null) router.push(`/nursery/suppliers?deleted=${id}`);
    else setRefusal(why);
  };
  return (
    <div className="row screen-only">
      <button type="button" className="plain" onClick={press} aria-label={`Delete ${name}`}>
        Delete this supplier
      </button>
      <span role="alert" className="alert small">
        {refusal}
      </span>
    </div>
  );
}
