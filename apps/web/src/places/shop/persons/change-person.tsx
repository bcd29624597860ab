import { Dialog } from '../../../ui/dialog';
import { Section } from '../../../ui/section';
import { Stack } from '../../../ui/stack';
import { useSay } from '../../../ui/voice';
import { ChangeRoles } from './change-roles';
import type { Person } from './person-table';
import { ResetPassword } from './reset-password';

export function ChangePerson({ person, onClose }: { person: Person; onClose: () => void }) {
  const say = useSay('people');
  return (
    <Dialog title={person.name} onClose={onClose}>
      <Stack gap="wide">
        <ChangeRoles person={person} onDone={onClose} />
        {person.roles.length > 0 && (
          <Section title={say('new-password')}>
            <ResetPassword person={person} onDone={onClose} />
          </Section>
        )}
      </Stack>
    </Dialog>
  );
}
