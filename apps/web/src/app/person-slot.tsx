import { codeOf } from '@larderbook/messages';
import { lazyRouteComponent } from '@tanstack/react-router';
import { Suspense, useState } from 'react';
import type { Session } from '../api/session';
import { useSay } from '../ui/voice';
import css from './person-slot.module.css';

/** Nobody signs out before the first page is read: it is fetched a little after it, with all pages. */
export const SignOutDialog = lazyRouteComponent(() => import('./sign-out-dialog'), 'SignOutDialog');

/** Who is signed in, always in sight because every record carries that name; opens to sign out. */
export function PersonSlot({ who }: { who: Session }) {
  const say = useSay('shared');
  const [open, setOpen] = useState(false);
  return (
    <>
      <button type="button" className={css.slot} onClick={() => setOpen(true)}>
        <strong>{who.name}</strong>
        <span>{who.roles.map((role) => say(codeOf('role', role))).join(', ')}</span>
      </button>
      <Suspense>{open && <SignOutDialog who={who} onClose={() => setOpen(false)} />}</Suspense>
    </>
  );
}
