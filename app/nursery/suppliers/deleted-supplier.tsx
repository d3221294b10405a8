"use client";

import { useRouter } from "next/navigation";
import { UndoToast } from "@/app/parts/undo-toast";
import { supplierRestoreAction } from "./actions";

/** The way back for a supplier just deleted. */
export function DeletedSupplier({ id, name }: { id: string; name: string }) {
  const router = useRouter();
  const close = () => router.replace("/nursery/suppliers", { scroll: false });
  return (
    <UndoToast
      words={`${name} deleted, with its lots.`}
      undo={async () => {
        await supplierRestoreAction(id);
        close();
      }}
      close={close}
    />
  );
}
