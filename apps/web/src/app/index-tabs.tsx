import { Link, useLocation, useRouter } from '@tanstack/react-router';
import { useState } from 'react';
import { useSay } from '../ui/voice';
import css from './index-tabs.module.css';
import { places } from './places';

export function IndexTabs() {
  const say = useSay('shell');
  const { routesByPath } = useRouter();
  const { pathname } = useLocation();
  const [open, setOpen] = useState(false);
  return (
    <nav className={css.tabs} aria-label={say('places')} data-open={open || undefined}>
      <button type="button" className={css.all} aria-expanded={open} aria-controls="places" onClick={() => setOpen(!open)}>
        {say('places')}
      </button>
      <ul className={css.list} id="places">
        {places
          .filter(({ to }) => to in routesByPath)
          .map(({ to, name, also }) => (
            <li key={to}>
              <Link
                to={to}
                className={css.tab}
                activeOptions={{ exact: to === '/' }}
                {...(isUnder(pathname, also) && { 'aria-current': 'page' })}
                onClick={() => setOpen(false)}
              >
                {say(name)}
              </Link>
            </li>
          ))}
      </ul>
    </nav>
  );
}

const isUnder = (pathname: string, also: readonly string[]): boolean =>
  also.some((path) => pathname === path || pathname.startsWith(`${path}/`));
