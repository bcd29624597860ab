import { firstRun } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import type { Voice } from '@larderbook/messages';
import { Navigate, Outlet, useLocation, useRouterState } from '@tanstack/react-router';
import { useEffect } from 'react';
import { ask } from '../api/ask';
import { useLanguage } from '../api/language';
import { session, useSession } from '../api/session';
import { Announcer } from '../ui/announcer';
import { Loading } from '../ui/loading';
import { Problem } from '../ui/problem';
import { Speaking } from '../ui/voice';
import css from './root.module.css';
import { Shell } from './shell';

/** Nobody needs to be signed in. */
const before = ['/sign-in', '/welcome'];

/** The shell for who is signed in, the door for everybody else. */
export function Root() {
  const { pathname } = useLocation();
  return (
    <Speaking voice={useVoiceHere()}>
      {before.includes(pathname) ? (
        <main className={css.door}>
          <AtTheDoor />
        </main>
      ) : (
        <Inside />
      )}
      <Announcer />
    </Speaking>
  );
}

/** The device's language, with the clock and days of the open shop, or the device's own before. */
function useVoiceHere(): Voice {
  const language = useLanguage();
  const shop = useSession()?.establishment;
  useEffect(() => void (document.documentElement.lang = language), [language]);
  return {
    language,
    timeZone: shop?.timeZone ?? Intl.DateTimeFormat().resolvedOptions().timeZone,
    timeStyle: shop?.paper === 'Letter' ? 'US' : 'international',
  };
}

/** While this page is fetched the router still has the one before, which asks for records. */
function AtTheDoor() {
  const shown = useRouterState({ select: ({ matches }) => matches.at(-1)?.pathname ?? '' });
  return before.includes(shown) ? <Outlet /> : <Loading />;
}

function Inside() {
  const { data: who, error, refetch } = useQuery(session);
  if (who) return <Shell key={`${who.establishmentId} ${who.personId}`} who={who} />; // nobody writes on in another's form
  if (who === null) return <Door />;
  return <main className={css.door}>{error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />}</main>;
}

/** A new shop is welcomed; any other signs in and comes back to where it was going. */
function Door() {
  const { data, error, refetch } = useQuery(ask(firstRun, {}));
  const { href } = useLocation();
  if (data) return data.hasShop ? <Navigate to="/sign-in" search={{ then: href }} replace /> : <Navigate to="/welcome" replace />;
  return <main className={css.door}>{error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />}</main>;
}
