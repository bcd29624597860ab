import { Problem } from '../../../ui/problem';
import { Section } from '../../../ui/section';
import { Stack } from '../../../ui/stack';
import { Tiles } from '../../../ui/tiles';
import { roleWords } from '../persons/role-words';
import { useSignIn } from '../sign-in/use-sign-in';
import { MakingProgress } from './making-progress';
import css from './demonstration.module.css';
import { useDemonstration } from './use-demonstration';

/** Everybody who works in the demonstration shop: one tap signs in as that person. */
export function DemonstrationSignIns() {
  const { data, error, refetch, isFetching } = useDemonstration();
  const { send, busy, problem } = useSignIn();
  if (isFetching && !data) return <MakingProgress />;
  if (!data) return <Problem error={error} onRetry={() => void refetch()} />;
  return (
    <Stack>
      <Tiles
        label="Sign in as"
        tiles={data.signIns.map(({ role, name, userName, password }) => ({
          key: userName,
          title: name,
          lines: [`${roleWords[role].name}. ${roleWords[role].does}`],
          onTap: () => !busy && send({ userName, password }),
        }))}
      />
      {busy && <p role="status">Signing in…</p>}
      {problem !== undefined && <Problem error={problem} />}
      <Section title="What to look at">
        <ul className={css.look}>
          {data.lookAt.map((each) => (
            <li key={each}>{each}</li>
          ))}
        </ul>
      </Section>
      <details className={css.words}>
        <summary>User names and password, for signing in by hand</summary>
        <ul>
          {data.signIns.map(({ userName, password }) => (
            <li key={userName}>
              <code>{userName}</code> with <code>{password}</code>
            </li>
          ))}
        </ul>
      </details>
    </Stack>
  );
}
