// A paper as a download: CSV, XLSX or PDF.
import type { Paper } from "../../papers/paper";
import { paperCsv } from "../../papers/paper-table";
import { fileResponse } from "../file-response";
import { paperPdf } from "./paper-pdf";
import { paperSizeRead } from "./paper-size";
import { paperWorkbook } from "./paper-workbook";

const XLSX_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** The paper in the form that the address asks for: `as` csv, xlsx or pdf; `size` letter (default) or a4. A form that there is not is answered with 400. */
export async function paperResponse(paper: Paper, query: URLSearchParams): Promise<Response> {
  const size = paperSizeRead(query.get("size"));
  switch (query.get("as")) {
    case "csv":
      return fileResponse(paperCsv(paper), `${paper.fileName}.csv`, "text/csv");
    case "xlsx":
      return fileResponse(await paperWorkbook(paper, size), `${paper.fileName}.xlsx`, XLSX_TYPE);
    case "pdf":
      return fileResponse(await paperPdf(paper, size), `${paper.fileName}.pdf`, "application/pdf");
    default:
      return new Response("This list can be had as csv, xlsx or pdf.", { status: 400 });
  }
}
