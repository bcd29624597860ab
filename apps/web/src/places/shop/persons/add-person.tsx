import { addPerson, type Role } from '@larderbook/contracts';
import { useId, useState } from 'react';
import { ApiProblem } from '../../../api/api-problem';
import { useSend } from '../../../api/use-send';
import { newId } from '../../../outbox/new-id';
import { announce } from '../../../ui/announcer';
import { Button } from '../../../ui/button';
import { Dialog } from '../../../ui/dialog';
import { Form } from '../../../ui/form';
import { Problem } from '../../../ui/problem';
import { Stack } from '../../../ui/stack';
import { useSay } from '../../../ui/voice';
import { AccountFields } from './account-fields';
import { RolesField } from './roles-field';

/** The owner makes an account and tells the person its first password. */
export function AddPerson({ onClose }: { onClose: () => void }) {
  const say = useSay('people');
  const sayShared = useSay('shared');
  const form = useId();
  const [personId] = useState(newId);
  const [account, setAccount] = useState({ name: '', userName: '', password: '' });
  const [roles, setRoles] = useState<Role[]>(['operator']);
  const { send, busy, errors, problem } = useSend(addPerson, ({ name }) => {
    announce(say('has-account', { name }));
    onClose();
  });
  const isTaken = problem instanceof ApiProblem && problem.code === 'user-name-taken';
  const shown = isTaken ? { ...errors, userName: problem.problem.title } : errors;
  return (
    <Dialog
      title={say('add')}
      onClose={onClose}
      actions={
        <Button type="submit" form={form} look="primary" busy={busy}>
          {sayShared('save')}
        </Button>
      }
    >
      <Form id={form} errors={shown} busy={busy} onSubmit={() => send({ personId, ...account, roles })}>
        <Stack>
          <AccountFields value={account} errors={shown} onChange={setAccount} />
          <h3>{say('what-may-they-do')}</h3>
          <RolesField roles={roles} error={errors.roles} onChange={setRoles} />
          {problem !== undefined && !isTaken && <Problem error={problem} />}
        </Stack>
      </Form>
    </Dialog>
  );
}
