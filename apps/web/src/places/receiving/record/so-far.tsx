import css from './so-far.module.css';
import { useSay } from '../../../ui/voice';

/** What has been answered, on one line, so that the keypad stays in sight. */
export function SoFar({ answers }: { answers: string[] }) {
  const say = useSay('receiving');
  if (answers.length === 0) return null;
  return (
    <ol className={css.answers} aria-label={say('so-far')}>
      {answers.map((answer) => (
        <li key={answer}>{answer}</li>
      ))}
    </ol>
  );
}
