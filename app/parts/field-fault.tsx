import type { FormAnswer } from "../actions";

/** What is wrong with a field, under it. */
export function FieldFault({ id, fault, field }: { id: string; fault: FormAnswer; field: string }) {
  return (
    <span id={id} role="alert" className="alert small">
      {fault?.field === field ? fault.message : ""}
    </span>
  );
}
