import type { ReactNode } from 'react';
import css from './empty-state.module.css';

type EmptyStateProps = { title: string; children?: ReactNode; action?: ReactNode };

export function EmptyState({ title, children, action }: EmptyStateProps) {
  return (
    <div className={css.empty}>
      <p className={css.title}>{title}</p>
      {children && <div className={css.words}>{children}</div>}
      {action && <div className={css.action}>{action}</div>}
    </div>
  );
}
