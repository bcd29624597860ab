import { Dialog } from './dialog';
import { useSay } from './voice';

type KeptDialogProps = { title: string; state: 'sent' | 'kept'; recorded?: string; onClose: () => void };

export function KeptDialog({ title, state, recorded, onClose }: KeptDialogProps) {
  const say = useSay('shared');
  return (
    <Dialog title={title} onClose={onClose} closeLabel={say('done')}>
      <p>{state === 'sent' ? (recorded ?? say('saved')) : say('kept-here')}</p>
    </Dialog>
  );
}
