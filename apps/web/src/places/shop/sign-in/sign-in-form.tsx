import { useState } from 'react';
import { ApiProblem } from '../../../api/api-problem';
import type { FieldErrors } from '../../../api/check';
import { Button } from '../../../ui/button';
import { Form } from '../../../ui/form';
import { PasswordField } from '../../../ui/password-field';
import { Problem } from '../../../ui/problem';
import { Row, Stack } from '../../../ui/stack';
import { TextField } from '../../../ui/text-field';
import { useSay } from '../../../ui/voice';
import { useSignIn } from './use-sign-in';

/** A refusal never says which of the two is wrong. */
export function SignInForm() {
  const [userName, setUserName] = useState('');
  const [password, setPassword] = useState('');
  const [missing, setMissing] = useState<FieldErrors>({});
  const say = useSay('sign-in');
  const { send, busy, problem } = useSignIn();

  const submit = () => {
    const errors: FieldErrors = {
      ...(userName.trim() === '' && { userName: say('user-name-missing') }),
      ...(password === '' && { password: say('password-missing') }),
    };
    setMissing(errors);
    if (Object.keys(errors).length === 0) send({ userName, password });
  };
  return (
    <Form errors={missing} busy={busy} onSubmit={submit}>
      <Stack>
        <TextField
          label={say('user-name')}
          autoComplete="username"
          autoCapitalize="none"
          spellCheck={false}
          maxLength={200}
          value={userName}
          error={missing.userName}
          onChange={setUserName}
        />
        <PasswordField
          label={say('password')}
          autoComplete="current-password"
          maxLength={200}
          value={password}
          error={missing.password}
          onChange={setPassword}
        />
        {problem !== undefined && !busy && <Problem error={problem}>{isWrong(problem) && <p>{say('forgotten')}</p>}</Problem>}
        <Row>
          <Button type="submit" look="primary" busy={busy && say('signing-in')}>
            {say('sign-in')}
          </Button>
        </Row>
      </Stack>
    </Form>
  );
}

const isWrong = (problem: unknown): boolean => problem instanceof ApiProblem && problem.code === 'wrong-user-name-or-password';
