// A paper on the screen: the same columns as its PDF; on a phone each row becomes a small card.
import { Fragment } from "react";
import { BotanicalSegments } from "@/app/jobs/[jobId]/pull/botanical-segments";
import { centsText } from "@/lib/nursery/count-words";
import { columnSays, type Paper, type PaperCell, type PaperColumn, type PaperRow } from "@/lib/papers/paper";
import "./pull.css";

const isRight = ({ kind }: PaperColumn): boolean => kind === "number" || kind === "money";

function cellShown({ kind }: PaperColumn, cell: PaperCell | undefined) {
  if (cell === null || cell === undefined) return null;
  if (typeof cell === "string") return cell;
  if (typeof cell === "number") return kind === "money" ? centsText(cell) : cell.toLocaleString("en-US");
  return (
    <>
      <BotanicalSegments segments={cell.segments} /> <span className="common">{cell.common}</span>
    </>
  );
}

function cellClass(column: PaperColumn): string {
  if (column.kind === "tick") return "tick";
  if (column.kind === "plant") return "plant";
  return [isRight(column) ? "number" : "", column.strong ? "qty" : "more", column.key === "remarks" ? "small" : ""].filter(Boolean).join(" ");
}

function Line({ columns, row, count }: { columns: readonly PaperColumn[]; row: PaperRow; count: number }) {
  return (
    <>
      <tr className="pull-line">
        {columns.map((column) => (
          <td key={column.key} className={cellClass(column)} data-label={column.head}>
            {column.kind === "tick" ? <span className="tick-box" aria-hidden="true" /> : cellShown(column, row.cells[column.key])}
          </td>
        ))}
      </tr>
      {row.photos ? (
        <tr className="caution-row screen-only">
          <td colSpan={count} className="line-photos">
            {row.photos.map((address, i) => (
              <a key={address} href={address}>
                <img src={address} alt={`Taken in the field, ${i + 1} of ${row.photos?.length ?? 0}`} loading="lazy" />
              </a>
            ))}
          </td>
        </tr>
      ) : null}
      {row.caution ? (
        <tr className="caution-row">
          <td colSpan={count} className="alert small">
            {row.caution}
          </td>
        </tr>
      ) : null}
    </>
  );
}

/** The table of a paper; columns that say nothing are left out. */
export function PaperTable({ paper }: { paper: Paper }) {
  const columns = paper.columns.filter((column) => column.kind === "tick" || columnSays(paper, column.key));
  const groups = paper.groups.filter(({ rows }) => rows.length > 0);
  if (groups.length === 0) return <p>{paper.empty}</p>;
  const { total } = paper;
  return (
    <table className="pull-table">
      <caption className="visually-hidden">{`${paper.title}, by ${paper.groupHead.toLowerCase()}`}</caption>
      <thead>
        <tr>
          {columns.map((column) => (
            <th key={column.key} scope="col" className={column.kind === "tick" ? "tick" : isRight(column) ? "number" : ""}>
              {column.kind === "tick" ? <span className="visually-hidden">{column.head}</span> : column.head}
            </th>
          ))}
        </tr>
      </thead>
      {groups.map((group) => (
        <tbody key={group.key}>
          <tr className="group-row">
            <th scope="rowgroup" colSpan={columns.length}>
              {group.heading} <span className="soft group-note">{group.note}</span>
            </th>
          </tr>
          {group.rows.map((row) => (
            <Fragment key={row.key}>
              <Line columns={columns} row={row} count={columns.length} />
            </Fragment>
          ))}
        </tbody>
      ))}
      {total ? (
        <tfoot>
          <tr>
            {columns.map((column) => (
              <td key={column.key} className={cellClass(column)} data-label={column.head}>
                {column.kind === "tick" ? null : cellShown(column, total[column.key])}
              </td>
            ))}
          </tr>
        </tfoot>
      ) : null}
    </table>
  );
}
