import { Dialog } from './dialog';

type KeptDialogProps = { title: string; state: 'sent' | 'kept'; recorded?: string; onClose: () => void };

/** Says what became of a save: in the book, or on this device until there is a connection. */
export function KeptDialog({ title, state, recorded = 'Recorded.', onClose }: KeptDialogProps) {
  return (
    <Dialog title={title} onClose={onClose} closeLabel="Done">
      <p>{state === 'sent' ? recorded : 'Kept on this device. It is sent when the connection is back.'}</p>
    </Dialog>
  );
}
