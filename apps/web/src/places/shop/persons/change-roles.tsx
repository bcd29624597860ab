import { grantRoles, type Role } from '@larderbook/contracts';
import { useState } from 'react';
import { useSend } from '../../../api/use-send';
import { newId } from '../../../outbox/new-id';
import { announce } from '../../../ui/announcer';
import { Button } from '../../../ui/button';
import { Form } from '../../../ui/form';
import { Problem } from '../../../ui/problem';
import { Row, Stack } from '../../../ui/stack';
import { useSay } from '../../../ui/voice';
import type { Person } from './person-table';
import { RolesField } from './roles-field';
import { useRoleNames } from './use-role-names';

/** What a person recorded stays under their name; without any role they have left. */
export function ChangeRoles({ person: { personId, name, roles: before }, onDone }: { person: Person; onDone: () => void }) {
  const say = useSay('people');
  const sayShared = useSay('shared');
  const roleNames = useRoleNames();
  const [grantId] = useState(newId);
  const [roles, setRoles] = useState<Role[]>(before);
  const [isLeaving, setIsLeaving] = useState(false);
  const [none, setNone] = useState(false);
  const { send, busy, errors, problem } = useSend(grantRoles, (person) => {
    announce(
      person.roles.length === 0
        ? say('left-saved', { name: person.name })
        : say('roles-saved', { name: person.name, roles: roleNames(person.roles) }),
    );
    onDone();
  });
  const grant = (granted: Role[]) => send({ grantId, personId, roles: granted });
  const wrong: Record<string, string> = none && roles.length === 0 ? { roles: say('choose-role') } : { ...errors };

  if (isLeaving) {
    return (
      <Stack>
        <p>
          <strong>{say('really-left', { name })}</strong> {say('left-means')}
        </p>
        {problem !== undefined && <Problem error={problem} />}
        <Row>
          <Button look="primary" busy={busy} onClick={() => grant([])}>
            {say('yes-left', { name })}
          </Button>
          <Button onClick={() => setIsLeaving(false)}>{sayShared('cancel')}</Button>
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
          <Button type="submit" look="primary" busy={busy}>
            {sayShared('save')}
          </Button>
          {before.length > 0 && <Button onClick={() => setIsLeaving(true)}>{say('somebody-left')}</Button>}
        </Row>
      </Stack>
    </Form>
  );
}
