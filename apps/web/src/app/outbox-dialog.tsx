import type { Entry } from '../outbox/entry';
import { discard, sendAgain, sendNow } from '../outbox/outbox';
import type { PauseReason } from '../outbox/send';
import { useOutbox } from '../outbox/use-outbox';
import { Button } from '../ui/button';
import { Dialog } from '../ui/dialog';
import { useSay } from '../ui/voice';
import css from './outbox-slot.module.css';
import { ParkedEntry } from './parked-entry';

export function OutboxDialog({ onClose }: { onClose: () => void }) {
  const say = useSay('shell');
  const sayShared = useSay('shared');
  const { waiting, parked, why } = useOutbox();
  return (
    <Dialog
      title={say('outbox-title')}
      closeLabel={sayShared('close')}
      onClose={onClose}
      actions={waiting.length > 0 && <Button onClick={() => void sendNow()}>{say('send-now')}</Button>}
    >
      {waiting.length + parked.length === 0 && <p>{say('outbox-empty')}</p>}
      {waiting.length > 0 && <p>{say(codes[why ?? 'empty'])}</p>}
      <Waiting entries={waiting} />
      {parked.map((entry) => (
        <ParkedEntry key={entry.id} entry={entry} onSendAgain={() => void sendAgain(entry.id)} onDiscard={() => void discard(entry.id)} />
      ))}
    </Dialog>
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
