import type { FaceMark } from "@/lib/face/face-mark";
import type { PlacedMarks, SilhouetteScene } from "@/lib/face/silhouette-scene";

/** Laid out for a phone; a wide screen shows it larger. */
const HEIGHT = 250;
const WIDTH_MOST = 350;
const LARGEST = 1.35;
const LEFT = 38;
const FOOT = 8;

function Marks({ placed, scale, originX }: { placed: PlacedMarks; scale: number; originX: number }) {
  const path = (mark: FaceMark, i: number) => (
    // Marks of one drawing never change places.
    <path key={`${mark.part}${i}`} d={mark.d} fill={mark.fill} stroke={mark.stroke} strokeWidth={mark.strokeFt} strokeLinecap="round" opacity={mark.opacity} />
  );
  return <g transform={`translate(${(originX + placed.atFt * scale).toFixed(2)} ${HEIGHT}) scale(${scale.toFixed(4)})`}>{placed.marks.map(path)}</g>;
}

/** A silhouette scene as SVG: marks in feet, scaled to fit, with heights ruled. */
export function SilhouetteSvg({ scene, words }: { scene: SilhouetteScene; words: string }) {
  const scale = Math.min(HEIGHT / scene.heightFt, WIDTH_MOST / scene.widthFt);
  const width = LEFT + scene.widthFt * scale;
  const originX = LEFT - scene.leftFt * scale;
  const top = HEIGHT - scene.heightFt * scale;
  return (
    <svg
      role="img"
      aria-label={words}
      viewBox={`0 ${top.toFixed(1)} ${width.toFixed(1)} ${(HEIGHT + FOOT - top).toFixed(1)}`}
      style={{ maxWidth: `${(width * LARGEST).toFixed(0)}px` }}
    >
      <title>{words}</title>
      {scene.rules.map((feet) => {
        const y = HEIGHT - feet * scale;
        return (
          <g key={feet}>
            <line x1={LEFT} x2={width} y1={y} y2={y} stroke={feet === 0 ? "var(--rule-ink)" : "var(--rule)"} strokeWidth={feet === 0 ? 1.4 : 1} />
            <text x={LEFT - 6} y={y + 4} textAnchor="end" fontSize="12" fill="var(--soft)">
              {feet === 0 ? "0" : `${feet} ft`}
            </text>
          </g>
        );
      })}
      <g className="person">
        <Marks placed={scene.person} scale={scale} originX={originX} />
      </g>
      {scene.plants.map((placed) => (
        <Marks key={placed.atFt} placed={placed} scale={scale} originX={originX} />
      ))}
    </svg>
  );
}
