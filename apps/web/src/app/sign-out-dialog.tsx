import { signOut } from '@larderbook/contracts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useNavigate } from '@tanstack/react-router';
import { call } from '../api/client';
import { leave, type Session } from '../api/session';
import { useOutbox } from '../outbox/use-outbox';
import { Button } from '../ui/button';
import { Dialog } from '../ui/dialog';
import { Problem } from '../ui/problem';
import { Stack } from '../ui/stack';
import { useSay } from '../ui/voice';

/** Tells first what is not sent yet. */
export function SignOutDialog({ who, onClose }: { who: Session; onClose: () => void }) {
  const say = useSay('shell');
  const sayShared = useSay('shared');
  const queries = useQueryClient();
  const navigate = useNavigate();
  const { waiting } = useOutbox();
  const out = useMutation({
    mutationFn: () => call(signOut, {}),
    onSuccess: async () => {
      leave(queries);
      await navigate({ to: '/sign-in' });
    },
  });
  return (
    <Dialog
      title={who.name}
      closeLabel={sayShared('close')}
      onClose={onClose}
      actions={
        <Button look="primary" busy={out.isPending && say('signing-out')} onClick={() => out.mutate()}>
          {say('sign-out')}
        </Button>
      }
    >
      <Stack gap="near">
        <p>{say('carries-this-name')}</p>
        {waiting.length > 0 && <p>{say('waits-for', { count: waiting.length, who: who.name })}</p>}
        {out.error && <Problem error={out.error} />}
      </Stack>
    </Dialog>
  );
}
