"use client";

import dynamic from "next/dynamic";

/** The charting library is loaded when a place page asks for it, not before. */
export const PlaceCharts = dynamic(() => import("./place-curves").then((m) => m.PlaceCurves), { ssr: false, loading: () => <p className="soft">Drawing the year …</p> });
