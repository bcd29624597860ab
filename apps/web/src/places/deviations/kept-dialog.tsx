import { Dialog } from '../../ui/dialog';

/** Says what became of a save: in the book, or on this device until there is a connection. */
export function KeptDialog({ title, state, onClose }: { title: string; state: 'sent' | 'kept'; onClose: () => void }) {
  return (
    <Dialog title={title} onClose={onClose} closeLabel="Done">
      <p>{state === 'sent' ? 'Recorded.' : 'Kept on this device. It is sent by itself when the connection is back.'}</p>
    </Dialog>
  );
}
