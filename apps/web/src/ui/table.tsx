import type { ReactNode } from 'react';
import css from './table.module.css';

export type Column<Row> = {
  head: string;
  cell: (row: Row) => ReactNode;
  /** Figures are set to the right. */
  figures?: boolean;
  /** For codes and dates that must not break over two lines. */
  oneLine?: boolean;
};

type TableProps<Row> = {
  /** Read out, and shown unless `captionUnseen`. */
  caption: string;
  captionUnseen?: boolean;
  /** The first names the row. At most five stay side by side on an upright tablet. */
  columns: Column<Row>[];
  rows: Row[];
  rowKey: (row: Row) => string;
  /** Replaces a table without rows. */
  empty?: ReactNode;
};

/** On a narrow screen each row becomes a block with its heads beside the cells. */
export function Table<Row>({ caption, captionUnseen = false, columns, rows, rowKey, empty }: TableProps<Row>) {
  if (rows.length === 0 && empty) return <>{empty}</>;
  // A stacked table stops being one for a screen reader unless its roles are spelled out.
  return (
    <table className={css.table} role="table">
      <caption className={captionUnseen ? css.unseen : css.caption}>{caption}</caption>
      <thead role="rowgroup">
        <tr role="row">
          {columns.map(({ head, figures }) => (
            <th key={head} role="columnheader" scope="col" data-figures={figures || undefined}>
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody role="rowgroup">
        {rows.map((row) => (
          <tr key={rowKey(row)} role="row">
            {columns.map(({ head, cell, figures, oneLine }, i) => {
              const wiring = { 'data-head': head, 'data-figures': figures || undefined, 'data-one-line': oneLine || undefined };
              return i === 0 ? (
                <th key={head} role="rowheader" scope="row" {...wiring}>
                  {cell(row)}
                </th>
              ) : (
                <td key={head} role="cell" {...wiring}>
                  {cell(row)}
                </td>
              );
            })}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
