import type { ReactNode } from 'react';
import css from './caution.module.css';

/** A usual caution, calm and always in the same dress: what the figure is not, and who decides. */
export function Caution({ title = 'Caution', children }: { title?: string; children: ReactNode }) {
  return (
    <aside className={css.caution} aria-label={title}>
      <p className={css.title}>{title}</p>
      <div>{children}</div>
    </aside>
  );
}
