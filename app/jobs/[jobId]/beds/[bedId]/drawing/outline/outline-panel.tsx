"use client";

import { useParams } from "next/navigation";
import { useState } from "react";
import { areaText, lengthText } from "@/lib/ground/length";
import { planArea, planPerimeter } from "@/lib/ground/plan-outline";
import type { LayerProps } from "../drawing-props";
import { CornerDrawing } from "./corner-drawing";
import { EdgeTable } from "./edge-table";
import { ImportDialog } from "./import-dialog";
import "./outline.css";
import { StartOver } from "./start-over";
import { ThingsSection } from "./things-section";
import { UnderlaySection } from "./underlay-section";
import { useOutlineEdit } from "./use-outline-edit";

/** Beside the drawing in Outline mode: area, edges and what they border, things to keep clear of, a picture beneath, and other ways to an outline. */
export function OutlinePanel(props: LayerProps) {
  const { bed, snapFt, send, say } = props;
  const edit = useOutlineEdit(props);
  const [importing, setImporting] = useState(false);
  const { jobId, bedId } = useParams<{ jobId: string; bedId: string }>();
  const { plan, fault } = edit;
  return (
    <div className="outline-panel">
      <p className="outline-size">
        <b>{areaText(planArea(plan))}</b>, edge <b>{lengthText(planPerimeter(plan))}</b>
        <span className="soft small"> · {plan.length} edges</span>
      </p>
      {fault ? (
        <div className="notice alert small">
          <p>{fault.words} The last sound outline stays the bed’s until this is put right.</p>
          <button type="button" onClick={edit.dropPlan}>
            Back to the last sound outline
          </button>
        </div>
      ) : (
        <p className="small soft">
          Drag a corner; choose an edge to bend it. By keyboard: arrows move what has the focus, + adds a corner, Delete takes one out. The front is at the foot.
        </p>
      )}
      <section aria-labelledby="edges-title" className="outline-section">
        <h2 id="edges-title">Edges</h2>
        <EdgeTable
          edit={edit}
          notes={bed.notes}
          writeNotes={(notes) => {
            send({ type: "notes", notes });
            say("Written in the bed’s notes.");
          }}
        />
      </section>
      <CornerDrawing edit={edit} />
      <StartOver edit={edit} />
      <div className="outline-section">
        <button type="button" onClick={() => setImporting(true)}>
          Bring in an outline …
        </button>
        {importing ? <ImportDialog edit={edit} close={() => setImporting(false)} /> : null}
      </div>
      <ThingsSection edit={edit} />
      <UnderlaySection edit={edit} path={`/jobs/${jobId}/beds/${bedId}`} snapFt={snapFt} />
    </div>
  );
}
