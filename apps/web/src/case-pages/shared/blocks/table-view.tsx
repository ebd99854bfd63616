import type { Cell, Table } from "@halfturn/report/browser";
import styles from "./block-view.module.css";
import { MARKS } from "./marks.js";

const CellView = ({ cell: { text, tone, struck, detail } }: { readonly cell: Cell }) => (
  <>
    <span className={tone ? `${styles.verdict} ${styles[tone]}` : undefined}>
      {tone ? <span aria-hidden="true">{MARKS[tone]} </span> : null}
      {struck ? <s>{text}</s> : text}
    </span>
    {detail === undefined ? null : <span className={styles.detail}>{detail}</span>}
  </>
);

/** A table; where it is too wide for the place, each row becomes a small list under its name. */
export const TableView = ({ table: { caption, columns, rows, notes } }: { readonly table: Table }) => (
  <div className={styles.group}>
    <table className={styles.table}>
      <caption>{caption}</caption>
      <thead>
        <tr>
          {columns.map(({ label, align }) => (
            <th key={label} scope="col" data-align={align}>
              {label}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((row, k) => (
          // Rows have no name of their own that is sure to differ, and are never moved.
          // biome-ignore lint/suspicious/noArrayIndexKey: see above
          <tr key={k}>
            {row.map((cell, column) => {
              const { label = "", align = "start" } = columns[column] ?? {};
              // A row that goes on from the one above has no name of its own.
              return column === 0 && cell.text !== "" ? (
                <th key={label} scope="row" data-align={align}>
                  <CellView cell={cell} />
                </th>
              ) : (
                <td key={label} data-label={label} data-align={align} data-empty={cell.text === "" ? true : undefined}>
                  <CellView cell={cell} />
                </td>
              );
            })}
          </tr>
        ))}
      </tbody>
    </table>
    {notes.map((note) => (
      <p key={note} className={styles.small}>
        {note}
      </p>
    ))}
  </div>
);
