import { useId, type ReactNode } from 'react';
import css from './stamped-sheet.module.css';

type StampedSheetProps = {
  title: string;
  /** As in "Not a record". */
  stamp?: string;
  children: ReactNode;
};

export function StampedSheet({ title, stamp, children }: StampedSheetProps) {
  const id = useId();
  return (
    <article className={css.sheet} aria-labelledby={id}>
      <header className={css.head}>
        <h2 id={id}>{title}</h2>
        {stamp && <p className={css.stamp}>{stamp}</p>}
      </header>
      {children}
    </article>
  );
}
