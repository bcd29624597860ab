import { grantRoles, type Role } from '@larderbook/contracts';
import { useState } from 'react';
import { useSend } from '../../../api/use-send';
import { newId } from '../../../outbox/new-id';
import { announce } from '../../../ui/announcer';
import { Button } from '../../../ui/button';
import { Form } from '../../../ui/form';
import { Problem } from '../../../ui/problem';
import { Row, Stack } from '../../../ui/stack';
import type { Person } from './person-table';
import { sayRoles } from './role-words';
import { RolesField } from './roles-field';

/** From now on this person may do this and no more; what they recorded stays under their name. Without any role they have left. */
export function ChangeRoles({ person: { personId, name, roles: before }, onDone }: { person: Person; onDone: () => void }) {
  const [grantId] = useState(newId);
  const [roles, setRoles] = useState<Role[]>(before);
  const [isLeaving, setIsLeaving] = useState(false);
  const [none, setNone] = useState(false);
  const { send, busy, errors, problem } = useSend(grantRoles, (person) => {
    announce(`${person.name}: ${sayRoles(person.roles).toLowerCase()}.`);
    onDone();
  });
  const grant = (granted: Role[]) => send({ grantId, personId, roles: granted });
  const wrong: Record<string, string> =
    none && roles.length === 0 ? { roles: 'Choose at least one role, or say below that they have left.' } : { ...errors };

  if (isLeaving) {
    return (
      <Stack>
        <p>
          <strong>Has {name} left the shop?</strong> They are signed out everywhere and cannot sign in again until an owner gives them a
          role. Their records stay under their name.
        </p>
        {problem !== undefined && <Problem error={problem} />}
        <Row>
          <Button look="primary" busy={busy && 'Ending the account…'} onClick={() => grant([])}>
            {name} has left
          </Button>
          <Button onClick={() => setIsLeaving(false)}>Go back</Button>
        </Row>
      </Stack>
    );
  }
  return (
    <Form
      errors={wrong}
      busy={busy}
      onSubmit={() => {
        setNone(roles.length === 0);
        if (roles.length > 0) grant(roles);
      }}
    >
      <Stack>
        <RolesField roles={roles} error={wrong.roles} onChange={setRoles} />
        {problem !== undefined && <Problem error={problem} />}
        <Row>
          <Button type="submit" look="primary" busy={busy && 'Changing the roles…'}>
            {before.length === 0 ? 'Take back into the shop' : 'Save the roles'}
          </Button>
          {before.length > 0 && <Button onClick={() => setIsLeaving(true)}>Has left…</Button>}
        </Row>
      </Stack>
    </Form>
  );
}
