// A paper as PDF: a sheet lying down, header row on every page, title block at the foot, page n of m.
import { Document, Page, renderToBuffer, StyleSheet, Text, View } from "@react-pdf/renderer";
import { centsText } from "../../nursery/count-words";
import { columnSays, type Paper, type PaperCell, type PaperColumn, type PaperRow } from "../../papers/paper";
import type { PaperSize } from "./paper-size";
import { pdfFontsReady, SANS, SERIF } from "./pdf-fonts";
import { PdfPlant } from "./pdf-name";

const INK = "#1e2320";
const SOFT = "#575c54";
const RULE = "#c9c5b7";
const ALERT = "#a2391f";

const style = StyleSheet.create({
  page: { paddingTop: 30, paddingBottom: 76, paddingHorizontal: 32, fontFamily: SANS, fontSize: 8.6, color: INK },
  head: { flexDirection: "row", justifyContent: "space-between", alignItems: "flex-end", borderBottomWidth: 1.2, borderColor: INK, paddingBottom: 4 },
  title: { fontFamily: SERIF, fontWeight: 600, fontSize: 17, lineHeight: 1.2 },
  row: { flexDirection: "row", borderTopWidth: 0.5, borderColor: RULE, paddingVertical: 3 },
  headRow: { flexDirection: "row", paddingTop: 6, paddingBottom: 2, borderBottomWidth: 0.8, borderColor: INK, color: SOFT, fontSize: 7.6 },
  group: { flexDirection: "row", alignItems: "flex-end", paddingTop: 8, paddingBottom: 2 },
  cell: { paddingRight: 6 },
  tick: { width: 10, height: 10, borderWidth: 0.9, borderColor: INK },
  foot: { position: "absolute", left: 32, right: 32, bottom: 24, height: 34, borderTopWidth: 1.2, borderColor: INK, flexDirection: "row" },
  number: { position: "absolute", right: 32, bottom: 12, fontSize: 7.6, color: SOFT },
  footCell: { flexGrow: 1, flexShrink: 1, flexBasis: 0, paddingTop: 3, paddingRight: 6, paddingLeft: 6, borderLeftWidth: 0.5, borderColor: RULE, height: 32, overflow: "hidden" },
});

const isRight = ({ kind }: PaperColumn): boolean => kind === "number" || kind === "money";

function cellShown(column: PaperColumn, cell: PaperCell | undefined, bold: boolean) {
  if (column.kind === "tick") return <View style={style.tick} />;
  if (cell === null || cell === undefined || cell === "") return null;
  if (typeof cell === "object") return <PdfPlant plant={cell} size={9.4} />;
  const text = typeof cell === "string" ? cell : column.kind === "money" ? centsText(cell) : cell.toLocaleString("en-US");
  const strong = column.strong ? { fontSize: 10.5, fontWeight: 600 as const } : bold ? { fontWeight: 600 as const } : {};
  return <Text style={{ textAlign: isRight(column) ? "right" : "left", ...strong }}>{text}</Text>;
}

const widthOf = ({ width }: PaperColumn) => ({ flexGrow: width, flexShrink: 1, flexBasis: 0 });

function Cells({ columns, cells, bold = false }: { readonly columns: readonly PaperColumn[]; readonly cells: Readonly<Record<string, PaperCell>>; readonly bold?: boolean }) {
  return columns.map((column) => (
    <View key={column.key} style={[style.cell, widthOf(column)]}>
      {bold && column.kind === "tick" ? null : cellShown(column, cells[column.key], bold)}
    </View>
  ));
}

function Row({ columns, row }: { readonly columns: readonly PaperColumn[]; readonly row: PaperRow }) {
  return (
    <View wrap={false}>
      <View style={style.row}>
        <Cells columns={columns} cells={row.cells} />
      </View>
      {row.caution ? <Text style={{ color: ALERT, paddingBottom: 3, paddingLeft: 20 }}>{row.caution}</Text> : null}
    </View>
  );
}

/** A group's heading stays with its first row. */
function Group({ paper, columns, index }: { readonly paper: Paper; readonly columns: readonly PaperColumn[]; readonly index: number }) {
  const group = paper.groups[index];
  const [first, ...others] = group?.rows ?? [];
  if (!group || !first) return null;
  return (
    <>
      <View wrap={false}>
        <View style={style.group}>
          <Text style={{ fontFamily: SERIF, fontWeight: 600, fontSize: 11 }}>{group.heading}</Text>
          {group.note ? <Text style={{ color: SOFT, paddingLeft: 8 }}>{group.note}</Text> : null}
        </View>
        <Row columns={columns} row={first} />
      </View>
      {others.map((row) => (
        <Row key={row.key} columns={columns} row={row} />
      ))}
    </>
  );
}

function Foot({ paper }: { readonly paper: Paper }) {
  return (
    <View fixed style={style.foot}>
      {paper.foot.map(([label, value], index) => (
        <View key={label} style={[style.footCell, index === 0 ? { borderLeftWidth: 0, paddingLeft: 0, flexGrow: 1.8 } : label === "Place" ? { flexGrow: 1.5 } : {}]}>
          <Text style={{ fontSize: 6.8, color: SOFT }}>{label}</Text>
          <Text>{value || " "}</Text>
        </View>
      ))}
    </View>
  );
}

function PaperDocument({ paper, size }: { readonly paper: Paper; readonly size: PaperSize }) {
  const columns = paper.columns.filter((column) => column.kind === "tick" || columnSays(paper, column.key));
  const filled = paper.groups.some(({ rows }) => rows.length > 0);
  return (
    <Document title={`${paper.title} · ${paper.subtitle}`} creator="Twelvemonth" producer="Twelvemonth" language="en-US">
      <Page size={size === "a4" ? "A4" : "LETTER"} orientation="landscape" style={style.page}>
        <View style={style.head}>
          <Text style={style.title}>{paper.title}</Text>
          <Text style={{ color: SOFT, fontSize: 10 }}>{paper.subtitle}</Text>
        </View>
        {filled ? (
          <>
            <View fixed style={style.headRow}>
              {columns.map((column) => (
                <Text key={column.key} style={[style.cell, widthOf(column), { textAlign: isRight(column) ? "right" : "left" }]}>
                  {column.kind === "tick" ? "" : column.head}
                </Text>
              ))}
            </View>
            {paper.groups.map((group, index) => (
              <Group key={group.key} paper={paper} columns={columns} index={index} />
            ))}
            {paper.total ? (
              <View wrap={false} style={[style.row, { borderTopWidth: 1.2, borderColor: INK }]}>
                <Cells columns={columns} cells={paper.total} bold />
              </View>
            ) : null}
          </>
        ) : (
          <Text style={{ paddingVertical: 14 }}>{paper.empty}</Text>
        )}
        <View style={{ paddingTop: 8 }}>
          {paper.notes.map((note) => (
            <Text key={note} style={{ color: SOFT, paddingBottom: 2 }}>
              {note}
            </Text>
          ))}
        </View>
        <Foot paper={paper} />
        <Text fixed style={style.number} render={({ pageNumber, totalPages }) => `page ${pageNumber} of ${totalPages}`} />
      </Page>
    </Document>
  );
}

/** The paper as PDF. */
export async function paperPdf(paper: Paper, size: PaperSize): Promise<Uint8Array<ArrayBuffer>> {
  pdfFontsReady();
  return new Uint8Array(await renderToBuffer(<PaperDocument paper={paper} size={size} />));
}
