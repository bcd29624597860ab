import { changePassword } from '@larderbook/contracts';
import { useId, useState } from 'react';
import { ApiProblem } from '../../../api/api-problem';
import { useSend } from '../../../api/use-send';
import { announce } from '../../../ui/announcer';
import { Button } from '../../../ui/button';
import { Dialog } from '../../../ui/dialog';
import { Form } from '../../../ui/form';
import { PasswordField } from '../../../ui/password-field';
import { Problem } from '../../../ui/problem';
import { Stack } from '../../../ui/stack';
import { useSay } from '../../../ui/voice';

/** One's own password: the present one proves who is at the tablet. */
export function OwnPassword({ onClose }: { onClose: () => void }) {
  const say = useSay('people');
  const sayShared = useSay('shared');
  const form = useId();
  const [current, setCurrent] = useState('');
  const [next, setNext] = useState('');
  const { send, busy, errors, problem } = useSend(changePassword, () => {
    announce(say('password-changed'));
    onClose();
  });
  const isWrong = problem instanceof ApiProblem && problem.code === 'wrong-user-name-or-password';
  const shown = isWrong ? { ...errors, current: problem.message } : errors;
  return (
    <Dialog
      title={say('change-my-password')}
      onClose={onClose}
      actions={
        <Button type="submit" form={form} look="primary" busy={busy}>
          {sayShared('save')}
        </Button>
      }
    >
      <Form id={form} errors={shown} busy={busy} onSubmit={() => send({ current, next })}>
        <Stack>
          <PasswordField
            label={say('present-password')}
            autoComplete="current-password"
            value={current}
            error={shown.current}
            onChange={setCurrent}
          />
          <PasswordField
            label={say('new-password')}
            hint={say('password-rule')}
            autoComplete="new-password"
            value={next}
            error={shown.next}
            onChange={setNext}
          />
          {problem !== undefined && !isWrong && <Problem error={problem} />}
        </Stack>
      </Form>
    </Dialog>
  );
}
