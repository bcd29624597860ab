import { Dialog } from '../../../ui/dialog';
import { Stack } from '../../../ui/stack';
import { VerdictWords, type SaidVerdict } from '../../../ui/verdict-words';
import { useSay } from '../../../ui/voice';

type CheckSavedProps = { name: string; state: 'sent' | 'kept'; verdict: SaidVerdict; onClose: () => void };

export function CheckSaved({ name, state, verdict, onClose }: CheckSavedProps) {
  const say = useSay('instruments');
  const sayShared = useSay('shared');
  return (
    <Dialog title={name} closeLabel={sayShared('done')} onClose={onClose}>
      <Stack>
        <p>{say(state === 'sent' ? 'check-recorded' : 'check-kept')}</p>
        <VerdictWords size="large" verdict={verdict} />
      </Stack>
    </Dialog>
  );
}
