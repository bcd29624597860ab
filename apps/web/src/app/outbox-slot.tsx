import { useQueryClient } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import { refreshAfter } from '../api/refresh-after';
import { listen, sendNow } from '../outbox/outbox';
import { useOutbox } from '../outbox/use-outbox';
import { announce } from '../ui/announcer';
import { useSay } from '../ui/voice';
import { OutboxDialog } from './outbox-dialog';
import css from './outbox-slot.module.css';
import { sayOutbox } from './say-outbox';

/** The outbox is always in sight. */
export function OutboxSlot({ signedIn }: { signedIn: string | undefined }) {
  const say = useSay('shell');
  const outbox = useOutbox();
  const { read, parked } = outbox;
  const [open, setOpen] = useState(false);
  useAnnouncements();
  useEffect(() => {
    if (signedIn) void sendNow(); // their entries may have waited for them
  }, [signedIn]);
  return (
    <>
      <button
        type="button"
        className={css.slot}
        data-parked={parked.length > 0 || read === 'unreadable' || undefined}
        onClick={() => setOpen(true)}
      >
        <strong>{sayOutbox(outbox, say)}</strong>
        {parked.length > 0 && <span>{say('refused', { count: parked.length })}</span>}
      </button>
      {open && <OutboxDialog onClose={() => setOpen(false)} />}
    </>
  );
}

function useAnnouncements() {
  const say = useSay('shell');
  const queries = useQueryClient();
  useEffect(
    () =>
      listen((event) => {
        if (event.state === 'sent') {
          announce(say('sent', { what: event.what }));
          void refreshAfter(queries, event.path);
        }
        if (event.state === 'parked') announce(say('not-accepted', { what: event.what, because: event.problem.title }), { urgent: true });
        if (event.state === 'paused' && event.why === 'no-connection') announce(say('kept-without-connection'));
        if (event.state === 'paused' && event.why === 'sign-in') void queries.invalidateQueries({ queryKey: ['/session'] });
      }),
    [queries, say],
  );
}
