"use client";

import { curveArc, curveLength, STRAIGHT } from "@/lib/ground/curve";
import { lengthText } from "@/lib/ground/length";
import { cornerCanGo, cubicOver, edgeEnd, outwardSign, planCornerAdded, planCornerRemoved, planEdgeLengthSet, planEdgeShaped } from "@/lib/ground/plan-edit";
import { planCurves } from "@/lib/ground/plan-outline";
import { TextField } from "../../text-field";
import { BorderFields, BorderSelect } from "./border-fields";
import { lengthRead } from "./outline-readers";
import { useOutlineTools } from "./outline-tools";
import { edgeName, SHAPE_WORDS } from "./outline-words";
import { ShapeFields } from "./shape-fields";
import type { OutlineEdit } from "./use-outline-edit";

/** How far an edge bends when it is first made an arc, as a share of its chord: a gentle curve. */
const FIRST_BEND = 0.15;

type EdgeRowProps = { readonly edit: OutlineEdit; readonly edge: number; readonly notes: string; readonly writeNotes: (notes: string) => void };

function EdgeRow({ edit, edge, notes, writeNotes }: EdgeRowProps) {
  const { chosen, choose } = useOutlineTools();
  const { plan } = edit;
  const [held, curve] = [plan[edge], planCurves(plan)[edge]];
  if (!held || !curve) return null;
  const name = edgeName(plan, edge);
  const open = chosen?.kind === "edge" && chosen.index === edge;
  const reshape = (kind: string) => {
    const outward = outwardSign(plan);
    const chord = Math.hypot(curve.to[0] - curve.from[0], curve.to[1] - curve.from[1]);
    const bent = curveArc(curve) ? held.shape : { kind: "arc" as const, ordinateFt: outward * chord * FIRST_BEND };
    const shape = kind === "cubic" ? cubicOver(curve, outward) : kind === "arc" ? bent : STRAIGHT;
    edit.keepPlan(planEdgeShaped(plan, edge, shape), `Edge ${name} is ${kind === "straight" ? "straight" : "curved"} now.`);
    choose({ kind: "edge", index: edge });
  };
  return (
    <>
      <tr className={open ? "edge-row open" : "edge-row"}>
        <th scope="row">
          <button type="button" className="plain" aria-expanded={open} aria-label={`Edge ${name}`} onClick={() => choose(open ? null : { kind: "edge", index: edge })}>
            {name}
          </button>
        </th>
        <td>
          <TextField
            label={`Length of edge ${name}`}
            text={lengthText(curveLength(curve))}
            read={lengthRead(2000)}
            keep={(feet) => edit.keepPlan(planEdgeLengthSet(plan, edge, feet), `Edge ${name} is ${lengthText(feet)}.`)}
          />
        </td>
        <td>
          <select aria-label={`Shape of edge ${name}`} value={held.shape.kind} onChange={(event) => reshape(event.target.value)}>
            {(["straight", "arc", "cubic"] as const).map((kind) => (
              <option key={kind} value={kind}>
                {SHAPE_WORDS[kind]}
              </option>
            ))}
          </select>
        </td>
        <td>
          <BorderSelect edit={edit} edge={edge} name={name} />
        </td>
      </tr>
      {open ? (
        <tr className="edge-details">
          <td colSpan={4}>
            <ShapeFields edit={edit} edge={edge} name={name} />
            <BorderFields edit={edit} edge={edge} name={name} notes={notes} writeNotes={writeNotes} />
            <div className="row">
              <button type="button" onClick={() => edit.keepPlan(planCornerAdded(plan, edge), `A corner added on edge ${name}.`)}>
                Add a corner in its middle
              </button>
              <button
                type="button"
                disabled={!cornerCanGo(plan, edgeEnd(plan, edge))}
                onClick={() => edit.keepPlan(planCornerRemoved(plan, edgeEnd(plan, edge)), `Corner ${edgeEnd(plan, edge) + 1} taken out.`)}
              >
                Take out corner {edgeEnd(plan, edge) + 1}
              </button>
            </div>
          </td>
        </tr>
      ) : null}
    </>
  );
}

/** All edges with length, shape and what they border; the chosen one opens for its details. A typed length moves the edge's second corner. */
export function EdgeTable({ edit, notes, writeNotes }: Omit<EdgeRowProps, "edge">) {
  return (
    <table className="edge-table">
      <caption className="visually-hidden">Edges of the bed, by their corners</caption>
      <thead>
        <tr>
          <th scope="col">Edge</th>
          <th scope="col">Length</th>
          <th scope="col">Shape</th>
          <th scope="col">Borders</th>
        </tr>
      </thead>
      <tbody>
        {edit.plan.map((_, edge) => (
          <EdgeRow key={`edge-${String(edge)}`} edit={edit} edge={edge} notes={notes} writeNotes={writeNotes} />
        ))}
      </tbody>
    </table>
  );
}
