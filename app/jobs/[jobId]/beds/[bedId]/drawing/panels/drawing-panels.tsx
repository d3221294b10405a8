"use client";

import { useCallback, useState } from "react";
import type { PanelProps } from "../drawing-props";
import { CoverPanel } from "./cover-panel";
import { CrowdingPanel } from "./crowding-panel";
import { DensityPanel } from "./density-panel";
import "./panels.css";
import { SetOutPanel } from "./set-out-panel";

/** What the ground tells, beside the drawing: an arrangement of the list, what will crowd, how dense it is and how it closes. */
export function DrawingPanels(props: PanelProps) {
  const { preview } = props;
  const [shown, setShown] = useState<number | null>(null);
  // Who looks at what crowds looks at the drawing as it is, not at an arrangement offered.
  const asItIs = useCallback(() => {
    setShown(null);
    preview(null);
  }, [preview]);
  return (
    <div className="ground-panels screen-only">
      <SetOutPanel {...props} shown={shown} setShown={setShown} />
      <CrowdingPanel {...props} asItIs={asItIs} />
      <DensityPanel {...props} />
      <CoverPanel {...props} />
    </div>
  );
}
