import { Outlet, useLocation } from '@tanstack/react-router';
import { useEffect, useRef } from 'react';
import type { Session } from '../api/session';
import { LinkButton } from '../ui/link-button';
import { useSay } from '../ui/voice';
import { IndexTabs } from './index-tabs';
import { Mark } from './mark';
import { OutboxSlot } from './outbox-slot';
import { PersonSlot } from './person-slot';
import css from './shell.module.css';

export function Shell({ who }: { who: Session }) {
  const say = useSay('shell');
  const page = useRef<HTMLElement>(null);
  useFocusOnNewPage(page);
  return (
    <div className={css.book}>
      <a className={css.skip} href="#page">
        {say('skip')}
      </a>
      <header className={css.spine}>
        <div className={css.head}>
          <p className={css.name}>
            <Mark /> Larderbook
          </p>
          <p className={css.shop}>{who.establishment.name}</p>
          {who.demonstration && <p className={css.demonstration}>{say('demonstration')}</p>}
        </div>
        <IndexTabs />
        <div className={css.foot}>
          <OutboxSlot signedIn={who.expired ? undefined : who.personId} />
          <PersonSlot who={who} />
        </div>
      </header>
      <main className={css.page} id="page" ref={page} tabIndex={-1}>
        {who.expired && (
          <div className={css.expired} role="status">
            <p>
              <strong>{say('signed-out')}</strong> {say('kept-until-signed-in')}
            </p>
            <LinkButton to="/sign-in" look="primary">
              {say('sign-in')}
            </LinkButton>
          </div>
        )}
        <Outlet />
      </main>
    </div>
  );
}

/** A new page begins at its top, for the eye and for the screen reader. */
function useFocusOnNewPage(page: React.RefObject<HTMLElement | null>) {
  const { pathname } = useLocation();
  const before = useRef(pathname);
  useEffect(() => {
    if (before.current === pathname) return;
    before.current = pathname;
    page.current?.focus({ preventScroll: true });
  }, [pathname, page]);
}
