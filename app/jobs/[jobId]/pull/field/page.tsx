import type { Metadata } from "next";
import { FieldPull } from "./field-pull";
import "./field.css";

export const metadata: Metadata = { title: "Pull list in the field" };
export const dynamic = "force-dynamic";

/** The page itself says nothing of the job, so that the phone can keep it and show it without a signal; the list comes from the phone's storage or the server. */
export default async function FieldPage({ params }: { params: Promise<{ jobId: string }> }) {
  return <FieldPull jobId={(await params).jobId} />;
}
