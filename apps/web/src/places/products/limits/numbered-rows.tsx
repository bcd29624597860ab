import type { ReactNode } from 'react';
import { Button } from '../../../ui/button';
import { useSay } from '../../../ui/voice';
import css from './limits.module.css';

type NumberedRowsProps<Row> = {
  rows: readonly Row[];
  title: (number: number) => string;
  removeLabel: (number: number) => string;
  onChange: (rows: Row[]) => void;
  children: (row: Row, place: number, put: (next: Row) => void) => ReactNode;
};

/** The last row cannot be removed. */
export function NumberedRows<Row>({ rows, title, removeLabel, onChange, children }: NumberedRowsProps<Row>) {
  const say = useSay('shared');
  return (
    <ol className={css.rows}>
      {rows.map((row, i) => (
        <li key={i} className={css.row}>
          <div className={css.rowHead}>
            <h3>{title(i + 1)}</h3>
            {rows.length > 1 && (
              <Button look="quiet" aria-label={removeLabel(i + 1)} onClick={() => onChange(rows.toSpliced(i, 1))}>
                {say('remove')}
              </Button>
            )}
          </div>
          {children(row, i, (next) => onChange(rows.with(i, next)))}
        </li>
      ))}
    </ol>
  );
}
