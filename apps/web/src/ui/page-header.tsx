import { useEffect, type ReactNode } from 'react';
import css from './page-header.module.css';

type PageHeaderProps = {
  title: string;
  /** A small line above: "Lot", "Plan 3, adopted". */
  over?: ReactNode;
  under?: ReactNode;
  actions?: ReactNode;
};

/** Holds the page's one h1 and sets the window's title. */
export function PageHeader({ title, over, under, actions }: PageHeaderProps) {
  useEffect(() => {
    document.title = `${title} · Larderbook`;
  }, [title]);
  return (
    <header className={css.header}>
      <div className={css.words}>
        {over && <p className={css.over}>{over}</p>}
        <h1>{title}</h1>
        {under && <div className={css.under}>{under}</div>}
      </div>
      {actions && <div className={css.actions}>{actions}</div>}
    </header>
  );
}
