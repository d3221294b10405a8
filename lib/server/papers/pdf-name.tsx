// A plant's name in a PDF, set as botanists do.
import { Text } from "@react-pdf/renderer";
import type { PaperPlant } from "../../papers/paper";
import { SANS, SERIF } from "./pdf-fonts";

/** Small capitals are the capitals at this share of the size: the renderer cannot ask the typeface for its own. */
const SMALL_CAPS = 0.82;

/** The name alone. `size`: points. */
export function PdfName({ plant, size }: { readonly plant: PaperPlant; readonly size: number }) {
  return (
    <Text style={{ fontFamily: SERIF, fontSize: size }}>
      {plant.segments.map(({ text, style }, index) => (
        <Text key={`${index}${text}`} style={style === "italic" ? { fontStyle: "italic" } : style === "trade" ? { fontSize: size * SMALL_CAPS, letterSpacing: 0.4 } : {}}>
          {`${index > 0 ? " " : ""}${style === "trade" ? text.toUpperCase() : text}`}
        </Text>
      ))}
    </Text>
  );
}

/** The name with the common name after it. */
export function PdfPlant({ plant, size }: { readonly plant: PaperPlant; readonly size: number }) {
  return (
    <Text>
      <PdfName plant={plant} size={size} />
      {plant.common ? <Text style={{ fontFamily: SANS, fontSize: size * 0.86, color: "#575c54" }}>{` ${plant.common}`}</Text> : null}
    </Text>
  );
}
