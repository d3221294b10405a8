/** Closer, farther, the whole bed: for those without a wheel. */
export function ZoomButtons({ zoom, whole }: { zoom: (factor: number) => void; whole: () => void }) {
  return (
    <div className="zooms">
      <button type="button" aria-label="Closer" onClick={() => zoom(1.25)}>
        +
      </button>
      <button type="button" aria-label="Farther" onClick={() => zoom(0.8)}>
        −
      </button>
      <button type="button" onClick={whole}>
        Whole bed
      </button>
    </div>
  );
}
