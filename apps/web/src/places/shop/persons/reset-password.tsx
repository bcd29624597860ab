import { resetPassword } from '@larderbook/contracts';
import { useState } from 'react';
import { useSend } from '../../../api/use-send';
import { announce } from '../../../ui/announcer';
import { Button } from '../../../ui/button';
import { Form } from '../../../ui/form';
import { PasswordField } from '../../../ui/password-field';
import { Problem } from '../../../ui/problem';
import { Stack } from '../../../ui/stack';
import type { Person } from './person-table';
import { passwordRule } from './password-rule';

/** For somebody who forgot theirs: tell it to them; they change it when they are in. */
export function ResetPassword({ person: { personId, name }, onDone }: { person: Person; onDone: () => void }) {
  const [password, setPassword] = useState('');
  const { send, busy, errors, problem } = useSend(resetPassword, () => {
    announce(`${name} has a new password and is signed out everywhere.`);
    onDone();
  });
  return (
    <Form errors={errors} busy={busy} onSubmit={() => send({ personId, password })}>
      <Stack gap="near">
        <PasswordField
          label={`New password for ${name}`}
          hint={`${passwordRule} It signs them out everywhere.`}
          autoComplete="new-password"
          value={password}
          error={errors.password}
          onChange={setPassword}
        />
        {problem !== undefined && <Problem error={problem} />}
        <Button type="submit" busy={busy && 'Setting the password…'}>
          Set the password
        </Button>
      </Stack>
    </Form>
  );
}
