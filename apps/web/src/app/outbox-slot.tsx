import { useQueryClient } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import type { Entry } from '../outbox/entry';
import { discard, listen, sendAgain, sendNow } from '../outbox/outbox';
import type { PauseReason } from '../outbox/send';
import { useOutbox } from '../outbox/use-outbox';
import { announce } from '../ui/announcer';
import { Button } from '../ui/button';
import { Dialog } from '../ui/dialog';
import { useSay } from '../ui/voice';
import css from './outbox-slot.module.css';
import { ParkedEntry } from './parked-entry';

/** What is kept on this device and not yet sent, always in sight; opens to show each entry and what can be done. */
export function OutboxSlot({ signedIn }: { signedIn: string | undefined }) {
  const say = useSay('shell');
  const sayShared = useSay('shared');
  const { waiting, parked, why } = useOutbox();
  const [open, setOpen] = useState(false);
  useAnnouncements();
  useEffect(() => {
    if (signedIn) void sendNow(); // theirs may have waited for them
  }, [signedIn]);
  const count = waiting.length + parked.length;
  return (
    <>
      <button type="button" className={css.slot} data-parked={parked.length > 0 || undefined} onClick={() => setOpen(true)}>
        <strong>{count === 0 ? say('all-sent') : say('not-sent', { count })}</strong>
        {parked.length > 0 && <span>{say('refused', { count: parked.length })}</span>}
      </button>
      {open && (
        <Dialog
          title={say('outbox-title')}
          closeLabel={sayShared('close')}
          onClose={() => setOpen(false)}
          actions={waiting.length > 0 && <Button onClick={() => void sendNow()}>{say('send-now')}</Button>}
        >
          {count === 0 && <p>{say('outbox-empty')}</p>}
          {waiting.length > 0 && <p>{say(codes[why ?? 'empty'])}</p>}
          <Waiting entries={waiting} />
          {parked.map((entry) => (
            <ParkedEntry
              key={entry.id}
              entry={entry}
              onSendAgain={() => void sendAgain(entry.id)}
              onDiscard={() => void discard(entry.id)}
            />
          ))}
        </Dialog>
      )}
    </>
  );
}

function Waiting({ entries }: { entries: Entry[] }) {
  if (entries.length === 0) return null;
  return (
    <ol className={css.list}>
      {entries.map(({ id, what }) => (
        <li key={id}>{what}</li>
      ))}
    </ol>
  );
}

const codes = {
  empty: 'being-sent',
  'no-connection': 'no-connection',
  'sign-in': 'other-person',
  'server-failed': 'server-failed',
  'device-failed': 'device-failed',
} as const satisfies Record<PauseReason, string>;

/** Says aloud what became of entries, and refreshes the pages that show them. */
function useAnnouncements() {
  const say = useSay('shell');
  const queries = useQueryClient();
  useEffect(
    () =>
      listen((event) => {
        if (event.state === 'sent') {
          announce(say('sent', { what: event.what }));
          void queries.invalidateQueries();
        }
        if (event.state === 'parked') announce(say('not-accepted', { what: event.what, because: event.problem.title }), { urgent: true });
        if (event.state === 'paused' && event.why === 'no-connection') announce(say('kept-without-connection'));
        if (event.state === 'paused' && event.why === 'sign-in') void queries.invalidateQueries({ queryKey: ['/session'] });
      }),
    [queries, say],
  );
}
