import { roles as all, type Role } from '@larderbook/contracts';
import { codeOf } from '@larderbook/messages';
import { CheckField } from '../../../ui/check-field';
import { Stack } from '../../../ui/stack';
import { useSay } from '../../../ui/voice';

type RolesFieldProps = { roles: Role[]; error?: string; onChange: (roles: Role[]) => void };

export function RolesField({ roles, error, onChange }: RolesFieldProps) {
  const say = useSay('people');
  const sayShared = useSay('shared');
  const toggle = (role: Role, isOn: boolean) => onChange(all.filter((each) => (each === role ? isOn : roles.includes(each))));
  return (
    <Stack gap="near">
      {all.map((role, i) => (
        <CheckField
          key={role}
          label={sayShared(codeOf('role', role))}
          detail={say(`${role}-does`)}
          checked={roles.includes(role)}
          error={i === all.length - 1 ? error : undefined}
          onChange={(isOn) => toggle(role, isOn)}
        />
      ))}
    </Stack>
  );
}
