import { Link } from '@tanstack/react-router';
import css from './page-tabs.module.css';

export function PageTabs({ label, pages }: { label: string; pages: { to: string; name: string }[] }) {
  return (
    <nav aria-label={label}>
      <ul className={css.tabs}>
        {pages.map(({ to, name }) => (
          <li key={to}>
            <Link to={to} className={css.tab} activeOptions={{ exact: true }}>
              {name}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}
