// Tags as PDF: a grid of our own on Letter or A4, cut along the hairlines.
import { Document, Page, Path, renderToBuffer, StyleSheet, Svg, Text, View } from "@react-pdf/renderer";
import type { Tag } from "../../papers/tag-sheet";
import { type PaperSize, SHEET_PT } from "./paper-size";
import { pdfFontsReady, SANS, SERIF } from "./pdf-fonts";
import { PdfName } from "./pdf-name";
import { QUIET_MODULES, qrPath } from "./qr-path";

const COLUMNS = 2;
const ROWS = 6;
const PER_SHEET = COLUMNS * ROWS;
const MARGIN_PT = 28;
/** Width of the code with its quiet zone: about 1.1 in, read from arm's length. */
const CODE_PT = 82;

const style = StyleSheet.create({
  page: { padding: MARGIN_PT, fontFamily: SANS, fontSize: 9, color: "#1e2320", flexDirection: "row", flexWrap: "wrap", alignContent: "flex-start" },
  tag: { borderWidth: 0.4, borderColor: "#a9a698", padding: 8, flexDirection: "row", overflow: "hidden" },
  words: { flexGrow: 1, flexShrink: 1, flexBasis: 0, paddingRight: 6, justifyContent: "space-between" },
  soft: { color: "#575c54", fontSize: 8 },
  letter: { fontFamily: SERIF, fontWeight: 600, fontSize: 20, textAlign: "center", lineHeight: 1.1 },
});

function Code({ text }: { readonly text: string }) {
  const { size, d } = qrPath(text);
  return (
    <Svg width={CODE_PT} height={CODE_PT} viewBox={`${-QUIET_MODULES} ${-QUIET_MODULES} ${size + QUIET_MODULES * 2} ${size + QUIET_MODULES * 2}`}>
      <Path d={d} fill="#000000" />
    </Svg>
  );
}

function PrintedTag({ tag, width, height }: { readonly tag: Tag; readonly width: number; readonly height: number }) {
  return (
    <View style={[style.tag, { width, height }]} wrap={false}>
      <View style={style.words}>
        <View>
          <PdfName plant={tag.plant} size={11.5} />
          <Text style={[style.soft, { paddingTop: 1 }]}>{tag.plant.common}</Text>
        </View>
        <View>
          <Text style={{ fontWeight: 600, fontSize: 10.5 }}>{[tag.size, tag.count].filter(Boolean).join("  ·  ")}</Text>
          <Text>{tag.bed}</Text>
          <Text style={style.soft}>{[tag.job, tag.place].filter(Boolean).join(" · ")}</Text>
        </View>
      </View>
      <View style={{ width: CODE_PT, justifyContent: "space-between" }}>
        <Code text={tag.code} />
        <Text style={style.letter}>{tag.letter}</Text>
      </View>
    </View>
  );
}

/** The tags, twelve a sheet. */
export async function tagsPdf(tags: readonly Tag[], title: string, size: PaperSize): Promise<Uint8Array<ArrayBuffer>> {
  pdfFontsReady();
  const [sheetWidth, sheetHeight] = SHEET_PT[size];
  const width = (sheetWidth - MARGIN_PT * 2) / COLUMNS;
  const height = (sheetHeight - MARGIN_PT * 2 - 1) / ROWS;
  const sheets = Array.from({ length: Math.max(1, Math.ceil(tags.length / PER_SHEET)) }, (_, i) => tags.slice(i * PER_SHEET, (i + 1) * PER_SHEET));
  return new Uint8Array(
    await renderToBuffer(
      <Document title={title} creator="Twelvemonth" producer="Twelvemonth" language="en-US">
        {sheets.map((own, sheet) => (
          <Page key={own[0]?.key ?? sheet} size={[sheetWidth, sheetHeight]} style={style.page}>
            {own.length === 0 ? <Text>No tags: nothing is to be pulled.</Text> : null}
            {own.map((tag) => (
              <PrintedTag key={tag.key} tag={tag} width={width} height={height} />
            ))}
          </Page>
        ))}
      </Document>,
    ),
  );
}
