import css from './so-far.module.css';

/** What has been answered, on one line, so that the keypad stays in sight. */
export function SoFar({ answers }: { answers: string[] }) {
  if (answers.length === 0) return null;
  return (
    <ol className={css.answers} aria-label="So far">
      {answers.map((answer) => (
        <li key={answer}>{answer}</li>
      ))}
    </ol>
  );
}
