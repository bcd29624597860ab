import { useState } from 'react';
import type { FieldErrors } from '../../../api/check';
import { PasswordField } from '../../../ui/password-field';
import { Stack } from '../../../ui/stack';
import { TextField } from '../../../ui/text-field';
import { useSay } from '../../../ui/voice';
import { suggestUserName } from './suggest-user-name';

type Account = { name: string; userName: string; password: string };
type AccountFieldsProps = { value: Account; errors: FieldErrors; onChange: (value: Account) => void; isMine?: boolean };

/** The user name follows the name until it is changed by hand. */
export function AccountFields({ value, errors, onChange, isMine = false }: AccountFieldsProps) {
  const say = useSay('people');
  const [follows, setFollows] = useState(value.userName === '' || value.userName === suggestUserName(value.name));
  const setName = (name: string) => onChange({ ...value, name, userName: follows ? suggestUserName(name) : value.userName });
  const setUserName = (userName: string) => {
    setFollows(false);
    onChange({ ...value, userName });
  };
  return (
    <Stack>
      <TextField
        label={say('name')}
        hint={say('name-hint')}
        autoComplete={isMine ? 'name' : 'off'}
        maxLength={120}
        value={value.name}
        error={errors.name}
        onChange={setName}
      />
      <TextField
        label={say('user-name')}
        hint={say('user-name-hint')}
        autoComplete={isMine ? 'username' : 'off'}
        autoCapitalize="none"
        spellCheck={false}
        maxLength={40}
        value={value.userName}
        error={errors.userName}
        onChange={setUserName}
      />
      <PasswordField
        label={say(isMine ? 'password' : 'first-password')}
        hint={say('password-rule')}
        autoComplete="new-password"
        value={value.password}
        error={errors.password}
        onChange={(password) => onChange({ ...value, password })}
      />
    </Stack>
  );
}
