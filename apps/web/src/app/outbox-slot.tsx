import { useQueryClient } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import type { Entry } from '../outbox/entry';
import { giveUp, listen, sendAgain, sendNow } from '../outbox/outbox';
import type { Stop } from '../outbox/send';
import { useOutbox } from '../outbox/use-outbox';
import { announce } from '../ui/announcer';
import { Button } from '../ui/button';
import { Dialog } from '../ui/dialog';
import css from './outbox-slot.module.css';
import { ParkedEntry } from './parked-entry';

/** What is kept on this device and not yet sent, always in sight; opens to show each entry and what can be done. */
export function OutboxSlot({ signedIn }: { signedIn: string | undefined }) {
  const { waiting, parked, why } = useOutbox();
  const [open, setOpen] = useState(false);
  useSaid();
  useEffect(() => {
    if (signedIn) void sendNow(); // theirs may have waited for them
  }, [signedIn]);
  const count = waiting.length + parked.length;
  return (
    <>
      <button type="button" className={css.slot} data-parked={parked.length > 0 || undefined} onClick={() => setOpen(true)}>
        <strong>{count === 0 ? 'All sent' : `${count} on this device`}</strong>
        {parked.length > 0 && <span>{parked.length} to look at</span>}
      </button>
      {open && (
        <Dialog
          title="Kept on this device"
          onClose={() => setOpen(false)}
          actions={waiting.length > 0 && <Button onClick={() => void sendNow()}>Send now</Button>}
        >
          {count === 0 && <p>Everything recorded on this device has reached the record book.</p>}
          {waiting.length > 0 && <p>{whyWords[why ?? 'empty']}</p>}
          <Waiting entries={waiting} />
          {parked.map((entry) => (
            <ParkedEntry key={entry.id} entry={entry} onSendAgain={() => void sendAgain(entry.id)} onGiveUp={() => void giveUp(entry.id)} />
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

const whyWords: Record<Stop, string> = {
  empty: 'Being sent now.',
  'no-connection': 'There is no connection. They are safe here and are sent by themselves when it is back.',
  'sign-in': 'They are sent when the person who recorded them signs in on this device.',
  'server-failed': 'The record book could not take them just now. They are safe here and are tried again.',
  'device-failed': 'This device cannot read what it keeps. Do not clear its data; restart it and look here again.',
};

/** Says aloud what became of entries, and refreshes the pages that show them. */
function useSaid() {
  const queries = useQueryClient();
  useEffect(
    () =>
      listen((event) => {
        if (event.state === 'sent') {
          announce(`Sent: ${event.what}`);
          void queries.invalidateQueries();
        }
        if (event.state === 'parked') announce(`Not taken: ${event.what}. ${event.problem.title}`, { urgent: true });
        if (event.state === 'stopped' && event.why === 'no-connection') announce('No connection. Kept on this device.');
        if (event.state === 'stopped' && event.why === 'sign-in') void queries.invalidateQueries({ queryKey: ['/session'] });
      }),
    [queries],
  );
}
