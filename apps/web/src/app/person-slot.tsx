import { codeOf } from '@larderbook/messages';
import { lazyRouteComponent } from '@tanstack/react-router';
import { Suspense, useState } from 'react';
import type { Session } from '../api/session';
import { useSay } from '../ui/voice';
import css from './person-slot.module.css';

/** Fetched a little after the first page, with all pages. */
export const SignOutDialog = lazyRouteComponent(() => import('./sign-out-dialog'), 'SignOutDialog');

/** The name is always in sight, because every record carries it. */
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
