import { signOut } from '@larderbook/contracts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { call } from '../api/client';
import { leave, type Session } from '../api/session';
import { useOutbox } from '../outbox/use-outbox';
import { Button } from '../ui/button';
import { Dialog } from '../ui/dialog';
import { Problem } from '../ui/problem';
import { Stack } from '../ui/stack';
import css from './person-slot.module.css';

/** Who is signed in, always in sight because every record carries that name; opens to hand the tablet on. */
export function PersonSlot({ who }: { who: Session }) {
  const [open, setOpen] = useState(false);
  return (
    <>
      <button type="button" className={css.slot} onClick={() => setOpen(true)}>
        <strong>{who.name}</strong>
        <span>{who.roles.join(', ')}</span>
      </button>
      {open && <HandOn who={who} onClose={() => setOpen(false)} />}
    </>
  );
}

function HandOn({ who, onClose }: { who: Session; onClose: () => void }) {
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
      onClose={onClose}
      actions={
        <Button look="primary" busy={out.isPending && 'Signing out…'} onClick={() => out.mutate()}>
          Sign out
        </Button>
      }
    >
      <Stack gap="near">
        <p>What is recorded now carries this name. To hand the tablet on, sign out first.</p>
        {waiting.length > 0 && (
          <p>
            <strong>{waiting.length} on this device</strong> not sent yet: kept here, and sent the next time {who.name} signs in.
          </p>
        )}
        {out.error && <Problem error={out.error} />}
      </Stack>
    </Dialog>
  );
}
