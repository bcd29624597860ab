import { chooseLanguage } from '@larderbook/contracts';
import { useQueryClient } from '@tanstack/react-query';
import { update, useSession } from '../../../api/session';
import { useSend } from '../../../api/use-send';
import { Problem } from '../../../ui/problem';
import { Stack } from '../../../ui/stack';
import { useSay } from '../../../ui/voice';
import { LanguageField } from './language-field';

export function OwnLanguage() {
  const say = useSay('language');
  const queries = useQueryClient();
  const who = useSession();
  const { send, problem } = useSend(chooseLanguage, (changed) => update(queries, changed));
  return (
    <Stack gap="near">
      <LanguageField
        label={say('for-you')}
        placeholder={say('as-the-device')}
        hint={say('on-every-device')}
        value={who?.language ?? ''}
        onChange={(language) => send({ language })}
      />
      {problem !== undefined && <Problem error={problem} />}
    </Stack>
  );
}
