import { changePassword } from '@larderbook/contracts';
import { useState } from 'react';
import { ApiProblem } from '../../../api/api-problem';
import { useSend } from '../../../api/use-send';
import { announce } from '../../../ui/announcer';
import { FormDialog } from '../../../ui/form-dialog';
import { PasswordField } from '../../../ui/password-field';
import { useSay } from '../../../ui/voice';

/** The present password proves who is at the tablet. */
export function OwnPassword({ onClose }: { onClose: () => void }) {
  const say = useSay('people');
  const [current, setCurrent] = useState('');
  const [next, setNext] = useState('');
  const { send, busy, errors, problem } = useSend(changePassword, () => {
    announce(say('password-changed'));
    onClose();
  });
  const isWrong = problem instanceof ApiProblem && problem.code === 'wrong-user-name-or-password';
  const shown = isWrong ? { ...errors, current: problem.message } : errors;
  return (
    <FormDialog
      title={say('change-my-password')}
      errors={shown}
      problem={isWrong ? undefined : problem}
      busy={busy}
      onSave={() => send({ current, next })}
      onClose={onClose}
    >
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
    </FormDialog>
  );
}
