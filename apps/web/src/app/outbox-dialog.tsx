import type { Entry } from '../outbox/entry';
import { discard, sendAgain, sendNow } from '../outbox/outbox';
import { useOutbox } from '../outbox/use-outbox';
import { Button } from '../ui/button';
import { Dialog } from '../ui/dialog';
import { useSay } from '../ui/voice';
import css from './outbox-slot.module.css';
import { ParkedEntry } from './parked-entry';
import { sayWhy } from './say-outbox';

export function OutboxDialog({ onClose }: { onClose: () => void }) {
  const say = useSay('shell');
  const sayShared = useSay('shared');
  const outbox = useOutbox();
  const { waiting, parked } = outbox;
  const why = sayWhy(outbox, say);
  return (
    <Dialog
      title={say('outbox-title')}
      closeLabel={sayShared('close')}
      onClose={onClose}
      actions={waiting.length > 0 && <Button onClick={() => void sendNow()}>{say('send-now')}</Button>}
    >
      {why && <p>{why}</p>}
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
