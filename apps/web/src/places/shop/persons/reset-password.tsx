import { resetPassword } from '@larderbook/contracts';
import { useState } from 'react';
import { useSend } from '../../../api/use-send';
import { announce } from '../../../ui/announcer';
import { Button } from '../../../ui/button';
import { Form } from '../../../ui/form';
import { PasswordField } from '../../../ui/password-field';
import { Problem } from '../../../ui/problem';
import { Stack } from '../../../ui/stack';
import { useSay } from '../../../ui/voice';
import type { Person } from './person-table';

/** The person changes it when they are in. */
export function ResetPassword({ person: { personId, name }, onDone }: { person: Person; onDone: () => void }) {
  const say = useSay('people');
  const sayShared = useSay('shared');
  const [password, setPassword] = useState('');
  const { send, busy, errors, problem } = useSend(resetPassword, () => {
    announce(say('password-set', { name }));
    onDone();
  });
  return (
    <Form errors={errors} busy={busy} onSubmit={() => send({ personId, password })}>
      <Stack gap="near">
        <PasswordField
          label={say('new-password-for', { name })}
          hint={say('signs-out')}
          autoComplete="new-password"
          value={password}
          error={errors.password}
          onChange={setPassword}
        />
        {problem !== undefined && <Problem error={problem} />}
        <Button type="submit" busy={busy}>
          {sayShared('save')}
        </Button>
      </Stack>
    </Form>
  );
}
