import { addPerson, type Role } from '@larderbook/contracts';
import { useState } from 'react';
import { ApiProblem } from '../../../api/api-problem';
import { useSend } from '../../../api/use-send';
import { newId } from '../../../outbox/new-id';
import { announce } from '../../../ui/announcer';
import { FormDialog } from '../../../ui/form-dialog';
import { useSay } from '../../../ui/voice';
import { AccountFields } from './account-fields';
import { RolesField } from './roles-field';

export function AddPerson({ onClose }: { onClose: () => void }) {
  const say = useSay('people');
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
    <FormDialog
      title={say('add')}
      errors={shown}
      problem={isTaken ? undefined : problem}
      busy={busy}
      onSave={() => send({ personId, ...account, roles })}
      onClose={onClose}
    >
      <AccountFields value={account} errors={shown} onChange={setAccount} />
      <h3>{say('what-may-they-do')}</h3>
      <RolesField roles={roles} error={errors.roles} onChange={setRoles} />
    </FormDialog>
  );
}
