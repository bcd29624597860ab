import type { ReactNode } from 'react';
import css from './caution.module.css';
import { useSay } from './voice';

export function Caution({ title: own, children }: { title?: string; children: ReactNode }) {
  const say = useSay('shared');
  const title = own ?? say('caution');
  return (
    <aside className={css.caution} aria-label={title}>
      <p className={css.title}>{title}</p>
      <div>{children}</div>
    </aside>
  );
}
