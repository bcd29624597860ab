import { codeOf } from '@larderbook/messages';
import { Problem } from '../../../ui/problem';
import { Section } from '../../../ui/section';
import { Stack } from '../../../ui/stack';
import { Tiles } from '../../../ui/tiles';
import { useSay } from '../../../ui/voice';
import { useSignIn } from '../sign-in/use-sign-in';
import { MakingProgress } from './making-progress';
import css from './demonstration.module.css';
import { useDemonstration } from './use-demonstration';

export function DemonstrationSignIns() {
  const say = useSay('welcome');
  const sayShared = useSay('shared');
  const sayPeople = useSay('people');
  const { data, error, refetch, isFetching } = useDemonstration();
  const { send, busy, problem } = useSignIn();
  if (isFetching && !data) return <MakingProgress />;
  if (!data) return <Problem error={error} onRetry={() => void refetch()} />;
  return (
    <Stack>
      <Tiles
        label={say('sign-in-as')}
        tiles={data.signIns.map(({ role, name, userName, password }) => ({
          key: userName,
          title: name,
          lines: [say('role-does', { role: sayShared(codeOf('role', role)), does: sayPeople(`${role}-does`) })],
          onTap: () => !busy && send({ userName, password }),
        }))}
      />
      {busy && <p role="status">{say('signing-in')}</p>}
      {problem !== undefined && <Problem error={problem} />}
      <Section title={say('look-at')}>
        <ul className={css.look}>
          {data.lookAt.map((each) => (
            <li key={each}>{each}</li>
          ))}
        </ul>
      </Section>
      <details className={css.words}>
        <summary>{say('by-hand')}</summary>
        <ul>
          {data.signIns.map(({ userName, password }) => (
            <li key={userName}>
              <code>{say('user-with-password', { userName, password })}</code>
            </li>
          ))}
        </ul>
      </details>
    </Stack>
  );
}
